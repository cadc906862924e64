#include "ui/sheets/sheet.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "core/anatomy/bone_parts.h"
#include "core/solid/flesh/body_guide.h"
#include "ui/sheets/bones_layer.h"
#include "ui/sheets/joint_table.h"
#include "ui/sheets/sheet_marks.h"
#include "ui/sheets/title_block.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using files::SheetLayout;

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

using picture::StandardView;

/// Share of the work that is done once the body around the bones is made.
constexpr double kBodyDone = 0.5;

/// Width of the human figure as a share of its height, and the room it keeps.
constexpr double kPersonWidth = 0.36, kPersonRoom = 0.35;

/// Room around views that does not grow with the scale, mm.
struct Room {
  double left = 0, right = 0, top = 0, bottom = 0;
};

Room roomOf(const files::Sheet& sheet, const SheetScene& scene, const SheetStyle& style, bool heights) {
  Room room;
  if (sheet.spans && heights) {
    room.left = 10 * style.text;
    room.right = 6.5 * style.text;
  }
  if (sheet.notes && !scene.notes.empty()) room.top = 4 * style.text;
  room.bottom = sheet.spans && heights ? 4.4 * style.text : 1.5 * style.text;
  return room;
}

/// The lowest bone over a stretch of the ground, m; seen from the side.
double clearanceOver(const SheetScene& scene, const SheetView& view, double from, double to) {
  const kinematics::Placement& X_WB = scene.scenario.placement();
  double lowest = 1e9;
  for (const std::size_t bone : view.bones)
    for (const Eigen::Vector3f& p : scene.meshes[bone]->levels.front().positions) {
      const Eigen::Vector2d q = view.onPlane(X_WB[bone] * p.cast<double>());
      if (q.x() > from && q.x() < to) lowest = std::min(lowest, q.y());
    }
  return lowest;
}

/// Under the neck where there is room, else before the snout; x on the view's plane, whose left is ahead.
double personPlace(const SheetScene& scene, const SheetView& side, double height) {
  const double half = kPersonWidth * height / 2 + kPersonRoom;
  // From just before the animal backwards, to the first stretch as free as a person with some air above needs.
  double free = side.box.min().x() - half;
  for (double x = side.box.min().x() + half; x < side.box.center().x(); x += 0.1)
    if (clearanceOver(scene, side, x - half, x + half) > 1.25 * height + 0.3)
      free = x;
    else if (free > side.box.min().x())
      break;
  return free;
}

double scaleFor(const files::Sheet& sheet, double least) {
  const double fits = roundScale(least);
  if (sheet.scale == 0) return fits;
  if (sheet.scale < least * (1 - 1e-9))
    throw std::invalid_argument(filled(translated(QT_TRANSLATE_NOOP(
                                           "words",
                                           "At %1 the drawing does not fit on this paper; the largest round scale that "
                                           "fits is %2. Choose that, a larger paper, or another layout.")),
                                       {scaleWords(sheet.scale), scaleWords(fits)})
                                    .toStdString());
  return sheet.scale;
}

PlacedView placedAt(const SheetView& view, double scale, const QPointF& boxTopLeft) {
  PlacedView result{view, 1000 / scale, {}};
  result.origin = boxTopLeft + QPointF(-result.perMetre * view.box.min().x(), result.perMetre * view.box.max().y());
  return result;
}

/// What is to be seen over the ground: the ground is in it even where the feet do not reach it.
void standOnGround(SheetView& view) { view.box.extend(Eigen::Vector2d(view.box.center().x(), 0)); }

SheetPlan oneSide(const SheetScene& scene, const files::Sheet& sheet, const QRectF& area, const SheetStyle& style) {
  SheetView side = viewOf(scene, StandardView::Left, allBones(scene));
  const SheetView bones = side;
  standOnGround(side);
  SheetPlan plan;
  double ahead = 0;
  if (sheet.person > 0) {
    plan.personX = personPlace(scene, bones, sheet.person);
    ahead = std::max(0.0, side.box.min().x() - (plan.personX - kPersonWidth * sheet.person / 2));
    side.box.extend(Eigen::Vector2d(side.box.center().x(), sheet.person));
  }
  const Room room = roomOf(sheet, scene, style, true);
  const QRectF free = area.adjusted(room.left, room.top, -room.right, -room.bottom);
  const Eigen::Vector2d size = side.box.sizes() + Eigen::Vector2d(ahead, 0);
  plan.scale = scaleFor(sheet, 1000 * std::max(size.x() / free.width(), size.y() / free.height()));
  const double perMetre = 1000 / plan.scale;
  const QPointF corner(
      free.center().x() - perMetre * size.x() / 2 + perMetre * ahead,
      free.bottom() - std::max(0.0, 0.4 * (free.height() - perMetre * size.y())) - perMetre * size.y());
  PlacedView view = placedAt(side, plan.scale, corner);
  view.view.box = bones.box;
  plan.views = {view};
  plan.heightsLeft = view.area().left() - perMetre * ahead - 0.8 * style.text;
  plan.heightsRight = view.area().right() + 0.8 * style.text;
  plan.calloutsTop = std::max(area.top(), view.area().top() - 5 * style.text);
  return plan;
}

SheetPlan threeViews(const SheetScene& scene, const files::Sheet& sheet, const QRectF& area, const SheetStyle& style) {
  const auto bones = allBones(scene);
  SheetView side = viewOf(scene, StandardView::Left, bones), front = viewOf(scene, StandardView::Cranial, bones);
  const SheetView top = viewOf(scene, StandardView::Dorsal, bones);
  const Eigen::AlignedBox2d sideBones = side.box, frontBones = front.box;
  SheetPlan plan;
  double ahead = 0, beside = 0;
  if (sheet.person > 0) {
    plan.personX = personPlace(scene, side, sheet.person);
    ahead = std::max(0.0, side.box.min().x() - (plan.personX - kPersonWidth * sheet.person / 2));
    beside = kPersonWidth * sheet.person + kPersonRoom;
    plan.personInFront = front.box.max().x() + kPersonRoom + kPersonWidth * sheet.person / 2;
  }
  standOnGround(side);
  standOnGround(front);
  const Room room = roomOf(sheet, scene, style, true);
  const double apart = 5 * style.text;
  const QRectF free = area.adjusted(room.left, room.top, 0, 0);
  // Beside the side view stand its level marks.
  const double fixedX = room.right + apart, fixedY = room.bottom + apart;
  const double wide = ahead + side.box.sizes().x() + front.box.sizes().x() + beside;
  const double high = std::max(side.box.sizes().y(), front.box.sizes().y()) + top.box.sizes().y();
  plan.scale = scaleFor(sheet, 1000 * std::max(wide / (free.width() - fixedX), high / (free.height() - fixedY)));
  const double m = 1000 / plan.scale;
  const double spareX = free.width() - fixedX - m * wide, spareY = free.height() - fixedY - m * high;
  const double tallest = std::max(side.box.max().y(), front.box.max().y());
  const double x0 = free.left() + spareX / 2 + m * ahead, yTop = free.top() + spareY / 3;
  const auto sideTop = [&](const SheetView& view) { return yTop + m * (tallest - view.box.max().y()); };
  PlacedView placedSide = placedAt(side, plan.scale, {x0, sideTop(side)});
  PlacedView placedFront = placedAt(front, plan.scale, {x0 + m * side.box.sizes().x() + fixedX, sideTop(front)});
  const double ground = placedSide.at(Eigen::Vector2d(0, std::min(0.0, side.box.min().y()))).y();
  PlacedView placedTop = placedAt(top, plan.scale, {0, ground + fixedY + spareY / 3});
  placedTop.origin.setX(placedSide.origin.x());  // in line with the side view
  placedSide.view.box = sideBones;
  placedFront.view.box = frontBones;
  plan.views = {placedSide, placedFront, placedTop};
  plan.heightsLeft = placedSide.area().left() - m * ahead - 0.8 * style.text;
  plan.heightsRight = placedSide.area().right() + 0.8 * style.text;
  plan.calloutsTop = std::max(area.top(), placedSide.area().top() - 5 * style.text);
  return plan;
}

SheetPlan neckAlone(const SheetScene& scene, const files::Sheet& sheet, const QRectF& area, const SheetStyle& style) {
  const SheetView side = viewOf(scene, StandardView::Left, neckBones(scene));
  if (side.box.isEmpty())
    throw std::invalid_argument(
        translated(QT_TRANSLATE_NOOP("words", "The specimen has no neck to draw.")).toStdString());
  const JointTable table(scene, style);
  const Room room = roomOf(sheet, scene, style, false);
  QRectF free = area.adjusted(0, room.top, 0, -room.bottom);
  SheetPlan plan;
  plan.table = QPointF(area.right() - table.width(), area.top());
  free.setRight(plan.table->x() - 5 * style.text);
  plan.scale =
      scaleFor(sheet, 1000 * std::max(side.box.sizes().x() / free.width(), side.box.sizes().y() / free.height()));
  const double m = 1000 / plan.scale;
  const QPointF corner(free.center().x() - m * side.box.sizes().x() / 2,
                       free.center().y() - m * side.box.sizes().y() / 2);
  plan.views = {placedAt(side, plan.scale, corner)};
  plan.calloutsTop = std::max(area.top(), plan.views[0].area().top() - 5 * style.text);
  return plan;
}

/// The names of a plate's views stand under them.
QString viewWords(StandardView side) {
  switch (side) {
    case StandardView::Cranial:
      return translated(QT_TRANSLATE_NOOP("words", "cranial"));
    case StandardView::Caudal:
      return translated(QT_TRANSLATE_NOOP("words", "caudal"));
    case StandardView::Dorsal:
      return translated(QT_TRANSLATE_NOOP("words", "dorsal"));
    case StandardView::Ventral:
      return translated(QT_TRANSLATE_NOOP("words", "ventral"));
    default:
      return translated(QT_TRANSLATE_NOOP("words", "left lateral"));
  }
}

/// Five views of some bones in the axes of the first of them, as bones are figured: from the left in the middle, from
/// in front and behind beside it, from above and below over and under it.
SheetPlan plateOf(const SheetScene& scene, const files::Sheet& sheet, const QRectF& area, const SheetStyle& style) {
  const std::vector<std::size_t> bones = plateBones(scene, sheet.plate);
  const auto unknown = anatomy::bonesInList(scene.scenario.specimen(), sheet.plate).unknown;
  if (bones.empty() || !unknown.empty())
    throw std::invalid_argument(
        filled(translated(QT_TRANSLATE_NOOP(
                   "words",
                   "A plate needs bones: name some, such as C5 or manus.L, with commas between them; '%1' "
                   "names none that can be drawn.")),
               {QString::fromStdString(unknown.empty() ? sheet.plate : unknown.front())})
            .toStdString());
  const Eigen::Isometry3d X_PW = scene.scenario.placement()[bones.front()].inverse();
  const auto view = [&](StandardView side) { return viewOf(scene, side, bones, X_PW); };
  const SheetView front = view(StandardView::Cranial), side = view(StandardView::Left),
                  back = view(StandardView::Caudal), above = view(StandardView::Dorsal),
                  below = view(StandardView::Ventral);
  const double gap = 3.5 * style.text, caption = 2 * style.text;
  const auto size = [](const SheetView& v) -> Eigen::Vector2d { return v.box.sizes(); };
  const double wide = size(front).x() + size(side).x() + size(back).x();
  const double tall = std::max({size(front).y(), size(side).y(), size(back).y()});
  const double high = tall + size(above).y() + size(below).y();
  SheetPlan plan;
  plan.scale =
      scaleFor(sheet, 1000 * std::max(wide / (area.width() - 2 * gap), high / (area.height() - 2 * gap - 3 * caption)));
  const double m = 1000 / plan.scale;
  const double x0 = area.center().x() - (m * wide + 2 * gap) / 2;
  const double y0 = area.center().y() - (m * high + 2 * gap + 3 * caption) / 2;
  const double sideX = x0 + m * size(front).x() + gap, middle = y0 + m * size(above).y() + caption + gap;
  // Beside each other bones stand at one height; over each other at one length.
  const double level = middle + m * std::max({front.box.max().y(), side.box.max().y(), back.box.max().y()});
  const auto beside = [&](const SheetView& v, double x) {
    return placedAt(v, plan.scale, {x, level - m * v.box.max().y()});
  };
  const auto over = [&](const SheetView& v, double y) {
    return placedAt(v, plan.scale, {sideX + m * (v.box.min().x() - side.box.min().x()), y});
  };
  plan.views = {beside(side, sideX), beside(front, x0), beside(back, sideX + m * size(side).x() + gap), over(above, y0),
                over(below, middle + m * tall + caption + gap)};
  return plan;
}

void nameViews(Page& page, const SheetPlan& plan, const SheetStyle& style) {
  page.begin("views");
  for (const PlacedView& view : plan.views)
    page.words({QPointF(view.area().center().x(), view.area().bottom() + 1.6 * style.text), viewWords(view.view.side),
                style.text, style.muted, Qt::AlignHCenter});
  page.end();
}

/// Lays the views out in `area`. Throws std::invalid_argument when they do not fit at the scale that the sheet asks
/// for, naming the largest that fits.
SheetPlan planSheet(const SheetScene& scene, const files::Sheet& sheet, const QRectF& area, const SheetStyle& style) {
  if (allBones(scene).empty())
    throw std::invalid_argument(translated(QT_TRANSLATE_NOOP("words", "There are no bones to draw.")).toStdString());
  if (sheet.layout == SheetLayout::ThreeViews) return threeViews(scene, sheet, area, style);
  if (sheet.layout == SheetLayout::Plate) return plateOf(scene, sheet, area, style);
  if (sheet.layout == SheetLayout::Neck) return neckAlone(scene, sheet, area, style);
  return oneSide(scene, sheet, area, style);
}

/// The evidence layout is what it is for: outlines, toned by what is known; a plate is of bones alone.
files::Sheet asLaidOut(files::Sheet sheet) {
  if (sheet.layout == SheetLayout::Plate) {
    sheet.jointMarks = sheet.notes = false;  // which are of the animal as it stands
    if (sheet.bones == files::SheetBones::InBody) sheet.bones = files::SheetBones::Outline;
  }
  if (sheet.layout != SheetLayout::Evidence) return sheet;
  sheet.bones = files::SheetBones::Outline;
  sheet.evidenceTones = true;
  return sheet;
}

void drawAround(Page& page, const SheetScene& scene, const files::Sheet& sheet, const SheetPlan& plan,
                const QRectF& area, const SheetStyle& style) {
  const PlacedView& side = plan.views.front();
  if (sheet.layout == SheetLayout::Neck || sheet.layout == SheetLayout::Plate) return;
  const bool three = sheet.layout == SheetLayout::ThreeViews;
  if (sheet.person > 0) drawPerson(page, side, plan.personX, sheet.person, style);
  if (plan.personInFront && sheet.person > 0) drawPerson(page, plan.views[1], *plan.personInFront, sheet.person, style);
  if (sheet.ground) {
    const double beyond = 4 * style.text;
    const double left = std::min(side.area().left(), plan.heightsLeft) - (three ? 0 : beyond);
    drawGround(page, side, std::max(area.left(), left),
               std::min(area.right(), side.area().right() + (three ? 2 * style.text : beyond)), style);
    if (three) {
      const QRectF front = plan.views[1].area();
      const double reach = sheet.person > 0 ? 0.62 * sheet.person * plan.views[1].perMetre : 0;
      drawGround(page, plan.views[1], front.left() - style.text,
                 std::min(area.right(), front.right() + reach + style.text), style);
    }
  }
  if (sheet.spans) drawSpans(page, scene, side, plan.heightsLeft, plan.heightsRight, style);
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

std::shared_ptr<const solid::TriangleMesh> bodyAround(const SheetScene& scene, const files::Sheet& sheet,
                                                      const task::Task& task) {
  if (asLaidOut(sheet).bones != files::SheetBones::InBody) return nullptr;
  solid::BodyGuideOptions options;
  options.thickness = scene.guide;
  options.task = task;
  auto body = std::make_shared<const solid::TriangleMesh>(
      solid::bodyGuide({scene.scenario.specimen(), scene.meshes, scene.scenario.placement()}, options));
  return task.cancelled() ? nullptr : body;
}

std::optional<Page> drawSheet(const SheetScene& scene, const files::Sheet& wanted, const SheetWork& work) {
  const files::Sheet sheet = asLaidOut(wanted);
  const auto body = scene.body ? scene.body : bodyAround(scene, sheet, work.task.part(0, kBodyDone));
  if (work.task.cancelled()) return std::nullopt;
  const SheetStyle style(sheet.paper);
  const EvidenceKey key(scene.scenario.specimen(), sheet.evidenceTones, sheet.layout == SheetLayout::Evidence);
  Page page;
  page.size = sizeOf(sheet.paper);
  page.title = QString::fromStdString(sheet.title.empty() ? scene.scenario.specimen().name : sheet.title);
  if (!sheet.transparent) page.paper = style.paper;
  const QRectF frame = QRectF(QPointF(), page.size).adjusted(style.margin, style.margin, -style.margin, -style.margin);
  const TitleBlock block(scene, sheet, key, frame.width(), style);
  const double blockTop = frame.bottom() - block.height();
  // Over the title block stand the scale bar at the left and what the tones mean at the right.
  const double footHeight = 3.6 * style.text;
  const QRectF area(frame.topLeft(), QPointF(frame.right(), blockTop - footHeight - 1.5 * style.text));
  const SheetPlan plan = planSheet(scene, sheet, area, style);
  drawAround(page, scene, sheet, plan, area, style);
  for (std::size_t i = 0; i < plan.views.size(); ++i) {
    const double views = static_cast<double>(plan.views.size()), done = static_cast<double>(i);
    SheetWork part = work;
    const double from = body && !scene.body ? kBodyDone : 0;
    part.task = work.task.part(std::lerp(from, 1, done / views), std::lerp(from, 1, (done + 1) / views));
    if (body && !drawBody(page, body, plan.views[i], style, part)) return std::nullopt;
    if (!drawBones(page, scene, sheet, plan.views[i], key, style, part)) return std::nullopt;
  }
  if (sheet.jointMarks)
    for (const PlacedView& view : plan.views)
      if (view.view.side != picture::StandardView::Cranial) drawJointMarks(page, scene, view, style);
  if (sheet.layout == SheetLayout::Plate) nameViews(page, plan, style);
  if (plan.table) JointTable(scene, style).draw(page, *plan.table);
  if (sheet.notes && !scene.notes.empty())
    drawCallouts(page, scene, plan.views.front(), plan.calloutsTop, area.left(), area.right(), style);
  const double foot = blockTop - footHeight;
  drawScaleBar(page, {frame.left() + 0.5 * style.text, foot + 1.4 * style.text}, 0.2 * frame.width(), 1000 / plan.scale,
               style, scaleBarLength(sheet));
  drawKey(page, scene, sheet, key, {frame.right(), foot + 0.8 * style.text}, 0.68 * frame.width(), style);
  block.draw(page, {frame.left(), blockTop}, plan.scale, style);
  return page;
}

}  // namespace zyga::ui
