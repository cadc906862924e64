#pragma once

#include <random>

#include "core/kinematics/pose.h"

// Trees that have nothing to do with animals, to compare kinematics on.
namespace zyga::test {

class Chance {
 public:
  explicit Chance(unsigned seed) : random_(seed) {}

  double in(double least, double most) { return std::uniform_real_distribution<double>(least, most)(random_); }
  std::size_t below(std::size_t n) { return std::uniform_int_distribution<std::size_t>(0, n - 1)(random_); }
  Eigen::Vector3d point() {
    const double x = in(-1, 1), y = in(-1, 1), z = in(-1, 1);
    return {x, y, z};
  }
  Eigen::Vector3d unit() { return point().normalized(); }
  Eigen::Matrix3d rotation() { return Eigen::AngleAxisd(in(-3, 3), unit()).toRotationMatrix(); }

 private:
  std::mt19937 random_;
};

/// Any three square axes, of either hand, along the coordinate axes or not.
inline std::array<Eigen::Vector3d, 3> randomAxes(Chance& chance) {
  Eigen::Matrix3d R = chance.below(2) ? chance.rotation() : Eigen::Matrix3d(Eigen::Matrix3d::Identity());
  for (int k = 0; k < 3; ++k)
    if (chance.below(2)) R.col(k) = -R.col(k);
  return {R.col(0), R.col(1), R.col(2)};
}

inline anatomy::Joint randomJoint(Chance& chance, std::size_t distal) {
  anatomy::Joint joint;
  joint.kind = chance.below(4) == 0 ? anatomy::JointKind::Fixed : anatomy::JointKind::Typed;
  joint.proximal = {chance.below(distal)};
  joint.distal = {distal};
  joint.centreProximal = chance.point();
  joint.centreDistal = chance.point();
  joint.axes = randomAxes(chance);
  joint.longAxisProximal = chance.unit();
  joint.longAxisDistal = chance.unit();
  joint.cartilageShareProximal = chance.in(0, 1);
  return joint;
}

struct RandomTree {
  anatomy::Specimen specimen;
  kinematics::Articulation articulation;
  kinematics::Pose pose;

  RandomTree(Chance& chance, std::size_t bones) {
    specimen.bones.resize(bones);
    for (std::size_t i = 1; i < bones; ++i) {
      specimen.joints.push_back(randomJoint(chance, i));
      if (i == 1) specimen.joints.back().kind = anatomy::JointKind::Typed;  // KDL does not take a tree without joints
      articulation.rests.push_back({chance.rotation(), chance.in(0, 0.1)});
      const bool fixed = specimen.joints.back().kind == anatomy::JointKind::Fixed;
      pose.angles.push_back(fixed ? Eigen::Vector3d(Eigen::Vector3d::Zero()) : Eigen::Vector3d(3 * chance.point()));
    }
    pose.X_WRoot.linear() = chance.rotation();
    pose.X_WRoot.translation() = 10 * chance.point();
  }
};

}  // namespace zyga::test
