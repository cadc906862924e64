#include "core/study/ground/standing_feet.h"

#include <algorithm>

#include "core/kinematics/standing.h"
#include "core/study/mass/convex_hull.h"

namespace zyga::study {
namespace {

using anatomy::Region;

void measureSoles(StandingFoot& foot) {
  std::vector<Eigen::Vector2d> points;
  foot.lowest = foot.soles.front().z();
  for (const auto& sole : foot.soles) {
    points.emplace_back(sole.head<2>());
    foot.lowest = std::min(foot.lowest, sole.z());
  }
  foot.centre = middleOf(convexPolygon(std::move(points)));
}

/// What lies under a tail bone: the tip of its chevron, or the underside of its centrum.
std::vector<Eigen::Vector3d> undersides(const anatomy::Bone& bone) {
  if (bone.name.kind == anatomy::BoneKind::Chevron) return {bone.landmark("tip")};
  const double below = bone.measures.valueOr(anatomy::Measure::CotyleHeight, 0) / 2;
  const Eigen::Vector3d down(0, 0, -below);
  return {bone.landmark("cranialRim") + down, bone.landmark("caudalRim") + down};
}

}  // namespace

std::vector<StandingFoot> feetOf(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB) {
  std::vector<StandingFoot> feet;
  for (const kinematics::Foot foot : kinematics::kFeet) feet.emplace_back().foot = foot;
  for (const auto& sole : kinematics::solePoints(specimen)) {
    const auto name = kinematics::footOf(specimen, sole.bone);
    const auto found = std::find_if(feet.begin(), feet.end(), [&](const auto& each) { return each.foot == name; });
    if (found != feet.end()) found->soles.push_back(X_WB[sole.bone.value] * sole.p_BSole);
  }
  std::erase_if(feet, [](const StandingFoot& foot) { return foot.soles.empty(); });
  for (auto& foot : feet) measureSoles(foot);
  return feet;
}

std::vector<Eigen::Vector3d> tailRests(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB) {
  std::vector<Eigen::Vector3d> rests;
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
    const auto& bone = specimen.bones[i];
    const Region region = regionOf(bone.name);
    if (region != Region::Caudal && region != Region::Chevrons) continue;
    for (const auto& p_B : undersides(bone)) {
      const Eigen::Vector3d p_W = X_WB[i] * p_B;
      if (p_W.z() < kinematics::kOnGround) rests.push_back(p_W);
    }
  }
  return rests;
}

}  // namespace zyga::study
