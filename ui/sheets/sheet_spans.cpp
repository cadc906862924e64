#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <optional>

#include "core/kinematics/stand_readings.h"
#include "ui/sheets/sheet_marks.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

struct Height {
  QString words;
  double metres = 0;
  double from = 0;  ///< x on the page where it is measured, mm
  double y = 0;     ///< of the words, mm
};

/// Middle of a paired joint on the page.
std::optional<double> placeOf(const SheetScene& scene, const PlacedView& placed, const char* id) {
  const auto joint = scene.scenario.specimen().findJoint(id);
  if (!joint) return std::nullopt;
  const anatomy::Joint& j = scene.scenario.specimen()[*joint];
  return placed.at(Eigen::Vector3d(scene.scenario.placement()[j.proximal.value] * j.centreProximal)).x();
}

std::optional<double> snoutPlace(const SheetScene& scene, const PlacedView& placed) {
  for (std::size_t i = 0; i < scene.scenario.specimen().bones.size(); ++i) {
    const anatomy::Bone& bone = scene.scenario.specimen().bones[i];
    const auto snout = bone.landmarks.find("snout");
    if (bone.name.kind == anatomy::BoneKind::Skull && snout != bone.landmarks.end())
      return placed.at(Eigen::Vector3d(scene.scenario.placement()[i] * snout->second)).x();
  }
  return std::nullopt;
}

/// The builder's level mark: a dotted line out to a small triangle that stands on the height, and the words over it.
void drawHeights(Page& page, const PlacedView& placed, std::vector<Height> heights, double x, bool toTheLeft,
                 const SheetStyle& style) {
  std::sort(heights.begin(), heights.end(), [](const Height& a, const Height& b) { return a.metres > b.metres; });
  double last = -1e9;
  for (Height& height : heights) {
    const double y = placed.at(Eigen::Vector2d(0, height.metres)).y();
    height.y = std::max(y - 0.5 * style.text, last + style.leading());
    last = height.y;
    const double size = 0.7 * style.text, inward = toTheLeft ? 1 : -1;
    const double tip = x + inward * 0.6 * style.text;
    page.line({tip, y}, {height.from, y}, {QColor(), style.muted, style.hairline, {0.25, 1.0}});
    QPainterPath mark(QPointF(tip, y));
    mark.lineTo(tip - 0.5 * size, y - 0.8 * size);
    mark.lineTo(tip + 0.5 * size, y - 0.8 * size);
    mark.closeSubpath();
    page.shape(mark, style.stroke(style.ink, style.hairline));
    page.words({{tip - inward * 0.8 * style.text, height.y + 0.3 * style.text},
                height.words,
                style.text,
                style.ink,
                toTheLeft ? Qt::AlignRight : Qt::AlignLeft});
  }
}

void drawLength(Page& page, const PlacedView& placed, const SheetStyle& style) {
  const double from = placed.area().left(), to = placed.area().right();
  const double y = placed.at(Eigen::Vector2d(0, 0)).y() + 2.6 * style.text, tick = 0.45 * style.text;
  const PageInk ink = style.stroke(style.ink, style.hairline);
  page.line({from, y}, {to, y}, ink);
  for (const double x : {from, to}) {
    page.line({x, y - 2 * tick}, {x, y + tick}, ink);
    page.line({x - tick, y + tick}, {x + tick, y - tick}, style.stroke(style.ink, style.line));
  }
  const double length = (to - from) / placed.perMetre;
  page.words({{(from + to) / 2, y - 0.4 * style.text},
              filled(translated(QT_TRANSLATE_NOOP("words", "%1 as posed")), {metres(length)}),
              style.text,
              style.ink,
              Qt::AlignHCenter});
}

}  // namespace

void drawSpans(Page& page, const SheetScene& scene, const PlacedView& placed, double left, double right,
               const SheetStyle& style) {
  const auto readings = kinematics::readStand(scene.scenario.specimen(), scene.scenario.placement());
  const auto words = [](const QString& name, double height) {
    return filled(translated(QT_TRANSLATE_NOOP("words", "%1 %2")), {name, metres(height)});
  };
  std::vector<Height> ahead, behind;
  const auto add = [&](std::vector<Height>& list, const QString& name, double height, std::optional<double> from) {
    if (std::isfinite(height) && from) list.push_back({words(name, height), height, *from});
  };
  if (const auto snout = kinematics::snoutHeight(scene.scenario.specimen(), scene.scenario.placement()))
    add(ahead, translated(QT_TRANSLATE_NOOP("words", "head")), *snout, snoutPlace(scene, placed));
  add(ahead, translated(QT_TRANSLATE_NOOP("words", "shoulder")), readings.shoulderHeight,
      placeOf(scene, placed, "shoulder.L"));
  add(behind, translated(QT_TRANSLATE_NOOP("words", "hip")), readings.hipHeight, placeOf(scene, placed, "hip.L"));
  page.begin("spans");
  drawHeights(page, placed, ahead, left, true, style);
  drawHeights(page, placed, behind, right, false, style);
  drawLength(page, placed, style);
  page.end();
}

}  // namespace zyga::ui
