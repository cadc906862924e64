#include "core/solid/watertight/joint_bridges.h"

#include <limits>

namespace zyga::solid {
namespace {

using anatomy::BoneIndex;

/// The bone that carries the surface: a rib grown into its vertebra is the vertebra.
BoneIndex carrier(const anatomy::Specimen& specimen, BoneIndex bone) {
  while (specimen[bone].fusedInto) bone = *specimen[bone].fusedInto;
  return bone;
}

/// Narrowest gap (m) between two bones; negative where they enter each other.
double gapBetween(const PosedBone& a, const PosedBone& b) {
  const Eigen::Isometry3f X_AB = (a.X_WB.inverse() * b.X_WB).cast<float>();
  float least = std::numeric_limits<float>::max();
  for (const Eigen::Vector3f& p_B : b.field->surfacePoints()) {
    const Eigen::Vector3f p_A = X_AB * p_B;
    if (a.field->box().exteriorDistance(p_A) < least) least = std::min(least, a.field->distance(p_A));
  }
  return least;
}

}  // namespace

JointBridges jointBridges(const PosedSkeleton& skeleton, const BoneFields& fields, double overlap, double widest) {
  JointBridges out;
  for (std::size_t j = 0; j < skeleton.specimen.joints.size(); ++j) {
    const anatomy::Joint& joint = skeleton.specimen.joints[j];
    const BoneIndex a = carrier(skeleton.specimen, joint.proximal), b = carrier(skeleton.specimen, joint.distal);
    if (a == b || !fields[a.value] || !fields[b.value]) continue;
    Bridge bridge{{fields[a.value], skeleton.X_WB[a.value]}, {fields[b.value], skeleton.X_WB[b.value]}};
    const double gap = gapBetween(bridge.a, bridge.b);
    if (gap > widest) {
      out.unfilled.push_back({j});
      continue;
    }
    bridge.width = std::max(gap, 0.0) + overlap;
    out.bridges.push_back(bridge);
  }
  return out;
}

}  // namespace zyga::solid
