#pragma once

#include <QWidget>

#include "core/range/limits.h"

class QLabel;

namespace zyga::anatomy {
struct Joint;
}

namespace zyga::ui {

class IntervalBar;
class UnitSpinBox;

/// One motion of a joint: its name, its angle to be typed or stepped, the interval as bar and words, what stops it.
class AngleField : public QWidget {
  Q_OBJECT
 public:
  explicit AngleField(int motion, QWidget* parent = nullptr);
  /// `level` is the verdict on this motion.
  void show(const anatomy::Joint& joint, const range::Band& band, double angle, range::Level level);
  UnitSpinBox* field() const { return field_; }

 signals:
  /// The user has given another angle, rad.
  void edited(double angle);

 private:
  int motion_;
  QLabel* name_;
  UnitSpinBox* field_;
  IntervalBar* bar_;
  QLabel* interval_;
  QLabel* stops_;
};

}  // namespace zyga::ui
