#include "core/picture/lighting.h"

#include <algorithm>
#include <cmath>

#include "core/picture/colour.h"

namespace zyga::picture {

namespace {

// Linear radiances, tuned by eye on paper-coloured backgrounds: matte bone in a north-lit room.
const Eigen::Vector3f kKey(0.80f, 0.745f, 0.665f);
const Eigen::Vector3f kSky(0.54f, 0.528f, 0.51f);
const Eigen::Vector3f kGroundGlow(0.27f, 0.235f, 0.195f);
constexpr float kKeySpread = 0.14f;  // tangent of the half angle of the key light: about 8 degrees
constexpr float kWrap = 0.12f;       // light creeping round the terminator of a rough surface
constexpr float kBounce = 0.28f;     // share of the light that a near bone sends back

/// From the scene towards the key light: upper left of the picture and before the animal, never from below; steeper the
/// more the view is from above, so that the shadow stays by the animal.
Eigen::Vector3f keyDirection(const CameraRays& camera) {
  Eigen::Vector3f d = -0.52f * camera.right() + 0.66f * camera.up() + 0.62f * camera.back();
  const float above = std::max(camera.back().z(), 0.0f);
  d.z() = std::max(d.z(), 0.45f + 1.2f * above * above);
  return d.normalized();
}

/// What a ray that leaves the bones sees.
Eigen::Vector3f glow(const Eigen::Vector3f& direction) {
  const float up = smoothStep(-0.6f, 0.6f, direction.z());
  return kGroundGlow + up * (kSky - kGroundGlow);
}

}  // namespace

Eigen::Vector3f shoulder(const Eigen::Vector3f& colour) {
  constexpr float from = 0.66f;
  return colour.unaryExpr([](float c) { return c < from ? c : 1 - (1 - from) * std::exp((from - c) / (1 - from)); });
}

Eigen::Vector3f liftOff(const Eigen::Vector3f& p_W, const Eigen::Vector3f& face_W) {
  // Single precision resolves about a ten-millionth of the largest coordinate; two hundred times that is still far
  // below a millimetre on an animal of twenty metres.
  return p_W + (2e-5f * p_W.cwiseAbs().maxCoeff() + 2e-5f) * face_W;
}

Lighting::Lighting(const BoneScene& scene, const CameraRays& camera, const PictureOptions& options)
    : scene_(scene),
      key_(keyDirection(camera)),
      reach_(0.1f * static_cast<float>(scene.bounds().isEmpty() ? 1.0 : scene.bounds().diagonal().norm())),
      occlusionRays_(std::max(1, options.occlusionRays)),
      shadowRays_(std::max(1, options.shadowRays)) {}

float Lighting::keyShadow(const Eigen::Vector3f& p_W, const Eigen::Vector3f& normal_W, PixelSequence& sequence) const {
  float dark = 0;
  for (int i = 0; i < shadowRays_; ++i) {
    const Eigen::Vector3f direction = coneDirection(key_, kKeySpread, sequence.next());
    // A ray that would start into the bone itself is no shadow: the terminator takes care of it.
    if (direction.dot(normal_W) > 0 && scene_.blocked({p_W, direction})) dark += 1;
  }
  return dark / static_cast<float>(shadowRays_);
}

float Lighting::occlusion(const Eigen::Vector3f& p_W, const Eigen::Vector3f& normal_W, float reach,
                          PixelSequence& sequence) const {
  if (scene_.bounds().squaredExteriorDistance(p_W.cast<double>()) > reach * reach) return 0;
  const TangentFrame frame(normal_W);
  float dark = 0;
  for (int i = 0; i < occlusionRays_; ++i) {
    const float clear = scene_.clearance({p_W, cosineDirection(frame, sequence.next())}, reach);
    dark += 1 - smoothStep(0, reach, clear);
  }
  return dark / static_cast<float>(occlusionRays_);
}

Eigen::Vector3f Lighting::fill(const SurfaceHit& hit, const Eigen::Vector3f& albedo, PixelSequence& sequence) const {
  const TangentFrame frame(hit.normal_W);
  const Eigen::Vector3f origin = liftOff(hit.p_W, hit.face_W);
  Eigen::Vector3f sum = Eigen::Vector3f::Zero();
  for (int i = 0; i < occlusionRays_; ++i) {
    const Eigen::Vector3f direction = cosineDirection(frame, sequence.next());
    const float open = smoothStep(0, reach_, scene_.clearance({origin, direction}, reach_));
    const Eigen::Vector3f sky = glow(direction);
    // A hollow is lit by its own walls, which is why it looks warm rather than grey.
    sum += open * sky + (1 - open) * kBounce * sky.cwiseProduct(albedo);
  }
  return sum / static_cast<float>(occlusionRays_);
}

Eigen::Vector3f Lighting::bone(const SurfaceHit& hit, const Eigen::Vector3f& albedo, SampleSequences& sequences) const {
  const Eigen::Vector3f ambient = fill(hit, albedo, sequences.fill);
  const float facing = (hit.normal_W.dot(key_.normal) + kWrap) / (1 + kWrap);
  Eigen::Vector3f light = ambient;
  if (facing > 0) {
    const float lit = 1 - keyShadow(liftOff(hit.p_W, hit.face_W), hit.face_W, sequences.key);
    light += facing * lit * kKey;
  }
  return shoulder(albedo.cwiseProduct(light));
}

namespace {

const Eigen::Vector3f kShadowTint(0.20f, 0.165f, 0.135f);  // share of the background left in full shadow
const Eigen::Vector3f kShadowInk(0.055f, 0.044f, 0.034f);  // linear, where there is no background
constexpr float kKeyShare = 0.40f;
constexpr float kContactShare = 0.52f;
constexpr float kLineShare = 0.16f;
constexpr float kGrazing = 0.03f;  // sine of the angle under which the ground is seen as a line

}  // namespace

Ground::Ground(const BoneScene& scene, const CameraRays& camera, const Lighting& lighting,
               const PictureOptions& options)
    : scene_(scene),
      camera_(camera),
      lighting_(lighting),
      options_(options),
      box_(scene.bounds().cast<float>()),
      halfRow_(0.5f / static_cast<float>(sampleGrid(options.samplesPerPixel))) {
  if (!box_.isEmpty()) size_ = std::max(box_.diagonal().norm(), 1e-3f);
  if (options.horizon) horizon_.emplace(*options.horizon, options.height);
  onEdge_ = !camera.perspective() && std::abs(camera.back().z()) < kGrazing;
}

float Ground::horizon(float y) const {
  return horizon_ ? static_cast<float>(horizon_->cover(y - halfRow_, y + halfRow_)) : 0.0f;
}

/// 1 within the animal's footprint, falling to 0 at `width` outside it.
float Ground::nearness(const Eigen::Vector3f& p_W, float width) const {
  if (box_.isEmpty()) return 0;
  const Eigen::Vector2f p = p_W.head<2>();
  const Eigen::Vector2f outside =
      (box_.min().head<2>() - p).cwiseMax(p - box_.max().head<2>()).cwiseMax(Eigen::Vector2f::Zero());
  return 1 - smoothStep(0, width, outside.norm());
}

/// Lines every metre, one and a half pixels wide, gone where they would run together.
float Ground::grid(const Eigen::Vector3f& p_W, float footprint, float slant) const {
  float strength = 0;
  for (int axis = 0; axis < 2; ++axis) {
    const float off = std::abs(p_W[axis] - std::round(p_W[axis]));
    const float width = footprint * (1 + (1 / slant - 1) * std::abs(camera_.back()[axis]));
    strength =
        std::max(strength, (1 - smoothStep(0.4f * width, 1.1f * width, off)) * (1 - smoothStep(0.08f, 0.3f, width)));
  }
  return strength * nearness(p_W, 0.35f * size_);
}

Ground::Ink Ground::onPlane(const Ray& ray, SampleSequences& sequences) const {
  if (ray.direction.z() > -1e-4f || ray.origin.z() <= 0) return {};
  const float distance = -ray.origin.z() / ray.direction.z();
  const Eigen::Vector3f p_W = ray.origin + distance * ray.direction;
  const float near = nearness(p_W, 0.6f * size_);
  if (near <= 0) return {};
  const Eigen::Vector3f up = Eigen::Vector3f::UnitZ();
  const Eigen::Vector3f start(p_W.x(), p_W.y(), 1e-4f);
  const float contact = lighting_.occlusion(start, up, 1.5f * lighting_.reach(), sequences.fill);
  const float key = lighting_.keyShadow(start, up, sequences.key);
  Ink ink{near * (kKeyShare * key + kContactShare * contact), 0};
  if (options_.groundGrid) ink.line = kLineShare * grid(p_W, camera_.footprint(distance), -ray.direction.z());
  return ink;
}

/// Seen along the ground there is no surface to carry a shadow. As on a drawing, a line marks the ground and below it
/// the feet leave a soft tone: the occlusion of the ground averaged along the view, fading downwards.
Ground::Ink Ground::onEdge(const Ray& ray, SampleSequences& sequences) const {
  const float below = -ray.origin.z();
  const float depth = 0.014f * size_;
  const float pixel = camera_.footprint(1);
  if (below > 6 * depth || below < -2 * pixel || box_.isEmpty()) return {};
  const Eigen::Vector3f middle = ray.origin + (box_.center() - ray.origin).dot(ray.direction) * ray.direction;
  const float half = 0.5f * ray.direction.cwiseAbs().dot(box_.sizes());
  Ink ink;
  const float off = std::abs(below - 0.5f * pixel) / pixel;
  ink.line = 1.6f * kLineShare * (1 - smoothStep(0.5f, 0.9f, off)) * nearness(middle, 0.12f * size_);
  if (below < 0) return ink;
  float dark = 0;
  const int columns = lighting_.occlusionRays();
  for (int i = 0; i < columns; ++i) {
    const Eigen::Vector2f u = sequences.place.next();
    const Eigen::Vector3f p_W =
        middle + (2 * u.x() - 1) * half * ray.direction + (2 * u.y() - 1) * (0.3f * depth + below) * camera_.right();
    const TangentFrame frame(Eigen::Vector3f::UnitZ());
    const Ray upward{{p_W.x(), p_W.y(), 1e-4f}, cosineDirection(frame, sequences.fill.next())};
    const float reach = 0.5f * lighting_.reach();
    dark += 1 - smoothStep(0, reach, scene_.clearance(upward, reach));
  }
  const float fade = std::exp(-below / depth) * (1 - smoothStep(4 * depth, 6 * depth, below));
  ink.shadow = std::min(0.75f, 2.2f * dark / static_cast<float>(columns)) * fade;
  return ink;
}

Eigen::Vector4f Ground::behind(const Ray& ray, float y, SampleSequences& sequences) const {
  Ink ink;
  if (options_.ground) ink = onEdge_ ? onEdge(ray, sequences) : onPlane(ray, sequences);
  const float line = horizon(y);
  const Eigen::Vector3f lineInk =
      linearFromSrgb({kHorizonInk[0] / 255.0f, kHorizonInk[1] / 255.0f, kHorizonInk[2] / 255.0f});
  if (options_.transparentGround) {
    const float open = 1 - ink.shadow;
    return withAlpha(ink.shadow * kShadowInk + open * line * lineInk, ink.shadow + open * line);
  }
  const float t = std::clamp(y / static_cast<float>(options_.height), 0.0f, 1.0f);
  std::array<float, 3> mixed;
  for (std::size_t i = 0; i < 3; ++i) mixed[i] = options_.top[i] + t * (options_.bottom[i] - options_.top[i]);
  const Eigen::Vector3f paper = (1 - line) * linearFromSrgb(mixed) + line * lineInk;
  const float dark = std::min(1.0f, ink.shadow + ink.line);
  return withAlpha(paper.cwiseProduct(Eigen::Vector3f::Constant(1 - dark) + dark * kShadowTint), 1);
}

}  // namespace zyga::picture
