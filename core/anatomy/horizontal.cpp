#include "core/anatomy/horizontal.h"

namespace zyga::anatomy {
namespace {

using Eigen::Vector3d;

constexpr double kNoLength = 1e-9;  ///< m

/// In the mid-plane, of length 1.
std::optional<Vector3d> levelled(Vector3d cranial) {
  cranial.y() = 0;
  if (!(cranial.norm() > kNoLength)) return std::nullopt;
  return cranial.normalized();
}

std::optional<Vector3d> between(const Bone& bone, std::string_view caudal, std::string_view cranial) {
  const auto from = bone.landmarks.find(caudal), to = bone.landmarks.find(cranial);
  if (from == bone.landmarks.end() || to == bone.landmarks.end()) return std::nullopt;
  return to->second - from->second;
}

/// Mean of the outward normal of the cranial face and the inward one of the caudal face.
std::optional<Vector3d> squareToFaces(const Specimen& specimen, BoneIndex bone) {
  std::optional<Vector3d> cranialFace, caudalFace;
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    const Joint& joint = specimen.joints[j];
    if (joint.proximal != bone && joint.distal != bone) continue;
    const BoneIndex other = joint.proximal == bone ? joint.distal : joint.proximal;
    if (!isVertebra(specimen[other].name.kind)) continue;
    const Vector3d outwards = joint.proximal == bone ? joint.longAxisProximal : Vector3d(-joint.longAxisDistal);
    (specimen.caudalBone({j}) == bone ? cranialFace : caudalFace) = outwards;
  }
  if (!cranialFace || !caudalFace) return std::nullopt;
  return *cranialFace - *caudalFace;
}

std::optional<Vector3d> stepToCopy(const Bone& bone) {
  const auto centrum = between(bone, "caudal", "cranial");
  if (!centrum) return std::nullopt;
  Vector3d sum = *centrum;
  for (const auto& [hind, front] : {std::pair(FacetRole::PostzygLeft, FacetRole::PrezygLeft),
                                    std::pair(FacetRole::PostzygRight, FacetRole::PrezygRight)}) {
    const Facet *postzyg = bone.facet(hind), *prezyg = bone.facet(front);
    if (!postzyg || !prezyg) return std::nullopt;
    sum += prezyg->centre - postzyg->centre;
  }
  return sum;
}

}  // namespace

std::optional<Vector3d> cranialDirection(const Specimen& specimen, BoneIndex bone, HorizontalBy by) {
  const Bone& vertebra = specimen[bone];
  if (!isVertebra(vertebra.name.kind)) return std::nullopt;
  std::optional<Vector3d> cranial;
  switch (by) {
    case HorizontalBy::CanalFloor:
      return Vector3d::UnitX();
    case HorizontalBy::CentrumAxis:
      cranial = between(vertebra, "caudalRim", "cranialRim");
      break;
    case HorizontalBy::CentrumFaces:
      cranial = squareToFaces(specimen, bone);
      break;
    case HorizontalBy::Articulation:
      cranial = stepToCopy(vertebra);
      break;
  }
  return cranial ? levelled(*cranial) : std::nullopt;
}

}  // namespace zyga::anatomy
