#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/range/scenario.h"
#include "core/study/reach/rotation_volume.h"
#include "core/task/task.h"

namespace zyga::study {

/// Where each joint of the column ends, from the snout to the tail's tip, one motion at a time from neutral, and where
/// it stands now.
struct RangeChart {
  struct Row {
    kinematics::JointIndex joint;
    std::string id;
    anatomy::Region region = anatomy::Region::Cervical;
    bool typed = false;  ///< limits that somebody typed; no facets give them
    range::JointLimits limits;
    Eigen::Vector3d present = Eigen::Vector3d::Zero();  ///< rad
    range::Level level = range::Level::Supported;       ///< of the present angles, contact included
    RotationVolume rotations;                           ///< what is supported around neutral
  };
  std::vector<Row> rows;  ///< cranial first
  /// Sums over the joints of neck and tail that are supported, rad, in the order of range::kDirections.
  std::array<double, 6> neck{}, trunk{}, tail{};
  bool contactJudged = false;  ///< bones that enter each other ended ranges too
};

/// Nothing when cancelled. A second or two for the volumes of rotation.
std::optional<RangeChart> rangeChart(const range::Scenario& scenario, const task::Task& task = {});

}  // namespace zyga::study
