#include "ui/drag/reach_settings.h"

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

}  // namespace zyga::ui
