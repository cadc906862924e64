#pragma once

#include <fstream>
#include <random>
#include <sstream>

#include "core/anatomy/plan/build_specimen.h"
#include "core/kinematics/bend.h"
#include "core/range/neutral.h"
#include "core/range/reach_ranges.h"

// The neck of the high browser and random targets that it can reach, for tests and comparisons of reaching.
namespace zyga::test {

/// The ranges of one joint in each motion by itself, as a box: what solvers that know bounds alone can be given.
class BoxRanges final : public kinematics::JointRanges {
 public:
  BoxRanges(const kinematics::JointRanges& ranges, std::size_t joints) {
    for (std::size_t j = 0; j < joints; ++j) {
      const kinematics::JointIndex joint{j};
      const auto inside = ranges.inside(joint);
      const Eigen::Vector3d half = inside ? ranges.halfWidths(joint) : Eigen::Vector3d(Eigen::Vector3d::Zero());
      // Half widths are measured about the middle, which `inside` need not be; the box reaches as far on both sides.
      const Eigen::Vector3d middle = inside.value_or(Eigen::Vector3d::Zero());
      boxes_.push_back({middle - half, middle + half});
      inside_.push_back(inside);
    }
  }
  Box box(kinematics::JointIndex joint) const override { return boxes_[joint.value]; }
  Excesses excesses(kinematics::JointIndex, const Eigen::Vector3d&) const override { return {}; }
  std::optional<Eigen::Vector3d> inside(kinematics::JointIndex joint) const override { return inside_[joint.value]; }
  Eigen::Vector3d halfWidths(kinematics::JointIndex joint) const override {
    return 0.5 * (boxes_[joint.value].max - boxes_[joint.value].min);
  }

 private:
  std::vector<Box> boxes_;
  std::vector<std::optional<Eigen::Vector3d>> inside_;
};

struct ReachTask {
  anatomy::Specimen specimen;
  range::Assumptions assumptions;
  kinematics::Articulation articulation;
  std::unique_ptr<range::ReachRanges> ranges;
  std::unique_ptr<BoxRanges> boxes;
  kinematics::Pose neutral;
  kinematics::IkGoal snout;  ///< without a target

  ReachTask() {
    const std::string path = ZYGAPOSE_SOURCE_DIR "/samples/high_browser.csv";
    std::stringstream text;
    text << std::ifstream(path).rdbuf();
    specimen = anatomy::buildSpecimen(anatomy::fillBlanks(anatomy::readMeasurementTable(text.str(), path).table));
    assumptions.neck.amount = assumptions.trunk.amount = assumptions.tail.amount = 4.5;
    articulation = range::articulate(specimen, assumptions);
    ranges = std::make_unique<range::ReachRanges>(specimen, articulation, assumptions);
    boxes = std::make_unique<BoxRanges>(*ranges, specimen.joints.size());
    neutral = kinematics::Pose::neutral(specimen);
    snout.bone = *specimen.findBone("skull");
    snout.joints = kinematics::neckChain(specimen);
    snout.p_BPoint = specimen[snout.bone].landmark("snout");
  }

  Eigen::Vector3d pointIn(const kinematics::Pose& pose) const {
    return kinematics::forwardKinematics(specimen, articulation, pose)[snout.bone.value] * snout.p_BPoint;
  }

  kinematics::IkGoal goalFor(const Eigen::Vector3d& p_WTarget) const {
    kinematics::IkGoal goal = snout;
    goal.p_WTarget = p_WTarget;
    return goal;
  }

  /// Every joint of the neck somewhere in its range: a bend that all of them share and one of their own.
  kinematics::Pose randomSupported(std::mt19937& random, const kinematics::JointRanges& by) const {
    std::uniform_real_distribution<double> unit(-1, 1);
    const auto draw = [&]() -> Eigen::Vector3d {
      const double x = unit(random), y = unit(random), z = unit(random);
      return {x, y, z};
    };
    kinematics::Pose pose = neutral;
    const Eigen::Vector3d shared = draw();
    for (const kinematics::JointIndex joint : snout.joints) {
      const auto inside = by.inside(joint);
      if (!inside) continue;
      const Eigen::Vector3d own = (0.6 * shared + 0.6 * draw()).cwiseMax(-1).cwiseMin(1);
      Eigen::Vector3d out = own.cwiseProduct(by.halfWidths(joint));
      while (!by.supports(joint, *inside + out)) out *= 0.8;
      pose[joint] = *inside + out;
    }
    return pose;
  }
};

}  // namespace zyga::test
