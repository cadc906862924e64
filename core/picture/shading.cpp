#include "core/picture/shading.h"

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

}  // namespace zyga::picture
