#include "ui/drag/reach_settings.h"

#include <algorithm>

namespace zyga::ui {

void ReachSettings::setStyle(kinematics::BendStyle style) {
  if (style == style_) return;
  style_ = style;
  emit changed();
}

void ReachSettings::setPastRanges(bool past) {
  if (past == pastRanges_) return;
  pastRanges_ = past;
  emit changed();
}

void ReachSettings::setKeepsGaze(bool keeps) {
  if (keeps == keepsGaze_) return;
  keepsGaze_ = keeps;
  emit changed();
}

bool ReachSettings::isLocked(kinematics::JointIndex joint) const {
  return std::binary_search(locked_.begin(), locked_.end(), joint);
}

void ReachSettings::setLocked(kinematics::JointIndex joint, bool locked) {
  const auto at = std::lower_bound(locked_.begin(), locked_.end(), joint);
  if (locked == isLocked(joint)) return;
  if (locked) {
    locked_.insert(at, joint);
  } else {
    locked_.erase(at);
  }
  emit changed();
}

void ReachSettings::unlockAll() {
  if (locked_.empty()) return;
  locked_.clear();
  emit changed();
}

}  // namespace zyga::ui
