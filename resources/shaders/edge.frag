#version 330 core
in vec2 place;
out vec4 colour;

uniform sampler2D scene;   // alpha: covered by bone
uniform sampler2D shape;   // direction, bone
uniform sampler2D depth;
uniform sampler2D mask;    // red: chosen, green: under the pointer, blue: the compared pose
uniform vec2 clipRange;    // m, nearest and farthest
uniform float perspective;
uniform float metresPerPixel;
uniform float lensFactor;  // m a pixel spans per m of distance, perspective
uniform vec3 ink;
uniform float inkStrength;
uniform float rimStrength;   // of the outline against the background
uniform vec3 choice;
uniform vec3 ghost;
uniform vec2 hasMask;      // chosen or under the pointer; compared pose
uniform float pixelScale;

vec4 away(vec4 d) {
  if (perspective < 0.5) return mix(vec4(clipRange.x), vec4(clipRange.y), d);
  return clipRange.x * clipRange.y / (clipRange.y - d * (clipRange.y - clipRange.x));
}

float edge(ivec2 at) {
  ivec2 last = textureSize(scene, 0) - 1;
  ivec2 l = max(at - ivec2(1, 0), ivec2(0)), r = min(at + ivec2(1, 0), last);
  ivec2 d = max(at - ivec2(0, 1), ivec2(0)), u = min(at + ivec2(0, 1), last);
  float here = texelFetch(depth, at, 0).r;
  vec4 around = vec4(texelFetch(depth, l, 0).r, texelFetch(depth, r, 0).r, texelFetch(depth, d, 0).r,
                     texelFetch(depth, u, 0).r);
  if (min(here, min(min(around.x, around.y), min(around.z, around.w))) >= 1.0) return 0.0;
  float c = away(vec4(here)).x;
  vec4 a = away(around);
  float pixel = perspective < 0.5 ? metresPerPixel : lensFactor * c;
  // Second differences: a steep but flat face is no edge.
  float bend = max(abs(a.x + a.y - 2.0 * c), abs(a.z + a.w - 2.0 * c));
  float step_ = smoothstep(6.0, 22.0, bend / pixel);
  vec4 s = texelFetch(shape, at, 0);
  vec4 sl = texelFetch(shape, l, 0), sr = texelFetch(shape, r, 0);
  vec4 sd = texelFetch(shape, d, 0), su = texelFetch(shape, u, 0);
  float turn = max(distance(sl.xyz, sr.xyz), distance(sd.xyz, su.xyz));
  // Far away the lines inside the animal would run together into a grey: only its outline keeps full strength.
  float inside = mix(0.4, 1.0, smoothstep(0.016, 0.004, pixel * pixelScale));
  float outline = max(around.x, max(around.y, max(around.z, around.w))) >= 1.0 || here >= 1.0 ? rimStrength : inside;
  float crease = 0.45 * inside * smoothstep(0.32, 0.75, turn);
  float other = max(max(abs(s.w - sl.w), abs(s.w - sr.w)), max(abs(s.w - sd.w), abs(s.w - su.w)));
  float between = 0.7 * outline * step(0.01, other);
  return max(max(outline * step_, crease), between);
}

float widest(vec2 at, vec2 texel, int channel, float radius) {
  float most = 0.0;
  for (int i = 0; i < 12; ++i) {
    float a = 0.5236 * float(i);
    most = max(most, texture(mask, at + radius * texel * vec2(cos(a), sin(a)))[channel]);
  }
  return most;
}

vec3 withGhost(vec3 base, float covered) {
  vec2 texel = 1.0 / vec2(textureSize(mask, 0));
  float inside = texture(mask, place).b;
  float rim = widest(place, texel, 2, 1.0 * pixelScale) - inside;
  base = mix(base, ghost, 0.26 * inside * (1.0 - covered));
  return mix(base, ghost, 0.8 * clamp(rim, 0.0, 1.0));
}

vec3 withChoice(vec3 base) {
  vec2 texel = 1.0 / vec2(textureSize(mask, 0));
  vec2 inside = texture(mask, place).rg;
  float chosen = widest(place, texel, 0, 2.2 * pixelScale) * (1.0 - inside.r);
  float near = widest(place, texel, 1, 1.6 * pixelScale) * (1.0 - inside.g);
  base = mix(base, choice, 0.20 * inside.r);
  base = mix(base, mix(choice, vec3(1.0), 0.35), 0.12 * inside.g);
  base = mix(base, choice, 0.75 * near);
  return mix(base, choice, chosen);
}

void main() {
  ivec2 at = min(ivec2(place * vec2(textureSize(scene, 0))), textureSize(scene, 0) - 1);
  vec4 base = texture(scene, place);
  vec3 c = base.rgb;
  if (hasMask.y > 0.5) c = withGhost(c, base.a);
  c = mix(c, ink, inkStrength * edge(at));
  if (hasMask.x > 0.5) c = withChoice(c);
  colour = vec4(c, 1.0);
}
