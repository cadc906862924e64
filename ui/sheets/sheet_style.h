#pragma once

#include "core/files/project/sheet.h"
#include "ui/sheets/plate.h"

namespace zyga::ui {

/// Measures and inks of a sheet, which grow a little with the paper: one size for text and one for titles, mm.
struct SheetStyle {
  explicit SheetStyle(files::SheetPaper paper);

  double text, title, margin;
  double hairline, line, edge;  ///< widths: dividers and leaders, drawn lines, edges of bones
  QColor ink{0x22, 0x20, 0x1C}, muted{0x6B, 0x65, 0x5B}, pale{0xB9, 0xB2, 0xA5}, paper{0xFF, 0xFF, 0xFF};
  QColor person{0xC9, 0xC4, 0xBA};

  double leading() const { return 1.42 * text; }
  PlateInk stroke(const QColor& colour, double width) const { return {QColor(), colour, width, {}}; }
  PlateInk filled(const QColor& colour) const { return {colour, QColor(), 0, {}}; }
};

}  // namespace zyga::ui
