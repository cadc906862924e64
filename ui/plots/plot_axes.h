#pragma once

#include <QPainter>
#include <vector>

#include "ui/plots/plot_ink.h"

namespace zyga::ui {

/// One axis: what part of the numbers it shows, and its words.
struct PlotAxis {
  double min = 0;
  double max = 1;
  QString title;  ///< with the unit: "over the ground, m"
};

/// Round numbers of an axis, at most `about` + 2 of them: steps of 1, 2 or 5 times a power of ten.
std::vector<double> ticksOf(double min, double max, int about);
/// A tick as it is written, with as many decimals as its neighbours need; a true minus sign.
QString tickWord(double value, double step);

/// Where numbers lie on the paper.
class PlotFrame {
 public:
  /// `area` is what the numbers fill, without the words around it.
  PlotFrame(const QRectF& area, const PlotAxis& x, const PlotAxis& y, bool xToTheLeft = false)
      : area_(area), x_(x), y_(y), flipped_(xToTheLeft) {}
  /// The same with both axes widened so that a metre is as long across as it is high.
  static PlotFrame trueToScale(const QRectF& area, PlotAxis x, PlotAxis y, bool xToTheLeft = false);

  const QRectF& area() const { return area_; }
  const PlotAxis& xAxis() const { return x_; }
  const PlotAxis& yAxis() const { return y_; }
  QPointF at(double x, double y) const { return {xAt(x), yAt(y)}; }
  double xAt(double x) const;
  double yAt(double y) const;
  /// Painter's units to one of the x axis.
  double perX() const { return area_.width() / (x_.max - x_.min); }

 private:
  QRectF area_;
  PlotAxis x_, y_;
  bool flipped_;
};

/// Room that axes take around the numbers, painter's units.
QMarginsF axisRoom(const PlotInk& ink);

/// Grid lines, ticks and words of both axes, or of one.
void paintXAxis(QPainter& painter, const PlotFrame& frame, const PlotInk& ink, bool grid = true);
void paintYAxis(QPainter& painter, const PlotFrame& frame, const PlotInk& ink, bool grid = true);

/// Words at a place, set so that `anchor` of them lies there: Qt::AlignLeft puts the place at their left end. A rim of
/// paper keeps them apart from what is under them.
void paintWords(QPainter& painter, const QPointF& at, const QString& words, Qt::Alignment anchor, const PlotInk& ink,
                const QColor& colour);

}  // namespace zyga::ui
