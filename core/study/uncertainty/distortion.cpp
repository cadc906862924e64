#include "core/study/uncertainty/distortion.h"

#include <algorithm>
#include <optional>

namespace zyga::study {
namespace {

using Eigen::Matrix3d;
using Eigen::Vector3d;

/// Streams below 2^16 are the callers' of withErrors; a specimen has fewer than 4096 bones.
constexpr std::uint64_t kFirstStream = 4096, kStreamsOfBone = 8;

struct Spreads {
  double stretch, shear;
};

std::optional<Spreads> spreadsOf(const anatomy::Bone& bone, const DistortionErrors& errors) {
  if (bone.evidence == anatomy::Evidence::FoundDeformed) return Spreads{errors.deformedStretch, errors.deformedShear};
  if (bone.scanned) return Spreads{errors.scannedStretch, errors.scannedShear};
  return std::nullopt;
}

Matrix3d mapOf(const Spreads& spreads, const Draw& draw, std::size_t bone) {
  const auto z = [&](std::uint64_t k) {
    return std::clamp(draw.normal(kFirstStream + kStreamsOfBone * bone + k), -3.0, 3.0);
  };
  Matrix3d map = Matrix3d::Identity();
  for (int k = 0; k < 3; ++k) map(k, k) += spreads.stretch * z(static_cast<std::uint64_t>(k));
  map(0, 2) = spreads.shear * z(3);
  map(1, 2) = spreads.shear * z(4);
  map(0, 1) = spreads.shear * z(5);
  return map;
}

/// A planar patch stays planar under a linear map.
void map(anatomy::Facet& facet, const Matrix3d& A) {
  const Vector3d slide = A * facet.slide, across = A * facet.across();
  anatomy::Facet out = facet;
  out.centre = A * facet.centre;
  out.normal = (A.inverse().transpose() * facet.normal).normalized();
  out.slide = slide.normalized();
  const Vector3d outAcross = out.across();
  for (Eigen::Vector2d& corner : out.outline) {
    const Vector3d d = corner.x() * slide + corner.y() * across;
    corner = {d.dot(out.slide), d.dot(outAcross)};
  }
  facet = std::move(out);
}

}  // namespace

anatomy::Specimen distorted(anatomy::Specimen specimen, const DistortionErrors& errors, const Draw& draw) {
  std::vector<std::optional<Matrix3d>> maps(specimen.bones.size());
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
    anatomy::Bone& bone = specimen.bones[i];
    const auto spreads = spreadsOf(bone, errors);
    if (!spreads || (spreads->stretch == 0 && spreads->shear == 0)) continue;
    maps[i] = mapOf(*spreads, draw, i);
    for (anatomy::Facet& facet : bone.facets) map(facet, *maps[i]);
    for (auto& [name, p_B] : bone.landmarks) p_B = (*maps[i] * p_B).eval();
  }
  for (anatomy::Joint& joint : specimen.joints) {
    if (const auto& A = maps[joint.proximal.value]) {
      joint.centreProximal = (*A * joint.centreProximal).eval();
      if (!joint.longAxisProximal.isZero(0)) joint.longAxisProximal = (*A * joint.longAxisProximal).normalized();
    }
    if (const auto& A = maps[joint.distal.value]) {
      joint.centreDistal = (*A * joint.centreDistal).eval();
      if (!joint.longAxisDistal.isZero(0)) joint.longAxisDistal = (*A * joint.longAxisDistal).normalized();
    }
  }
  return specimen;
}

}  // namespace zyga::study
