#pragma once

#include <QWidget>

#include "core/range/limits.h"

class QLabel;

namespace zyga::ui {

class IntervalBar;
class UnitSpinBox;

/// One motion of a joint: its name, its angle to be typed or stepped, the interval as bar and words, what stops it.
class AngleField : public QWidget {
  Q_OBJECT
 public:
  explicit AngleField(int motion, QWidget* parent = nullptr);
  /// `level` is the verdict on this motion.
  void show(const anatomy::Specimen& specimen, anatomy::JointIndex index, const range::MotionRange& band, double angle,
            range::Level level);
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

/// One motion's interval as a bar around the neutral line, with the present angle as a mark.
class IntervalBar : public QWidget {
 public:
  explicit IntervalBar(QWidget* parent = nullptr);
  /// Ends that are a program default: drawn dotted.
  struct Defaults {
    bool min = false, max = false;
  };
  /// `angle` in rad; `typed` draws the bar hollow, as limits that no bone gives.
  void show(const range::MotionRange& band, double angle, range::Level level, bool typed, const Defaults& defaults);
  QSize sizeHint() const override { return {120, 16}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  double reach() const;
  qreal xOf(double angle) const;
  void paintBand(QPainter& painter);

  range::MotionRange band_;
  double angle_ = 0;
  range::Level level_ = range::Level::NotJudged;
  bool typed_ = false;
  Defaults defaults_;
};

}  // namespace zyga::ui
