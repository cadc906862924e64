#pragma once

#include <string>
#include <vector>

#include "core/range/findings.h"
#include "core/study/subject.h"

namespace zyga::study {

/// A joint that differs between two sides, in angle or in verdict.
struct ComparedJoint {
  kinematics::JointIndex joint;
  Eigen::Vector3d first = Eigen::Vector3d::Zero(), second = Eigen::Vector3d::Zero();  ///< rad
  range::Level firstLevel = range::Level::Supported, secondLevel = range::Level::Supported;

  /// The largest difference of an angle, rad.
  double difference() const { return (second - first).cwiseAbs().maxCoeff(); }
};

/// A reading of the whole animal on both sides; NaN where the bones do not give it.
struct ComparedReading {
  std::string words;  ///< "snout over the ground"
  bool angle = false;
  double first = 0, second = 0;  ///< m or rad
};

/// Two poses of one animal, or one pose under two sets of assumptions.
struct Comparison {
  std::vector<ComparedReading> readings;
  std::vector<ComparedJoint> joints;                         ///< those that differ, in joint order
  std::array<std::size_t, 4> firstLevels{}, secondLevels{};  ///< joints by range::Level
};

/// Both subjects must have the same joints in the same order; throws std::invalid_argument naming the first that
/// differs. Angles closer than 1e-6 rad are the same.
Comparison compare(const Subject& first, const Subject& second);

}  // namespace zyga::study
