#include "core/study/tail_rest.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/kinematics/bend.h"
#include "core/study/bone_points.h"

namespace zyga::study {
namespace {

using anatomy::BoneIndex;
using anatomy::Region;
using anatomy::Specimen;
using Eigen::Vector3d;
using kinematics::Placement;
using kinematics::Pose;

struct TailPoint {
  BoneIndex bone;
  Vector3d p_B;
};

std::vector<TailPoint> tailPoints(const Specimen& specimen) {
  std::vector<TailPoint> points;
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
    const Region region = anatomy::regionOf(specimen.bones[i].name);
    if (region != Region::Caudal && region != Region::Chevrons) continue;
    for (const Vector3d& p_B : bonePoints(specimen.bones[i])) points.push_back({BoneIndex{i}, p_B});
  }
  return points;
}

double lowest(const std::vector<TailPoint>& points, const Placement& X_WB) {
  double z = std::numeric_limits<double>::infinity();
  for (const TailPoint& point : points) z = std::min(z, (X_WB[point.bone.value] * point.p_B).z());
  return z;
}

/// How far a tail vertebra and what hangs on it reach below its axis, by bone, m.
std::vector<double> depths(const Specimen& specimen, const std::vector<TailPoint>& points, const Placement& X_WB) {
  std::vector<double> depth(specimen.bones.size(), 0);
  for (const TailPoint& point : points) {
    BoneIndex vertebra = point.bone;
    if (anatomy::regionOf(specimen[vertebra].name) == Region::Chevrons) {
      const auto joint = specimen.jointAbove(vertebra);
      if (joint) vertebra = specimen[*joint].proximal;
    }
    const Vector3d p = X_WB[vertebra.value].inverse() * (X_WB[point.bone.value] * point.p_B);
    depth[vertebra.value] = std::max(depth[vertebra.value], -p.z());
  }
  return depth;
}

}  // namespace

double lowestOfTail(const Specimen& specimen, const Placement& X_WB) { return lowest(tailPoints(specimen), X_WB); }

double restTailOnGround(const Specimen& specimen, const kinematics::Articulation& articulation,
                        const SagittalBend& bend, Pose& pose) {
  const std::vector<kinematics::JointIndex> chain = kinematics::tailChain(specimen);
  if (chain.empty()) return 0;
  const std::vector<TailPoint> points = tailPoints(specimen);
  for (const kinematics::JointIndex joint : chain) pose[joint].setZero();
  Placement X_WB = kinematics::place(specimen, articulation, pose);
  const std::vector<double> depth = depths(specimen, points, X_WB);
  std::vector<anatomy::AngleLimits> ranges;
  for (const kinematics::JointIndex joint : chain) ranges.push_back(bend.range(joint));

  const auto height = [&](kinematics::JointIndex joint) {
    const anatomy::Joint& j = specimen[joint];
    return (X_WB[j.proximal.value] * j.centreProximal).z() - depth[j.distal.value];
  };
  // The tail comes down along a curve whose fall is in proportion to its height over the ground, which starts at the
  // slope the tail leaves the hip with and lands without a kink.
  const double fall = -std::sin(bend.slopeOf(X_WB, specimen[chain.front()].distal));
  const double start = height(chain.front());
  const auto lay = [&](double deeper) {
    const double length = (start + deeper) / std::max(fall, 0.1);
    for (std::size_t i = 0; i < chain.size(); ++i) {
      pose[chain[i]].setZero();
      kinematics::placeInto(specimen, articulation, pose, X_WB);
      const double h = height(chain[i]);
      const double wanted = -std::asin(std::clamp((h + (h > 0 ? deeper : 0)) / length, -0.3, 0.95));
      pose[chain[i]][0] =
          std::clamp(wanted - bend.slopeOf(X_WB, specimen[chain[i]].distal), ranges[i].least, ranges[i].most);
    }
    kinematics::placeInto(specimen, articulation, pose, X_WB);
    return lowest(points, X_WB);
  };
  double high = -0.3 * std::max(start, 0.1), low = std::max(start, 0.1);  // too flat, too steep
  for (int step = 0; step < 16; ++step) {
    const double middle = (high + low) / 2;
    (lay(middle) > 0 ? high : low) = middle;
  }
  return lay(high);
}

}  // namespace zyga::study
