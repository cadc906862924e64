#include "ui/sheets/sheet.h"

#include <QObject>

#include "ui/sheets/bones_layer.h"
#include "ui/sheets/sheet_layouts.h"
#include "ui/sheets/title_block.h"

namespace zyga::ui {
namespace {

using files::SheetLayout;

/// The evidence layout is what it is for: outlines, toned by what is known.
files::Sheet asLaidOut(files::Sheet sheet) {
  if (sheet.layout != SheetLayout::Evidence) return sheet;
  sheet.bones = files::SheetBones::Outline;
  sheet.evidenceTones = true;
  return sheet;
}

void drawAround(Plate& plate, const SheetScene& scene, const files::Sheet& sheet, const SheetPlan& plan,
                const QRectF& area, const SheetStyle& style) {
  const PlacedView& side = plan.views.front();
  if (sheet.layout == SheetLayout::Neck) return;
  const bool three = sheet.layout == SheetLayout::ThreeViews;
  if (sheet.person > 0) drawPerson(plate, side, plan.personX, sheet.person, style);
  if (plan.personInFront && sheet.person > 0)
    drawPerson(plate, plan.views[1], *plan.personInFront, sheet.person, style);
  if (sheet.ground) {
    const double beyond = 4 * style.text;
    const double left = std::min(side.area().left(), plan.heightsLeft) - (three ? 0 : beyond);
    drawGround(plate, side, std::max(area.left(), left),
               std::min(area.right(), side.area().right() + (three ? 2 * style.text : beyond)), style);
    if (three) {
      const QRectF front = plan.views[1].area();
      const double reach = sheet.person > 0 ? 0.62 * sheet.person * plan.views[1].perMetre : 0;
      drawGround(plate, plan.views[1], front.left() - style.text,
                 std::min(area.right(), front.right() + reach + style.text), style);
    }
  }
  if (sheet.spans) drawSpans(plate, scene, side, plan.heightsLeft, plan.heightsRight, style);
}

double scaleBarLength(const files::Sheet& sheet) { return sheet.layout == SheetLayout::Evidence ? 1 : 0; }

}  // namespace

QSizeF sizeOf(files::SheetPaper paper) {
  switch (paper) {
    case files::SheetPaper::A4:
      return {297, 210};
    case files::SheetPaper::A3:
      return {420, 297};
    case files::SheetPaper::A2:
      return {594, 420};
    case files::SheetPaper::A1:
      break;
  }
  return {841, 594};
}

std::optional<Plate> drawSheet(const SheetScene& scene, const files::Sheet& wanted, const SheetWork& work) {
  const files::Sheet sheet = asLaidOut(wanted);
  const SheetStyle style(sheet.paper);
  const EvidenceKey key(*scene.specimen, sheet.evidenceTones, sheet.layout == SheetLayout::Evidence);
  Plate plate;
  plate.size = sizeOf(sheet.paper);
  plate.title = QString::fromStdString(sheet.title.empty() ? scene.specimen->name : sheet.title);
  if (!sheet.transparent) plate.paper = style.paper;
  const QRectF page = QRectF(QPointF(), plate.size).adjusted(style.margin, style.margin, -style.margin, -style.margin);
  const TitleBlock block(scene, sheet, key, page.width(), style);
  const double blockTop = page.bottom() - block.height();
  // Over the title block stand the scale bar at the left and what the tones mean at the right.
  const double footHeight = 3.6 * style.text;
  const QRectF area(page.topLeft(), QPointF(page.right(), blockTop - footHeight - 1.5 * style.text));
  const SheetPlan plan = planSheet(scene, sheet, area, style);
  drawAround(plate, scene, sheet, plan, area, style);
  for (std::size_t i = 0; i < plan.views.size(); ++i) {
    SheetWork part = work;
    if (work.progress)
      part.progress = [&, i](double share) {
        work.progress((static_cast<double>(i) + share) / static_cast<double>(plan.views.size()));
      };
    if (!drawBones(plate, scene, sheet, plan.views[i], key, style, part)) return std::nullopt;
  }
  if (sheet.jointMarks)
    for (const PlacedView& view : plan.views)
      if (view.view.side != picture::StandardView::Cranial) drawJointMarks(plate, scene, view, style);
  if (plan.table) JointTable(scene, style).draw(plate, *plan.table);
  if (sheet.notes && !scene.notes.empty())
    drawCallouts(plate, scene, plan.views.front(), plan.calloutsTop, area.left(), area.right(), style);
  const double foot = blockTop - footHeight;
  drawScaleBar(plate, {page.left() + 0.5 * style.text, foot + 1.4 * style.text}, 0.2 * page.width(), 1000 / plan.scale,
               style, scaleBarLength(sheet));
  drawKey(plate, scene, sheet, key, {page.right(), foot + 0.8 * style.text}, 0.68 * page.width(), style);
  block.draw(plate, {page.left(), blockTop}, plan.scale, style);
  return plate;
}

}  // namespace zyga::ui
