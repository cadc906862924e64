#pragma once

#include "ui/sheets/evidence_key.h"
#include "ui/sheets/page.h"
#include "ui/sheets/sheet_scene.h"
#include "ui/sheets/sheet_view.h"

namespace zyga::ui {

/// What the foot of a sheet says: title, sizes, what was assumed, what is known and from where, notes, cautions.
class TitleBlock {
 public:
  TitleBlock(const SheetScene& scene, const files::Sheet& sheet, const EvidenceKey& key, double width,
             const SheetStyle& style);

  /// mm
  double height() const;
  void draw(Page& page, const QPointF& topLeft, double scale, const SheetStyle& style) const;

 private:
  struct Column {
    QString title;
    QStringList lines;
    double x = 0;  ///< mm from the left
  };

  QString title_, layout_, paper_;
  std::vector<Column> columns_, notes_;
  double width_, text_, leading_, titleSize_;
};

}  // namespace zyga::ui
