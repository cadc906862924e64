#pragma once

#include <QRectF>
#include <optional>
#include <vector>

#include "ui/strip/strip_columns.h"

namespace zyga::ui {

/// Consecutive columns, first and last included.
struct ColumnSpan {
  std::size_t first = 0, last = 0;
  bool contains(std::size_t column) const { return column >= first && column <= last; }
  bool operator==(const ColumnSpan&) const = default;
};

/// Where everything of the strip stands: stations and joints along x, degrees along y. Pixels of the widget.
class StripLayout {
 public:
  StripLayout() = default;
  /// `zoom` is an index into the columns' regions; none shows the whole animal. `reach` is the angle at the upper edge
  /// of the plot, rad.
  StripLayout(const StripColumns& columns, const QRectF& area, qreal textHeight, qreal axisWidth,
              std::optional<std::size_t> zoom, double reach);

  const QRectF& labels() const { return labels_; }  ///< names of the regions
  const QRectF& bones() const { return bones_; }    ///< the column drawn as bones
  const QRectF& plot() const { return plot_; }      ///< bands and marks
  const QRectF& names() const { return names_; }    ///< names of bones
  qreal axisWidth() const { return axisWidth_; }
  /// Rectangle in which the lanes of a region's joints lie, from the labels to the names.
  QRectF regionRect(const StripRegion& region) const;

  qreal xOf(double place) const;
  qreal xOfColumn(std::size_t column) const { return xOf(columns_->columns[column].place); }
  qreal slotWidth() const;
  QRectF laneRect(std::size_t column) const;
  ColumnSpan visible() const { return visible_; }

  qreal yOf(double angle) const;
  /// As yOf, but kept inside the plot by `inset` pixels.
  qreal yWithin(double angle, qreal inset) const;
  /// Change of angle for a pointer that moves by `dy` pixels downwards, rad.
  double angleBetween(qreal dy) const;
  double reach() const { return reach_; }

  /// The visible column nearest to x. Call only when there are columns.
  std::size_t nearestColumn(qreal x) const;
  /// The column nearest to x among the visible ones; none left or right of the plot.
  std::optional<std::size_t> columnAt(const QPointF& point) const;
  /// Index of the region whose label is at this point.
  std::optional<std::size_t> labelAt(const QPointF& point) const;

 private:
  const StripColumns* columns_ = nullptr;
  QRectF labels_, bones_, plot_, names_;
  qreal axisWidth_ = 0;
  double start_ = 0, end_ = 1;  ///< of the visible stretch, in stations
  double reach_ = 1;
  ColumnSpan visible_;
};

/// The smallest of a row of round angles that shows three quarters of the bands (by the larger of their limits, rad)
/// whole, and `largestMark` (rad) too, unless that would make the bands too small to read.
double scaleFor(std::vector<double> extents, double largestMark);
/// Angles, rad, at which the axis has its ticks: zero, and both sides up to the reach.
std::vector<double> axisTicks(double reach);

}  // namespace zyga::ui
