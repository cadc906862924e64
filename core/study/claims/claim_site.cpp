#include "core/study/claims/claim_site.h"

#include <algorithm>
#include <cmath>

#include "core/kinematics/bend.h"
#include "core/kinematics/feet.h"
#include "core/range/joint_evaluator.h"

namespace zyga::study {
namespace {

using anatomy::Specimen;
using Eigen::Vector3d;
using kinematics::BoneIndex;
using kinematics::JointIndex;
using kinematics::Placement;

/// The direction made level, or +x where it stands upright.
Vector3d levelledDirection(Vector3d direction) {
  constexpr double kUpright = 1e-6;
  direction.z() = 0;
  return direction.norm() > kUpright ? Vector3d(direction.normalized()) : Vector3d(Vector3d::UnitX());
}

Vector3d landmarkOr(const anatomy::Bone& bone, std::string_view name, const Vector3d& otherwise) {
  const auto found = bone.landmarks.find(name);
  return found != bone.landmarks.end() ? found->second : otherwise;
}

bool assessed(const range::Scenario& scenario, JointIndex joint) {
  const range::JointEvaluator judge(scenario.specimen(), scenario.articulation(), scenario.assumptions(), joint);
  return !judge.fixed() && judge.hasCriteria();
}

void setSnout(const Specimen& specimen, ClaimSite& site) {
  const auto skull = specimen.findBone("skull");
  if (!skull) {
    site.missing = {kClaimNeedsSkull, {}};
    return;
  }
  site.joints = kinematics::neckChain(specimen);
  site.span.to = *skull;
  site.span.p_To = landmarkOr(specimen[*skull], "snout", Vector3d::Zero());
}

void setNeck(const Specimen& specimen, const Placement& X_WB, ClaimSite& site) {
  site.joints = jointsOf(specimen, Chain::Neck);
  const auto atlas = specimen.findBone("C1");
  if (!atlas || site.joints.empty()) {
    site.missing = {kClaimNeedsNeck, {}};
    return;
  }
  const anatomy::Joint& first = specimen[site.joints.front()];
  site.span = {first.proximal, first.centreProximal, *atlas, landmarkOr(specimen[*atlas], "cranial", Vector3d::Zero())};
  site.heading_W = levelledDirection(X_WB[first.proximal.value].linear().col(0));
}

void setNeckBase(const Specimen& specimen, const Placement& X_WB, anatomy::HorizontalBy horizontalBy, ClaimSite& site) {
  const auto last = specimen.findBone("C" + std::to_string(specimen.counts.cervical));
  if (last) site.joints = kinematics::dragChain(specimen, *last);
  if (site.joints.empty()) {
    site.missing = {kClaimNeedsNeck, {}};
    return;
  }
  const auto along = anatomy::cranialDirection(specimen, *last, horizontalBy);
  if (!along) {
    site.missing = {kClaimNeedsHorizontal, {reason::text(specimen[*last].id)}};
    return;
  }
  site.span = {*last, Vector3d::Zero(), *last, *along};
  site.heading_W = levelledDirection(X_WB[specimen[site.joints.front()].proximal.value].linear().col(0));
}

void setTailBase(const Specimen& specimen, const Placement& X_WB, ClaimSite& site) {
  const auto first = specimen.findBone("Ca1"), fifth = specimen.findBone("Ca5");
  if (fifth) site.joints = kinematics::dragChain(specimen, *fifth);
  if (!first || site.joints.empty()) {
    site.missing = {kClaimNeedsFiveCaudals, {}};
    return;
  }
  site.chain = Chain::Tail;
  site.span = {*first, landmarkOr(specimen[*first], "cranialRim", Vector3d::Zero()), *fifth,
               landmarkOr(specimen[*fifth], "caudalRim", Vector3d::Zero())};
  site.heading_W = levelledDirection(-X_WB[specimen[site.joints.front()].proximal.value].linear().col(0));
}

void setForefeet(const Specimen& specimen, const Placement& X_WB, ClaimSite& site) {
  const std::vector<kinematics::Foot> planted = kinematics::plantedFeet(specimen, X_WB);
  std::vector<Vector3d> standing, all;
  for (const kinematics::FootRig& rig : kinematics::footRigs(specimen)) {
    if (!isFore(rig.foot)) continue;
    all.push_back(X_WB[rig.bone.value] * rig.p_BSole);
    if (std::find(planted.begin(), planted.end(), rig.foot) != planted.end()) standing.push_back(all.back());
  }
  if (all.empty()) {
    site.missing = {kClaimNeedsForefeet, {}};
    return;
  }
  const auto& feet = standing.empty() ? all : standing;
  const auto foremost = std::max_element(feet.begin(), feet.end(), [&](const Vector3d& a, const Vector3d& b) {
    return a.dot(site.ahead_W) < b.dot(site.ahead_W);
  });
  // In the mid-plane of the hips, as far ahead as that foot.
  const Vector3d& hips = X_WB.front().translation();
  site.p_WForefeet = hips + (*foremost - hips).dot(site.ahead_W) * site.ahead_W;
  site.p_WForefeet.z() = 0;
}

/// In one pass: the joint that carries a bone comes before those that start from it.
std::vector<BoneIndex> carriedBy(const Specimen& specimen, const std::vector<JointIndex>& joints) {
  if (joints.empty()) return {};
  std::vector<bool> carried(specimen.bones.size(), false);
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    const anatomy::Joint& joint = specimen.joints[j];
    carried[joint.distal.value] = carried[joint.proximal.value] || JointIndex{j} == joints.front();
  }
  std::vector<BoneIndex> bones;
  for (std::size_t i = 0; i < carried.size(); ++i)
    if (carried[i]) bones.push_back({i});
  return bones;
}

}  // namespace

double depthInGround(const Specimen& specimen, const Placement& X_WB, const ClaimSite& site) {
  double lowest = 0;
  for (const BoneIndex bone : site.carried) {
    for (const auto& [name, p_B] : specimen[bone].landmarks) lowest = std::min(lowest, (X_WB[bone.value] * p_B).z());
  }
  return -lowest;
}

ClaimSite siteOf(const range::Scenario& scenario, const Claim& claim) {
  const Specimen& specimen = scenario.specimen();
  const Placement& X_WB = scenario.placement();
  ClaimSite site;
  site.ahead_W = levelledDirection(scenario.pose().X_WRoot.linear().col(0));
  switch (claim.kind) {
    case ClaimKind::NeckSlope:
      setNeck(specimen, X_WB, site);
      break;
    case ClaimKind::NeckBaseSlope:
      setNeckBase(specimen, X_WB, scenario.assumptions().horizontalBy, site);
      break;
    case ClaimKind::TailBaseLevel:
      setTailBase(specimen, X_WB, site);
      break;
    case ClaimKind::HeadHeight:
    case ClaimKind::SnoutToGround:
    case ClaimKind::HeadAhead:
      setSnout(specimen, site);
      if (site.missing.empty() && claim.kind != ClaimKind::HeadHeight) setForefeet(specimen, X_WB, site);
  }
  site.carried = carriedBy(specimen, site.joints);
  for (const JointIndex joint : site.joints) {
    if (!assessed(scenario, joint)) site.notJudged.push_back(joint);
  }
  std::erase_if(site.joints, [&](JointIndex joint) { return !assessed(scenario, joint); });
  return site;
}

double readingOf(const Claim& claim, const ClaimSite& site, const Eigen::Vector3d& span_W) {
  return claim.kind == ClaimKind::HeadHeight ? span_W.z() : std::atan2(span_W.z(), span_W.dot(site.heading_W));
}

double missingOf(const Claim& claim, double reading) {
  if (claim.kind == ClaimKind::TailBaseLevel) return std::abs(reading) - claim.value;
  return claim.bound == Bound::AtLeast ? claim.value - reading : reading - claim.value;
}

std::vector<JointIndex> foremostDorsals(const range::Scenario& scenario) {
  const Specimen& specimen = scenario.specimen();
  std::vector<JointIndex> joints;
  for (const char* id : {"D3", "D2", "D1"}) {
    const auto bone = specimen.findBone(id);
    const auto joint = bone ? specimen.jointAbove(*bone) : std::nullopt;
    if (joint && assessed(scenario, *joint)) joints.push_back(*joint);
  }
  return joints;
}

}  // namespace zyga::study
