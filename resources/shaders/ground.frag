#version 330 core
in vec2 place;
layout(location = 0) out vec4 colour;
layout(location = 1) out vec4 shape;

uniform vec3 target_W;
uniform vec3 right_W;
uniform vec3 up_W;
uniform vec3 back_W;
uniform vec2 half_;            // m from the middle to right and upper edge, in the plane through the target
uniform float distance_;       // m from eye to target, perspective
uniform float perspective;
uniform float metresPerPixel;  // in the plane through the target
uniform vec3 top;              // the theme's colours as they are on screen
uniform vec3 bottom;
uniform vec3 line;
uniform vec4 middle;           // of the animal on the ground, and how far the grid reaches, m
uniform vec4 region;           // of the shadow: centre and half size, m
uniform float shadowStrength;
uniform sampler2D shadow;
uniform float hasShadow;

float lines(vec2 at, float spacing, vec2 footprint, float width) {
  vec2 d = abs(fract(at / spacing + 0.5) - 0.5) * spacing / footprint;
  vec2 cover = 1.0 - smoothstep(vec2(0.5 * width - 0.5), vec2(0.5 * width + 0.5), d);
  // Lines closer than a few pixels would turn into a tone: let them go.
  cover *= 1.0 - smoothstep(0.08, 0.25, footprint / spacing);
  return max(cover.x, cover.y);
}

vec3 groundFromAbove(vec3 base, vec2 at, vec2 footprint, float tilt) {
  float away = length(at - middle.xy) / middle.z;
  float fade = 1.0 - smoothstep(0.35, 1.0, away);
  float minor = lines(at, 1.0, footprint, 1.0) * 0.42;
  float major = lines(at, 5.0, footprint, 1.4) * 0.95;
  vec3 ground = mix(base, bottom, 0.55 * fade);
  ground = mix(ground, line, max(minor, major) * fade * smoothstep(0.02, 0.2, tilt));
  vec2 s = (at - region.xy) / region.zw * 0.5 + 0.5;
  if (hasShadow > 0.5 && all(greaterThan(s, vec2(0.0))) && all(lessThan(s, vec2(1.0)))) {
    vec2 dark = texture(shadow, s).rg;
    ground *= 1.0 - shadowStrength * (1.0 - (1.0 - 0.62 * dark.r) * (1.0 - 0.55 * dark.g));
  }
  return ground;
}

// Seen exactly from the side the ground is a section: a line with a tick each metre, longer each five.
vec3 groundInSection(vec3 base, vec3 p_W, vec3 along_W) {
  float depth = -p_W.z / metresPerPixel;
  float run = dot(p_W, along_W);
  vec3 earth = mix(bottom * 0.97, bottom * 0.93, smoothstep(0.0, 160.0, depth));
  vec3 c = mix(base, earth, smoothstep(-0.5, 0.5, depth));
  float fade = 1.0 - smoothstep(0.6, 1.15, abs(run - dot(vec3(middle.xy, 0.0), along_W)) / middle.z);
  vec2 one = vec2(metresPerPixel);
  float ticks = depth > 0.0 && depth < 6.0 ? lines(vec2(run, 0.5), 1.0, one, 1.0) : 0.0;
  float tall = depth > 0.0 && depth < 13.0 ? lines(vec2(run, 2.5), 5.0, one, 1.4) : 0.0;
  float edge = 1.0 - smoothstep(0.5, 1.5, abs(depth));
  return mix(c, line * 0.86, max(max(ticks, tall), edge) * fade);
}

void main() {
  vec2 at = (2.0 * place - 1.0) * half_;
  vec3 onTarget = target_W + at.x * right_W + at.y * up_W;
  vec3 eye = target_W + distance_ * back_W;
  vec3 direction = perspective > 0.5 ? normalize(onTarget - eye) : -back_W;
  vec3 base = mix(bottom, top, smoothstep(0.0, 1.0, place.y));
  float down = -direction.z;
  if (perspective < 0.5 && abs(down) < 0.012) {
    base = groundInSection(base, onTarget, right_W);
  } else if (abs(down) > 1e-4) {
    float t = onTarget.z / down;
    vec3 hit = onTarget + t * direction;
    bool ahead = perspective < 0.5 || dot(hit - eye, direction) > 0.0;
    // Size of a pixel on the ground, analytic so that the horizon makes no seam.
    float scale = perspective > 0.5 ? metresPerPixel * max(dot(eye - hit, back_W), 0.0) / distance_ : metresPerPixel;
    vec2 flat_ = length(back_W.xy) > 1e-5 ? normalize(back_W.xy) : vec2(1.0, 0.0);
    vec2 footprint = scale * (vec2(1.0) + abs(flat_) * (1.0 / max(abs(down), 0.01) - 1.0));
    if (ahead && down > 0.0) {
      base = groundFromAbove(base, hit.xy, footprint, down);
    } else if (ahead) {
      float fade = 1.0 - smoothstep(0.35, 1.0, length(hit.xy - middle.xy) / middle.z);
      base = mix(base, line, 0.5 * fade * lines(hit.xy, 1.0, footprint, 1.0));
    }
  }
  colour = vec4(base, 0.0);
  shape = vec4(0.5, 0.5, 0.5, 0.0);
}
