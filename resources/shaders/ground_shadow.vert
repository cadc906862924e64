#version 330 core
layout(location = 0) in vec3 position_B;
uniform mat4 X_WB;
uniform vec3 lightDirection_W;
uniform vec4 region;  // centre and half size on the ground, m

out float height;

void main() {
  vec3 p_W = (X_WB * vec4(position_B, 1.0)).xyz;
  height = p_W.z;
  vec2 ground = p_W.xy - lightDirection_W.xy * (max(p_W.z, 0.0) / lightDirection_W.z);
  gl_Position = vec4((ground - region.xy) / region.zw, 0.0, 1.0);
}
