#pragma once

#include <QObject>

#include "core/kinematics/reach.h"

namespace zyga::ui {

/// How drags reach: habits of the person at work, no part of the project.
class ReachSettings : public QObject {
  Q_OBJECT
 public:
  using QObject::QObject;

  kinematics::BendStyle style() const { return style_; }
  void setStyle(kinematics::BendStyle style);
  /// Ranges do not hold a drag; what breaks is marked.
  bool pastRanges() const { return pastRanges_; }
  void setPastRanges(bool past);
  /// A dragged head goes on looking where it looked.
  bool keepsGaze() const { return keepsGaze_; }
  void setKeepsGaze(bool keeps);

 signals:
  void changed();

 private:
  kinematics::BendStyle style_ = kinematics::BendStyle::Even;
  bool pastRanges_ = false;
  bool keepsGaze_ = false;
};

}  // namespace zyga::ui
