#version 330 core
layout(location = 0) in vec3 position_B;
layout(location = 1) in vec4 normalAndOpenness;

uniform mat4 X_WB;
uniform mat4 normals_WB;
uniform mat4 clipOfWorld;

out vec3 normal_W;

void main() {
  normal_W = mat3(normals_WB) * normalAndOpenness.xyz;
  gl_Position = clipOfWorld * (X_WB * vec4(position_B, 1.0));
}
