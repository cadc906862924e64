#version 330 core
in vec3 normal_W;

layout(location = 0) out vec4 colour;

uniform vec3 bone;    // linear light
uniform float cover;  // 1 for the bone, less for what lies on it
uniform vec3 back_W;  // towards the eye
uniform vec3 key_W;   // towards the lamp, which follows the eye

vec3 encoded(vec3 linear) {
  vec3 low = 12.92 * linear;
  vec3 high = 1.055 * pow(max(linear, vec3(0.0)), vec3(1.0 / 2.4)) - 0.055;
  return mix(low, high, step(vec3(0.0031308), linear));
}

void main() {
  vec3 n = normalize(normal_W);
  // The inside, seen through a hole, is dim and striped: what lies there is no surface of the bone.
  bool inside = dot(n, back_W) < -0.05 && !gl_FrontFacing;
  if (!gl_FrontFacing) n = -n;
  float key = clamp((dot(n, key_W) + 0.1) / 1.1, 0.0, 1.0);
  vec3 light = vec3(1.0, 0.97, 0.92) * 0.85 * key + vec3(0.10, 0.11, 0.12) + 0.12 * max(dot(n, back_W), 0.0);
  vec3 lit = bone * light;
  if (inside) lit *= 0.35 + 0.15 * step(0.5, fract((gl_FragCoord.x + gl_FragCoord.y) / 8.0));
  colour = vec4(encoded(lit) * cover, cover);
}
