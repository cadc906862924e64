#pragma once

#include <QFont>
#include <optional>

#include "ui/strip/shown_bands.h"
#include "ui/strip/strip_layout.h"

class QPainter;

namespace zyga::ui {

/// All that one picture of the strip shows.
struct StripScene {
  const Document& document;
  const StripColumns& columns;
  const StripLayout& layout;
  const ShownBands& bands;
  int motion = 0;
  std::optional<std::size_t> selected, hovered;  ///< columns
  std::optional<ColumnSpan> span;
  std::optional<std::size_t> hoveredLabel;
  bool zoomed = false;
  bool focused = false;
  QFont font;  ///< of the small text

  JointIndex joint(std::size_t column) const { return columns.columns[column].joint; }
  double angle(std::size_t column) const { return document.pose()[joint(column)][motion]; }
};

/// Grounds, ticks, chosen span, selected and hovered lane.
void paintGround(QPainter& painter, const StripScene& scene);
/// Names of the regions with what each spends, names of the bones, words of the axis.
void paintWords(QPainter& painter, const StripScene& scene);
/// The column as little bones in the colours of their evidence.
void paintBones(QPainter& painter, const StripScene& scene);
/// Supported bands, and hatching where nothing is judged.
void paintBands(QPainter& painter, const StripScene& scene);
/// Present angles.
void paintMarks(QPainter& painter, const StripScene& scene);

/// Diameter of the marks, px.
qreal markSize(const StripLayout& layout);
/// Where a column's mark is drawn; kept within the plot.
QPointF markPlace(const StripScene& scene, std::size_t column);

}  // namespace zyga::ui
