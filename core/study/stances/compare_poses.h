#pragma once

#include <array>
#include <string_view>
#include <vector>

#include "core/range/scenario.h"
#include "core/reason/reason.h"

namespace zyga::study {

/// A joint that differs between two sides, in angle or in verdict.
struct ComparedJoint {
  kinematics::JointIndex joint;
  Eigen::Vector3d first = Eigen::Vector3d::Zero(), second = Eigen::Vector3d::Zero();  ///< rad
  range::Level firstLevel = range::Level::Supported, secondLevel = range::Level::Supported;

  /// The largest difference of an angle, rad.
  double difference() const { return (second - first).cwiseAbs().maxCoeff(); }
};

/// What is read from a standing animal, as in kinematics::StandReadings: heights and a distance in m, slopes in rad.
enum class Reading {
  SnoutHeight,
  HipHeight,
  ShoulderHeight,
  Glenoacetabular,
  TrunkSlope,
  NeckBaseSlope,
  TailBaseSlope
};
constexpr bool isAngle(Reading reading) { return reading >= Reading::TrunkSlope; }
/// "snout over the ground": told to machines.
constexpr std::string_view idOf(Reading reading) {
  constexpr std::array<std::string_view, 7> kIds{
      "snout over the ground",  "hip over the ground",        "shoulder over the ground",   "glenoacetabular distance",
      "trunk, rising forwards", "neck base, rising forwards", "tail base, rising backwards"};
  return kIds[static_cast<std::size_t>(reading)];
}

/// A reading of the whole animal on both sides; NaN where the bones do not give it.
struct ComparedReading {
  Reading reading = Reading::SnoutHeight;
  double first = 0, second = 0;  ///< m or rad
};

/// Two poses of one animal, or one pose under two sets of assumptions.
struct Comparison {
  std::vector<ComparedReading> readings;
  std::vector<ComparedJoint> joints;                         ///< those that differ, in joint order
  std::array<std::size_t, 4> firstLevels{}, secondLevels{};  ///< joints by range::Level
};

inline constexpr reason::Id kDifferentJoints{"compare.different-joints", 2};  ///< the first that differs, in each
inline constexpr reason::Id kMoreJoints{"compare.more-joints", 1};            ///< the first one that one side lacks

/// Both must have the same joints in the same order; throws reason::Failure naming the first that differs. Angles
/// closer than 1e-6 rad are the same.
Comparison compare(const range::Scenario& first, const range::Scenario& second);

}  // namespace zyga::study
