#pragma once

#include <optional>

#include "ui/sheets/joint_table.h"
#include "ui/sheets/sheet_marks.h"

namespace zyga::ui {

/// Where things are on the page, mm.
struct SheetPlan {
  double scale = 50;                         ///< N of 1:N
  std::vector<PlacedView> views;             ///< the side view first
  double heightsLeft = 0, heightsRight = 0;  ///< x of the level marks
  double calloutsTop = 0;
  double personX = 0;                   ///< of the human figure in the side view, m
  std::optional<double> personInFront;  ///< and in the view from the front, m
  std::optional<QPointF> table;         ///< upper left of the joint table
};

/// Lays the views out in `area`. Throws std::invalid_argument when they do not fit at the scale that the sheet asks
/// for, naming the largest that fits.
SheetPlan planSheet(const SheetScene& scene, const files::Sheet& sheet, const QRectF& area, const SheetStyle& style);

}  // namespace zyga::ui
