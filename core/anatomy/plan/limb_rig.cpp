#include "core/anatomy/plan/limb_rig.h"

#include <algorithm>

namespace zyga::anatomy {

std::vector<Eigen::Isometry3d> restFrames(const Specimen& specimen) {
  std::vector<Eigen::Isometry3d> X_RB(specimen.bones.size(), Eigen::Isometry3d::Identity());
  for (const Joint& joint : specimen.joints)
    X_RB[joint.distal.value] = X_RB[joint.proximal.value] * Eigen::Translation3d(joint.centreProximal) *
                               Eigen::Isometry3d(Eigen::AngleAxisd(joint.restRotation)) *
                               Eigen::Translation3d(-joint.centreDistal);
  return X_RB;
}

Eigen::Vector3d sided(Side side, const Eigen::Vector3d& left) {
  return side == Side::Right ? Eigen::Vector3d(left.x(), -left.y(), left.z()) : left;
}

Eigen::Matrix3d sided(Side side, const Eigen::Matrix3d& left) {
  if (side != Side::Right) return left;
  const Eigen::Matrix3d mirror = Eigen::Vector3d(1, -1, 1).asDiagonal();
  return mirror * left * mirror;
}

Eigen::Matrix3d frameAlong(const Eigen::Vector3d& up, const Eigen::Vector3d& cranial) {
  Eigen::Matrix3d R;
  R.col(2) = up.normalized();
  R.col(1) = R.col(2).cross(cranial).normalized();
  R.col(0) = R.col(1).cross(R.col(2));
  return R;
}

Eigen::Matrix3d swungForward(double angle) {
  return Eigen::AngleAxisd(-angle, Eigen::Vector3d::UnitY()).toRotationMatrix();
}

double radians(double degrees) { return degrees * 3.14159265358979323846 / 180; }

TypedLimits limitsInDegrees(AngleLimits first, AngleLimits second, AngleLimits third) {
  for (AngleLimits* limits : {&first, &second, &third}) *limits = {radians(limits->min), radians(limits->max)};
  return typedLimits(first, second, third);
}

std::string LimbRig::sidedId(const std::string& stem) const { return stem + (side_ == Side::Right ? ".R" : ".L"); }

BoneIndex LimbRig::add(BoneKind kind, int number, int phalanx) {
  return addBone(specimen_, filled_, {kind, number, phalanx, side_});
}

double LimbRig::measure(BoneIndex bone, Measure measure) const { return specimen_[bone].measures.value(measure); }

void LimbRig::mark(BoneIndex bone, const std::string& landmark, const Eigen::Vector3d& p_B) {
  specimen_.bones[bone.value].landmarks[landmark] = sided(side_, p_B);
}

Eigen::Vector3d LimbRig::landmark(BoneIndex bone, std::string_view name) const {
  return sided(side_, specimen_[bone].landmark(name));
}

Eigen::Matrix3d LimbRig::attitude(BoneIndex bone) const {
  const Eigen::Matrix3d R_RB = restFrames(specimen_)[bone.value].linear();
  return sided(side_, R_RB);
}

Joint LimbRig::jointBetween(BoneIndex proximal, BoneIndex distal, const Eigen::Vector3d& p_P,
                            const Eigen::Matrix3d& R_PD) const {
  Joint joint;
  joint.region = regionOf(specimen_[distal].name);
  joint.proximal = proximal;
  joint.distal = distal;
  joint.centreProximal = sided(side_, p_P);
  joint.axes = limbAxes(side_);
  joint.restRotation = sided(side_, R_PD);
  joint.longAxisDistal = -Eigen::Vector3d::UnitZ();
  joint.longAxisProximal = joint.restRotation * joint.longAxisDistal;
  return joint;
}

void LimbRig::fix(BoneIndex proximal, BoneIndex distal, const Eigen::Vector3d& p_P, const Eigen::Matrix3d& R_PD) {
  Joint joint = jointBetween(proximal, distal, p_P, R_PD);
  joint.id = specimen_[distal].id;
  joint.kind = JointKind::Fixed;
  specimen_.joints.push_back(joint);
}

void LimbRig::hang(const std::string& stem, BoneIndex proximal, BoneIndex distal, const Eigen::Vector3d& p_P,
                   const TypedLimits& limits, const Eigen::Matrix3d& R_PD) {
  Joint joint = jointBetween(proximal, distal, p_P, R_PD);
  joint.id = sidedId(stem);
  joint.kind = JointKind::Typed;
  joint.typed = limits;
  specimen_.joints.push_back(joint);
}

void LimbRig::glide(const std::string& stem, BoneIndex proximal, BoneIndex distal, const Eigen::Vector3d& p_P,
                    const Eigen::Vector3d& p_PCentre, const TypedLimits& limits, const Eigen::Matrix3d& R_PD) {
  hang(stem, proximal, distal, p_P, limits, R_PD);
  Joint& joint = specimen_.joints.back();
  joint.centreProximal = sided(side_, p_PCentre);
  joint.centreDistal = sided(side_, Eigen::Vector3d(R_PD.transpose() * (p_PCentre - p_P)));
}

double markPhalanx(LimbRig& rig, BoneIndex bone, double knuckle) {
  const double length = rig.measure(bone, Measure::Length), height = rig.measure(bone, Measure::Height);
  const double far = std::min(0.33 * height, 0.4 * length);
  const double top = -1.05 * knuckle, bottom = top - length;
  rig.mark(bone, "proximal", Eigen::Vector3d::Zero());
  rig.mark(bone, "top", {0, 0, top});
  rig.mark(bone, "bottom", {0, 0, bottom});
  rig.mark(bone, "distal", {0, 0, bottom + far});
  rig.mark(bone, "sole", {-0.5 * height, 0, top - 0.5 * length});
  return far;
}

std::array<Eigen::Vector3d, 3> limbAxes(Side side) {
  // A turn about a mirrored axis runs the other way round, so the two axes in the mid-plane change sign.
  const double sign = side == Side::Right ? -1 : 1;
  return {Eigen::Vector3d(0, -1, 0), Eigen::Vector3d(sign, 0, 0), Eigen::Vector3d(0, 0, -sign)};
}

TypedLimits typedLimits(AngleLimits first, AngleLimits second, AngleLimits third) {
  return {{first, second, third}, kProgramDefault};
}

void addLimbs(Specimen& specimen, const MeasurementTable& filled) {
  for (Side side : {Side::Left, Side::Right}) {
    LimbRig rig(specimen, filled, side);
    addForeLimb(rig, addShoulderGirdle(rig));
  }
  for (Side side : {Side::Left, Side::Right}) {
    LimbRig rig(specimen, filled, side);
    addHindLimb(rig, addPelvis(rig));
  }
}

double standingMetatarsalSlope() { return radians(50); }

StandingLimbs standingLimbs() { return {radians(10), radians(-7), radians(-15), radians(15)}; }

std::map<std::string, Eigen::Vector3d> standingAngles(const Specimen& specimen) {
  const StandingLimbs stance = standingLimbs();
  const std::map<std::string, double> flexion{
      {"hip", stance.hip}, {"knee", stance.knee}, {"shoulder", stance.shoulder}, {"elbow", stance.elbow}};
  std::map<std::string, Eigen::Vector3d> angles;
  for (const auto& [stem, angle] : flexion)
    for (const std::string side : {".L", ".R"})
      if (specimen.findJoint(stem + side)) angles[stem + side] = Eigen::Vector3d(angle, 0, 0);
  return angles;
}

}  // namespace zyga::anatomy
