#include "core/kinematics/feet.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "core/anatomy/plan/limb_rig.h"
#include "core/linear/linear.h"

namespace zyga::kinematics {
namespace {

using anatomy::BoneKind;
using anatomy::Region;
using anatomy::Side;
using anatomy::Specimen;
using Eigen::Vector3d;

std::string sided(std::string stem, Foot foot) { return stem + (isLeft(foot) ? ".L" : ".R"); }

/// How a bone of the foot is turned as the foot stands flat, against level axes.
Eigen::Matrix3d standingAttitude(Foot foot) {
  return isFore(foot) ? Eigen::Matrix3d::Identity() : anatomy::swungForward(anatomy::standingMetatarsalSlope());
}

/// Points of the sole, in the frame of the bone that the whole foot turns with. Marks lie on its bones, which do not
/// move against each other.
std::vector<Vector3d> solesOf(const Specimen& specimen, Foot foot, BoneIndex bone) {
  const Region region = isFore(foot) ? Region::Manus : Region::Pes;
  const Side side = isLeft(foot) ? Side::Left : Side::Right;
  const std::vector<Eigen::Isometry3d> X_RB = anatomy::restFrames(specimen);
  std::vector<Vector3d> soles;
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
    const anatomy::Bone& each = specimen.bones[i];
    const bool palm = each.name.kind == BoneKind::Metacarpal || each.name.kind == BoneKind::Metatarsal;
    if (!palm || each.name.side != side || anatomy::regionOf(each.name) != region) continue;
    const auto sole = each.landmarks.find("sole");
    if (sole != each.landmarks.end()) soles.push_back(X_RB[bone.value].inverse() * X_RB[i] * sole->second);
  }
  return soles;
}

std::optional<FootRig> rigOf(const Specimen& specimen, Foot foot) {
  const auto hanging = specimen.findJoint(sided(isFore(foot) ? "shoulder" : "hip", foot));
  const auto last = specimen.findJoint(sided(isFore(foot) ? "wrist" : "ankle", foot));
  if (!hanging || !last) return std::nullopt;
  FootRig rig;
  rig.foot = foot;
  rig.bone = specimen[*last].distal;
  rig.joints = specimen.chainTo(rig.bone);
  rig.joints.erase(rig.joints.begin(), std::find(rig.joints.begin(), rig.joints.end(), *hanging));
  rig.p_BSoles = solesOf(specimen, foot, rig.bone);
  if (rig.p_BSoles.empty()) return std::nullopt;
  rig.up_B = standingAttitude(foot).transpose() * Vector3d::UnitZ();
  Vector3d middle = Vector3d::Zero();
  double lowest = rig.p_BSoles.front().dot(rig.up_B);
  for (const Vector3d& p : rig.p_BSoles) {
    middle += p / static_cast<double>(rig.p_BSoles.size());
    lowest = std::min(lowest, p.dot(rig.up_B));
  }
  rig.p_BSole = middle + (lowest - middle.dot(rig.up_B)) * rig.up_B;
  return rig;
}

double lowestPoint(const FootRig& rig, const Eigen::Isometry3d& X_WFoot) {
  double lowest = (X_WFoot * rig.p_BSoles.front()).z();
  for (const Vector3d& p : rig.p_BSoles) lowest = std::min(lowest, (X_WFoot * p).z());
  return lowest;
}

}  // namespace

std::string_view toText(Foot foot) {
  switch (foot) {
    case Foot::LeftHind:
      return "left hind foot";
    case Foot::LeftFore:
      return "left fore foot";
    case Foot::RightHind:
      return "right hind foot";
    default:
      return "right fore foot";
  }
}

std::vector<FootRig> footRigs(const Specimen& specimen) {
  std::vector<FootRig> rigs;
  for (const Foot foot : kFeet) {
    if (auto rig = rigOf(specimen, foot)) rigs.push_back(std::move(*rig));
  }
  return rigs;
}

FootRig footRig(const Specimen& specimen, Foot foot) {
  if (auto rig = rigOf(specimen, foot)) return std::move(*rig);
  throw std::out_of_range("the specimen has no " + std::string(toText(foot)));
}

std::optional<Foot> footOf(const Specimen& specimen, BoneIndex bone) {
  const anatomy::BoneName& name = specimen[bone].name;
  const Region region = anatomy::regionOf(name);
  const bool ankle = name.kind == BoneKind::Astragalus;
  if ((region != Region::Manus && region != Region::Pes && !ankle) || name.side == Side::Midline) return std::nullopt;
  if (region == Region::Manus) return name.side == Side::Left ? Foot::LeftFore : Foot::RightFore;
  return name.side == Side::Left ? Foot::LeftHind : Foot::RightHind;
}

std::vector<FootPlace> footPlaces(const Specimen& specimen, const Placement& X_WB) {
  std::vector<FootPlace> places;
  for (const FootRig& rig : footRigs(specimen)) {
    const Eigen::Isometry3d& X_WFoot = X_WB[rig.bone.value];
    const Vector3d up_W = X_WFoot.linear() * rig.up_B;
    places.push_back({rig.foot, lowestPoint(rig, X_WFoot), std::atan2(up_W.head<2>().norm(), up_W.z())});
  }
  return places;
}

std::vector<Foot> plantedFeet(const Specimen& specimen, const Placement& X_WB) {
  std::vector<Foot> planted;
  for (const FootPlace& place : footPlaces(specimen, X_WB)) {
    if (std::abs(place.height) < kOnGround) planted.push_back(place.foot);
  }
  return planted;
}

Eigen::Isometry3d flatOnGround(const FootRig& rig, const Eigen::Isometry3d& X_WFoot) {
  const Vector3d up_W = X_WFoot.linear() * rig.up_B;
  Eigen::Isometry3d X_WFlat = Eigen::Isometry3d::Identity();
  X_WFlat.linear() = linear::turnBetween(up_W, Vector3d::UnitZ()) * X_WFoot.linear();
  const Vector3d p_WSole = X_WFoot * rig.p_BSole;
  X_WFlat.translation() = Vector3d(p_WSole.x(), p_WSole.y(), 0) - X_WFlat.linear() * rig.p_BSole;
  return X_WFlat;
}

}  // namespace zyga::kinematics
