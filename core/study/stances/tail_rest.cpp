#include "core/study/stances/tail_rest.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/kinematics/bend.h"
#include "core/study/mass/bone_points.h"

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
  // Well inside the ranges: spines and arches of a tail that bends as far as its facets go touch before they end.
  constexpr double kShare = 0.75;
  for (const kinematics::JointIndex joint : chain) {
    const anatomy::AngleLimits whole = bend.range(joint);
    ranges.push_back({kShare * whole.least, kShare * whole.most});
  }

  const auto height = [&](kinematics::JointIndex joint) {
    const anatomy::Joint& j = specimen[joint];
    return (X_WB[j.proximal.value] * j.centreProximal).z() - depth[j.distal.value];
  };
  // The tail comes down along an even bend: a slope in proportion to the root of the height lands level, and the
  // steeper it starts against the slope with which the tail leaves the hip the sooner it lies on the ground.
  const double fall = std::max(0.1, -std::sin(bend.slopeOf(X_WB, specimen[chain.front()].distal)));
  const double start = std::max(0.1, height(chain.front()));
  const auto lay = [&](double steepness) {
    for (std::size_t i = 0; i < chain.size(); ++i) {
      pose[chain[i]].setZero();
      kinematics::placeInto(specimen, articulation, pose, X_WB);
      const double h = height(chain[i]);
      const double down = h > 0 ? steepness * fall * std::sqrt(h / start) : h;
      const double missing = -std::asin(std::clamp(down, -0.3, 0.95)) - bend.slopeOf(X_WB, specimen[chain[i]].distal);
      pose[chain[i]][0] = std::clamp(missing, ranges[i].least, ranges[i].most);
    }
    kinematics::placeInto(specimen, articulation, pose, X_WB);
    return lowest(points, X_WB);
  };
  constexpr double kSunk = 0.008;  // m, less than what counts as touching
  double nearest = 1, least = std::numeric_limits<double>::infinity();
  for (double steepness = 2; steepness > 0.35; steepness -= 0.1) {
    const double z = lay(steepness);
    if (std::abs(z) < kSunk) return z;
    if (std::abs(z) < least) nearest = steepness;
    least = std::min(least, std::abs(z));
  }
  return lay(nearest);
}

}  // namespace zyga::study
