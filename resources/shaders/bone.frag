#version 330 core
const int kMarks = 3;

in vec3 p_B;
in vec3 p_W;
in vec3 normal_W;
in float openness;
in vec3 lightPlace;

layout(location = 0) out vec4 colour;
layout(location = 1) out vec4 shape;  // direction and bone, for the edges

uniform vec3 bone;             // linear light
uniform int pattern;           // 0 none, 1 mirrored, 2 scaled, 3 deformed
uniform int markCount;
uniform vec4 markPlace[kMarks];   // centre in the bone's frame and radius, m
uniform vec4 markColour[kMarks];  // linear light, strength
uniform float markHatched[kMarks];
uniform float boneCode;
uniform vec3 eye_W;
uniform vec3 back_W;
uniform float perspective;
uniform vec3 lightDirection_W;  // towards the key light
uniform vec3 sky;
uniform vec3 bounce;
uniform vec3 groundColour;
uniform float pixelScale;  // pixels of the target per pixel of the design
uniform sampler2DShadow lightDepth;

float sunlit() {
  vec2 texel = 1.0 / vec2(textureSize(lightDepth, 0));
  float depth = lightPlace.z - 0.0015;
  float sum = texture(lightDepth, vec3(lightPlace.xy + texel * vec2(-0.6, -0.2), depth));
  sum += texture(lightDepth, vec3(lightPlace.xy + texel * vec2(0.2, -0.6), depth));
  sum += texture(lightDepth, vec3(lightPlace.xy + texel * vec2(0.6, 0.2), depth));
  sum += texture(lightDepth, vec3(lightPlace.xy + texel * vec2(-0.2, 0.6), depth));
  return 0.25 * sum;
}

// Share of a pixel that a set of parallel strokes covers.
float strokes(vec2 along, float spacing, float width) {
  float d = abs(fract((along.x + along.y) * 0.70711 / spacing) - 0.5) * spacing;
  return 1.0 - smoothstep(0.5 * width - 0.5, 0.5 * width + 0.5, d);
}

vec3 marked(vec3 base) {
  vec2 pixel = gl_FragCoord.xy / pixelScale;
  if (pattern == 1) base *= 1.0 - 0.16 * strokes(vec2(pixel.x, -pixel.y), 5.0, 1.2);
  if (pattern == 2) base *= 1.0 - 0.16 * max(strokes(pixel, 5.0, 1.2), strokes(vec2(pixel.x, -pixel.y), 5.0, 1.2));
  if (pattern == 3) base *= 1.0 - 0.16 * strokes(vec2(0.0, 1.4142 * pixel.y), 8.0, 1.4);
  for (int i = 0; i < markCount; ++i) {
    float radius = markPlace[i].w;
    float near = 1.0 - smoothstep(0.45 * radius, radius, distance(p_B, markPlace[i].xyz));
    float stroke = mix(0.85, 0.45 + 0.55 * strokes(pixel, 7.0, 3.2), markHatched[i]);
    base = mix(base, markColour[i].rgb, near * markColour[i].a * stroke);
  }
  return base;
}

vec3 encoded(vec3 linear) {
  vec3 low = 12.92 * linear;
  vec3 high = 1.055 * pow(max(linear, vec3(0.0)), vec3(1.0 / 2.4)) - 0.055;
  return mix(low, high, step(vec3(0.0031308), linear));
}

void main() {
  vec3 n = normalize(normal_W);
  vec3 toEye = perspective > 0.5 ? normalize(eye_W - p_W) : back_W;
  float key = clamp((dot(n, lightDirection_W) + 0.12) / 1.12, 0.0, 1.0);
  key *= sunlit() * mix(0.45, 1.0, openness);
  vec3 fill = mix(bounce, sky, 0.5 + 0.5 * n.z) * openness * openness;
  float face = max(dot(n, toEye), 0.0) * openness;
  vec3 light = vec3(1.0, 0.97, 0.91) * 0.98 * key + 0.42 * fill + vec3(0.15) * face;
  vec3 lit = marked(bone) * light;
  // What has sunk into the ground is dimmed, not hidden, so that it can be pulled out again.
  lit = mix(lit, groundColour, 0.7 * smoothstep(0.01, -0.04, p_W.z));
  colour = vec4(encoded(lit), 1.0);
  shape = vec4(0.5 + 0.5 * n, boneCode);
}
