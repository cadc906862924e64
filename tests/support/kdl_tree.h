#pragma once

#include <kdl/jntarray.hpp>
#include <kdl/tree.hpp>
#include <string>

#include "core/kinematics/pose.h"

namespace zyga::test {

inline KDL::Vector kdlVector(const Eigen::Vector3d& v) { return {v.x(), v.y(), v.z()}; }

inline KDL::Rotation kdlRotation(const Eigen::Matrix3d& R) {
  return {R(0, 0), R(0, 1), R(0, 2), R(1, 0), R(1, 1), R(1, 2), R(2, 0), R(2, 1), R(2, 2)};
}

inline Eigen::Isometry3d eigenFrame(const KDL::Frame& frame) {
  Eigen::Isometry3d X = Eigen::Isometry3d::Identity();
  for (int row = 0; row < 3; ++row) {
    for (int column = 0; column < 3; ++column) X(row, column) = frame.M(row, column);
    X(row, 3) = frame.p(row);
  }
  return X;
}

/// The same tree in the words of Orocos KDL: a moving joint becomes three revolute segments, a fixed one a fixed
/// segment. The last segment of each joint is called after the distal bone's index, the root after bone 0's.
class KdlTree {
 public:
  KdlTree(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation) : tree("0") {
    joints_.resize(specimen.joints.size());
    for (std::size_t j = 0; j < specimen.joints.size(); ++j) add(specimen.joints[j], articulation.rests[j], j);
  }

  KDL::JntArray positions(const kinematics::Pose& pose) const {
    KDL::JntArray q(tree.getNrOfJoints());
    for (std::size_t j = 0; j < joints_.size(); ++j)
      if (joints_[j].moves)
        for (unsigned k = 0; k < 3; ++k) q(joints_[j].first + k) = pose.angles[j][k];
    return q;
  }

  KDL::Tree tree;

 private:
  struct Place {
    bool moves = false;
    unsigned first = 0;
  };

  void add(const anatomy::Joint& joint, const kinematics::Articulation::Rest& rest, std::size_t j) {
    const std::string parent = std::to_string(joint.proximal.value), child = std::to_string(joint.distal.value);
    const double before = rest.cartilage * joint.cartilageShareProximal, after = rest.cartilage - before;
    const KDL::Frame socket(kdlRotation(rest.rotation),
                            kdlVector(joint.centreProximal + before * joint.longAxisProximal));
    const KDL::Frame head(kdlVector(after * joint.longAxisDistal - joint.centreDistal));
    if (joint.kind == anatomy::JointKind::Fixed) {
      tree.addSegment(KDL::Segment(child, KDL::Joint(KDL::Joint::None), socket * head), parent);
      return;
    }
    joints_[j] = {true, tree.getNrOfJoints()};
    const KDL::Joint first(socket.p, socket.M * kdlVector(joint.axes[0]), KDL::Joint::RotAxis);
    tree.addSegment(KDL::Segment(child + "a", first, socket), parent);
    const KDL::Joint second(KDL::Vector::Zero(), kdlVector(joint.axes[1]), KDL::Joint::RotAxis);
    tree.addSegment(KDL::Segment(child + "b", second), child + "a");
    const KDL::Joint third(KDL::Vector::Zero(), kdlVector(joint.axes[2]), KDL::Joint::RotAxis);
    tree.addSegment(KDL::Segment(child, third, head), child + "b");
  }

  std::vector<Place> joints_;
};

}  // namespace zyga::test
