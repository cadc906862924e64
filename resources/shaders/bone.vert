#version 330 core
layout(location = 0) in vec3 position_B;
layout(location = 1) in vec4 normalAndOpenness;

uniform mat4 X_WB;
uniform mat4 clipOfWorld;
uniform mat4 lightOfWorld;

out vec3 p_B;
out vec3 p_W;
out vec3 normal_W;
out float openness;
out vec3 lightPlace;

void main() {
  vec4 world = X_WB * vec4(position_B, 1.0);
  p_B = position_B;
  p_W = world.xyz;
  normal_W = mat3(X_WB) * normalAndOpenness.xyz;
  openness = normalAndOpenness.w;
  // A step along the normal keeps a coarse caster from shading the fine surface it stands for.
  lightPlace = (lightOfWorld * vec4(p_W + 0.02 * normal_W, 1.0)).xyz * 0.5 + 0.5;
  gl_Position = clipOfWorld * world;
}
