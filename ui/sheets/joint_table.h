#pragma once

#include "ui/sheets/page.h"
#include "ui/sheets/sheet_scene.h"
#include "ui/sheets/sheet_view.h"

namespace zyga::ui {

/// The joints of the neck with their angles, the smaller overlap of their facets, and the verdict.
class JointTable {
 public:
  JointTable(const SheetScene& scene, const SheetStyle& style);

  double width() const;   ///< mm
  double height() const;  ///< mm
  void draw(Page& page, const QPointF& topLeft) const;

 private:
  struct Row {
    QStringList cells;
    range::Level level = range::Level::Supported;
  };
  QStringList titles_;
  std::vector<Row> rows_;
  std::vector<double> widths_;
  SheetStyle style_;
};

}  // namespace zyga::ui
