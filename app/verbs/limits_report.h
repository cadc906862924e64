#pragma once

#include <string>

#include "core/files/project/project.h"
#include "core/study/reach/extremes.h"

namespace zyga::app {

/// Limits of joints from one starting pose, and where they take neck and tail.
struct LimitsReport {
  const files::Project& project;
  range::Assumptions assumptions;
  std::string from;                        ///< "neutral", or the pose whose angles the other motions keep
  bool contactJudged = false;              ///< bones that enter each other stopped motions as well
  std::vector<range::JointLimits> joints;  ///< in joint order
  std::vector<study::Extreme> extremes;    ///< empty when single joints were asked for
};

/// How far a limit lies in the direction it is named after, degrees: below zero where the range ends on the other side
/// of neutral.
double degreesTowards(const range::JointLimits& limits, range::Direction direction);

std::string limitsText(const LimitsReport& report);
std::string limitsJson(const LimitsReport& report);

}  // namespace zyga::app
