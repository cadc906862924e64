#pragma once

#include <vector>

#include "core/kinematics/pose.h"

namespace zyga::ui {

/// Turns the joints of a span in proportion to the widths of their bands (rad), so that each spends the same share of
/// its range. `grabbed` (index into `joints`) turns by `delta` rad; where it has no band of its own, the joint with the
/// widest band does. Joints without a band stay; when none has one, all turn alike. `widths` runs beside `joints`.
kinematics::Pose bendSpan(const kinematics::Pose& pose, const std::vector<kinematics::JointIndex>& joints,
                          const std::vector<double>& widths, int motion, std::size_t grabbed, double delta);

}  // namespace zyga::ui
