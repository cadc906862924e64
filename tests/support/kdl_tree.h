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
  KdlTree(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation)
      : tree(built(specimen, articulation)) {
    for (const anatomy::Joint& joint : specimen.joints) numbers_.push_back(numbersOf(joint));
  }

  KDL::JntArray positions(const kinematics::Pose& pose) const {
    KDL::JntArray q(tree.getNrOfJoints());
    for (std::size_t j = 0; j < numbers_.size(); ++j)
      for (std::size_t k = 0; k < numbers_[j].size(); ++k) q(numbers_[j][k]) = pose.angles[j][static_cast<int>(k)];
    return q;
  }

  const KDL::Tree tree;

 private:
  /// Copied once more on the way out: a copy of a KDL tree numbers its joints depth first, and its solvers work on
  /// copies; a copy of a copy keeps the numbers.
  static KDL::Tree built(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation) {
    KDL::Tree tree("0");
    for (std::size_t j = 0; j < specimen.joints.size(); ++j) add(tree, specimen.joints[j], articulation.rests[j]);
    const KDL::Tree copy(tree);
    return KDL::Tree(copy);
  }

  /// Numbers of the joint's three segments among KDL's joints; none when it is fixed.
  std::vector<unsigned> numbersOf(const anatomy::Joint& joint) const {
    if (joint.kind == anatomy::JointKind::Fixed) return {};
    const std::string child = std::to_string(joint.distal.value);
    return {tree.getSegment(child + "a")->second.q_nr, tree.getSegment(child + "b")->second.q_nr,
            tree.getSegment(child)->second.q_nr};
  }

  static void add(KDL::Tree& tree, const anatomy::Joint& joint, const kinematics::Articulation::Rest& rest) {
    const std::string parent = std::to_string(joint.proximal.value), child = std::to_string(joint.distal.value);
    const double before = rest.cartilage * joint.cartilageShareProximal, after = rest.cartilage - before;
    const KDL::Frame socket(kdlRotation(rest.rotation),
                            kdlVector(joint.centreProximal + before * joint.longAxisProximal));
    const KDL::Frame head(kdlVector(after * joint.longAxisDistal - joint.centreDistal));
    if (joint.kind == anatomy::JointKind::Fixed) {
      tree.addSegment(KDL::Segment(child, KDL::Joint(KDL::Joint::None), socket * head), parent);
      return;
    }
    const KDL::Joint first(socket.p, socket.M * kdlVector(joint.axes[0]), KDL::Joint::RotAxis);
    tree.addSegment(KDL::Segment(child + "a", first, socket), parent);
    const KDL::Joint second(KDL::Vector::Zero(), kdlVector(joint.axes[1]), KDL::Joint::RotAxis);
    tree.addSegment(KDL::Segment(child + "b", second), child + "a");
    const KDL::Joint third(KDL::Vector::Zero(), kdlVector(joint.axes[2]), KDL::Joint::RotAxis);
    tree.addSegment(KDL::Segment(child, third, head), child + "b");
  }

  std::vector<std::vector<unsigned>> numbers_;
};

}  // namespace zyga::test
