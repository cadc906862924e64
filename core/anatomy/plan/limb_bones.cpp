#include "core/anatomy/plan/limb_rig.h"

namespace zyga::anatomy {

std::array<Eigen::Vector3d, 3> limbAxes(Side side) {
  // A turn about a mirrored axis runs the other way round, so the two axes in the mid-plane change sign.
  const double sign = side == Side::Right ? -1 : 1;
  return {Eigen::Vector3d(0, -1, 0), Eigen::Vector3d(sign, 0, 0), Eigen::Vector3d(0, 0, -sign)};
}

TypedLimits typedLimits(AngleLimits first, AngleLimits second, AngleLimits third) {
  return {{first, second, third}, "author's choice"};
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
