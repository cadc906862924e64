#pragma once

#include <QWidget>

#include "core/range/limits.h"

namespace zyga::ui {

/// One motion's interval as a bar around the neutral line, with the present angle as a mark.
class IntervalBar : public QWidget {
 public:
  explicit IntervalBar(QWidget* parent = nullptr);
  /// `angle` in rad; `typed` draws the bar hollow, as limits that no bone gives.
  void show(const range::Band& band, double angle, range::Level level, bool typed);
  QSize sizeHint() const override { return {120, 16}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  double reach() const;
  qreal xOf(double angle) const;
  void paintBand(QPainter& painter);

  range::Band band_;
  double angle_ = 0;
  range::Level level_ = range::Level::NotJudged;
  bool typed_ = false;
};

}  // namespace zyga::ui
