#include "core/kinematics/standing.h"

#include <algorithm>
#include <cmath>

namespace zyga::kinematics {
namespace {

using anatomy::BoneKind;

bool isFore(const anatomy::Bone& bone) { return anatomy::regionOf(bone.name) == anatomy::Region::Manus; }

/// Lowest sole of the fore or hind feet, in the frame of the root with the given placement.
std::optional<Eigen::Vector3d> lowest(const anatomy::Specimen& specimen, const std::vector<SolePoint>& soles,
                                      const Placement& X_RB, const Eigen::Matrix3d& R_WR, bool fore) {
  std::optional<Eigen::Vector3d> found;
  for (const SolePoint& sole : soles) {
    if (isFore(specimen[sole.bone]) != fore) continue;
    const Eigen::Vector3d p = X_RB[sole.bone.value] * sole.p_BSole;
    if (!found || (R_WR * p).z() < (R_WR * *found).z()) found = p;
  }
  return found;
}

Eigen::Matrix3d pitchUp(double angle) { return Eigen::AngleAxisd(-angle, Eigen::Vector3d::UnitY()).toRotationMatrix(); }

/// Turns the joints on which a limb hangs so that the limb keeps its attitude to the ground when the trunk rises by
/// `change`: flexion is positive forwards, and a rising trunk carries the limb forwards.
void keepAttitude(const anatomy::Specimen& specimen, Pose& pose, double change) {
  for (const char* id : {"hip.L", "hip.R", "shoulder.L", "shoulder.R"}) {
    if (const auto joint = specimen.findJoint(id)) pose[*joint][0] -= change;
  }
}

}  // namespace

std::vector<SolePoint> solePoints(const anatomy::Specimen& specimen) {
  std::vector<SolePoint> soles;
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
    const auto sole = specimen.bones[i].landmarks.find("sole");
    if (sole != specimen.bones[i].landmarks.end()) soles.push_back({BoneIndex{i}, sole->second});
  }
  return soles;
}

Pose stand(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& start) {
  const std::vector<SolePoint> soles = solePoints(specimen);
  Pose pose = start;
  pose.X_WRoot = Eigen::Isometry3d::Identity();
  double slope = 0;  // of the root's x axis against the ground
  for (int step = 0; step < 40; ++step) {
    const Placement X_RB = place(specimen, articulation, pose);  // the root is at the origin of its own frame here
    const Eigen::Matrix3d R_WR = pitchUp(slope);
    const auto hind = lowest(specimen, soles, X_RB, R_WR, false);
    const auto fore = lowest(specimen, soles, X_RB, R_WR, true);
    if (!hind || !fore) return start;
    const Eigen::Vector3d base = *fore - *hind;
    // The line between the soles must be level: the root rises by as much as the line falls.
    const double change = -std::atan2(base.z(), base.x()) - slope;
    slope += change;
    keepAttitude(specimen, pose, change);
    if (std::abs(change) < 1e-10) break;
  }
  const Placement X_RB = place(specimen, articulation, pose);
  const Eigen::Matrix3d R_WR = pitchUp(slope);
  const auto hind = lowest(specimen, soles, X_RB, R_WR, false);
  pose.X_WRoot.linear() = R_WR;
  pose.X_WRoot.translation() = Eigen::Vector3d(0, 0, -(R_WR * *hind).z());
  return pose;
}

}  // namespace zyga::kinematics
