#include "ui/sheets/sheet_marks.h"

#include <QCoreApplication>
#include <QPolygonF>
#include <algorithm>
#include <cmath>

#include "ui/palette/palette.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

/// "5 m", "0.5 m", "1.75 m": as many decimals as a round length or somebody's height needs.
QString roundMetres(double length) {
  int decimals = 0;
  for (double scaled = length; decimals < 3 && std::abs(scaled - std::round(scaled)) > 1e-6; ++decimals) scaled *= 10;
  return metres(length, decimals);
}

QPainterPath disc(const QPointF& at, double radius) {
  QPainterPath path;
  path.addEllipse(at, radius, radius);
  return path;
}

QPainterPath triangle(const QPointF& at, double size) {
  const double half = 0.62 * size, height = half * std::sqrt(3.0);
  QPainterPath path(at + QPointF(0, -height * 2 / 3));
  path.lineTo(at + QPointF(half, height / 3));
  path.lineTo(at + QPointF(-half, height / 3));
  path.closeSubpath();
  return path;
}

// Right half, outwards and up, by the drawing rule of seven and a half heads (common practice, no source).
const QPolygonF kBody{{0.000, 0.868}, {0.024, 0.868}, {0.027, 0.845}, {0.050, 0.832}, {0.092, 0.818}, {0.118, 0.800},
                      {0.122, 0.770}, {0.104, 0.725}, {0.094, 0.670}, {0.083, 0.615}, {0.087, 0.560}, {0.094, 0.510},
                      {0.094, 0.450}, {0.084, 0.360}, {0.070, 0.285}, {0.072, 0.225}, {0.062, 0.140}, {0.046, 0.055},
                      {0.052, 0.022}, {0.064, 0.006}, {0.060, 0.000}, {0.026, 0.000}, {0.018, 0.030}, {0.020, 0.140},
                      {0.018, 0.230}, {0.020, 0.290}, {0.010, 0.400}, {0.003, 0.468}, {0.000, 0.470}};
const QPolygonF kArm{{0.085, 0.820}, {0.118, 0.806}, {0.134, 0.778}, {0.140, 0.720}, {0.148, 0.640}, {0.158, 0.560},
                     {0.166, 0.490}, {0.176, 0.450}, {0.172, 0.405}, {0.160, 0.396}, {0.148, 0.420}, {0.144, 0.490},
                     {0.128, 0.570}, {0.118, 0.640}, {0.106, 0.720}, {0.096, 0.760}};

/// Through the middles of the sides, bending at the corners.
QPainterPath roundedLine(const QPolygonF& corners) {
  QPainterPath path((corners.last() + corners.first()) / 2);
  for (qsizetype i = 0; i < corners.size(); ++i)
    path.quadTo(corners[i], (corners[i] + corners[(i + 1) % corners.size()]) / 2);
  path.closeSubpath();
  return path;
}

/// The half and its mirror in one closed line, corners on the mid-line sharp.
QPainterPath mirroredHalf(const QPolygonF& half) {
  QPolygonF all = half;
  for (qsizetype i = half.size() - 2; i > 0; --i) all += QPointF(-half[i].x(), half[i].y());
  return roundedLine(all);
}

/// A standing adult as a plain shape of height 1: feet at (0, 0), head at (0, -1), as pages count downwards.
QPainterPath personPath() {
  QPainterPath path = mirroredHalf(kBody);
  const QPainterPath arm = roundedLine(kArm);
  path = path.united(arm).united(QTransform::fromScale(-1, 1).map(arm));
  QPainterPath head;
  head.addEllipse(QPointF(0, 0.934), 0.046, 0.066);
  path = path.united(head);
  return QTransform::fromScale(1, -1).map(path);
}

}  // namespace

double roundLength(double widest, double perMetre) {
  const double most = widest / perMetre;
  const double power = std::pow(10, std::floor(std::log10(most)));
  for (const double step : {5.0, 2.0, 1.0})
    if (step * power <= most * (1 + 1e-9)) return step * power;
  return power;
}

double drawScaleBar(Page& page, const QPointF& at, double widest, double perMetre, const SheetStyle& style,
                    double length) {
  if (length <= 0) length = roundLength(widest, perMetre);
  const double width = length * perMetre, height = 0.55 * style.text;
  const int digit = static_cast<int>(std::lround(length / std::pow(10, std::floor(std::log10(length) + 1e-9))));
  const int parts = digit == 1 ? 5 : digit;
  page.begin("scale");
  for (int i = 0; i < parts; i += 2) {
    QPainterPath part;
    part.addRect(QRectF(at.x() + width * i / parts, at.y(), width / parts, height));
    page.shape(part, style.filled(style.ink));
  }
  page.begin("scale-bar");
  QPainterPath whole;
  whole.addRect(QRectF(at, QSizeF(width, height)));
  page.shape(whole, style.stroke(style.ink, style.hairline));
  page.end();
  const double base = at.y() - 0.45 * style.text;
  page.words({{at.x(), base}, "0", style.text, style.ink, Qt::AlignHCenter});
  page.words({{at.x() + width, base}, roundMetres(length), style.text, style.ink, Qt::AlignHCenter});
  page.end();
  return length;
}

void drawPerson(Page& page, const PlacedView& placed, double x, double height, const SheetStyle& style) {
  const QPointF foot = placed.at(Eigen::Vector2d(x, 0));
  const double size = height * placed.perMetre;
  page.begin("person");
  QTransform place = QTransform::fromTranslate(foot.x(), foot.y());
  place.scale(size, size);
  page.shape(place.map(personPath()), style.filled(style.person));
  page.words({foot - QPointF(0, size + 0.6 * style.text), roundMetres(height), 0.9 * style.text, style.muted,
              Qt::AlignHCenter});
  page.end();
}

void drawGround(Page& page, const PlacedView& placed, double from, double to, const SheetStyle& style) {
  const double y = placed.at(Eigen::Vector2d(0, 0)).y();
  page.begin("ground");
  page.line({from, y}, {to, y}, style.stroke(style.ink, style.line));
  page.end();
}

void drawVerdict(Page& page, const QPointF& at, double size, range::Level level) {
  const QColor colour = verdictColour(level);
  const PageInk full{colour, QColor(0xFF, 0xFF, 0xFF), 0.08 * size, {}};
  if (level == range::Level::Supported) page.shape(disc(at, 0.5 * size), full);
  if (level == range::Level::Beyond) page.shape(triangle(at, size), full);
  if (level == range::Level::Near)
    page.shape(disc(at, 0.4 * size), {QColor(0xFF, 0xFF, 0xFF), colour, 0.24 * size, {}});
  if (level == range::Level::NotJudged) {
    page.shape(disc(at, 0.45 * size), {QColor(0xFF, 0xFF, 0xFF), colour, 0.08 * size, {}});
    const double reach = 0.3 * size;
    page.line(at + QPointF(-reach, reach), at + QPointF(reach, -reach), {QColor(), colour, 0.1 * size, {}});
  }
}

void drawJointMarks(Page& page, const SheetScene& scene, const PlacedView& placed, const SheetStyle& style) {
  const auto shown = [&](anatomy::BoneIndex bone) {
    return std::binary_search(placed.view.bones.begin(), placed.view.bones.end(), bone.value);
  };
  page.begin("joints");
  // The worst on top.
  for (const range::Level level :
       {range::Level::NotJudged, range::Level::Supported, range::Level::Near, range::Level::Beyond})
    for (const range::JointVerdict& verdict : scene.scenario.assessment().joints) {
      const anatomy::Joint& joint = scene.scenario.specimen()[verdict.joint];
      if (verdict.level != level || !shown(joint.proximal) || !shown(joint.distal)) continue;
      drawVerdict(page,
                  placed.at(Eigen::Vector3d(scene.scenario.placement()[joint.proximal.value] * joint.centreProximal)),
                  0.62 * style.text, level);
    }
  page.end();
}

void drawCallouts(Page& page, const SheetScene& scene, const PlacedView& placed, double top, double left, double right,
                  const SheetStyle& style) {
  struct Callout {
    QString number;
    QPointF pin;
    double x;
  };
  std::vector<Callout> callouts;
  for (std::size_t i = 0; i < scene.notes.size(); ++i) {
    const auto bone = anatomy::boneOf(scene.notes[i], scene.scenario.specimen());
    if (!bone) continue;
    const QPointF pin = placed.at(Eigen::Vector3d(scene.scenario.placement()[bone->value] * scene.notes[i].p_B));
    callouts.push_back({QString::number(i + 1), pin, pin.x()});
  }
  std::sort(callouts.begin(), callouts.end(), [](const Callout& a, const Callout& b) { return a.pin.x() < b.pin.x(); });
  const double radius = 0.95 * style.text, room = 2.5 * radius;
  // Side by side over their pins, pushed apart to the right and back from the page's edge.
  for (std::size_t i = 0; i < callouts.size(); ++i)
    callouts[i].x = std::max(callouts[i].x, i > 0 ? callouts[i - 1].x + room : left + radius);
  double most = right - radius;
  for (auto callout = callouts.rbegin(); callout != callouts.rend(); ++callout, most -= room)
    callout->x = std::min(callout->x, most);
  page.begin("notes");
  for (const Callout& callout : callouts) {
    const QPointF bubble(callout.x, top + radius);
    const QPointF way = callout.pin - bubble;
    const double length = std::hypot(way.x(), way.y());
    page.line(bubble + way * std::min(1.0, radius / length), callout.pin, style.stroke(style.ink, style.hairline));
    page.shape(disc(callout.pin, 0.22 * style.text), style.filled(style.ink));
    page.shape(disc(bubble, radius), {style.paper, style.ink, style.line, {}});
    page.words({bubble + QPointF(0, 0.36 * style.text), callout.number, style.text, style.ink, Qt::AlignHCenter});
  }
  page.end();
}

double drawKey(Page& page, const SheetScene& scene, const files::Sheet& sheet, const EvidenceKey& key,
               const QPointF& topRight, double width, const SheetStyle& style) {
  struct Entry {
    QString words;
    QColor tone;
    std::optional<range::Level> level;
  };
  std::vector<Entry> entries;
  const auto toneOf = [&](const EvidenceKey::Entry& e) {
    if (sheet.bones == files::SheetBones::Shaded) return e.shaded;
    return sheet.bones == files::SheetBones::InBody ? e.inBody : e.outline;
  };
  if (sheet.bones != files::SheetBones::Silhouette)
    for (const EvidenceKey::Entry& e : key.entries())
      entries.push_back({filled(translated(QT_TRANSLATE_NOOP("words", "%1 (%2)")), {e.words, QString::number(e.bones)}),
                         toneOf(e), std::nullopt});
  if (sheet.jointMarks) {
    using range::Level;
    const std::pair<Level, QString> words[] = {
        {Level::Supported, translated(QT_TRANSLATE_NOOP("words", "joint within range"))},
        {Level::Near, translated(QT_TRANSLATE_NOOP("words", "joint near limit"))},
        {Level::Beyond, translated(QT_TRANSLATE_NOOP("words", "joint out of range"))},
        {Level::NotJudged, translated(QT_TRANSLATE_NOOP("words", "joint not assessed"))}};
    for (const auto& [level, text] : words)
      if (std::any_of(scene.scenario.assessment().joints.begin(), scene.scenario.assessment().joints.end(),
                      [l = level](const auto& v) { return v.level == l; }))
        entries.push_back({text, QColor(), level});
  }
  const double box = 1.1 * style.text, gap = 0.5 * style.text, apart = 1.6 * style.text;
  const auto wide = [&](const Entry& e) { return box + gap + widthOf(e.words, style.text); };
  std::vector<std::vector<Entry>> rows;
  double used = 1e9;
  for (const Entry& e : entries) {
    if (used + apart + wide(e) > width) {
      rows.emplace_back();
      used = -apart;
    }
    rows.back().push_back(e);
    used += apart + wide(e);
  }
  page.begin("legend");
  double y = topRight.y();
  for (const auto& row : rows) {
    double x = topRight.x();
    for (const Entry& e : row) x -= wide(e) + (&e == &row.front() ? 0 : apart);
    for (const Entry& e : row) {
      if (e.level) {
        drawVerdict(page, {x + box / 2, y + box / 2}, 0.8 * style.text, *e.level);
      } else {
        QPainterPath swatch;
        swatch.addRect(QRectF(x, y + 0.1 * box, box, 0.8 * box));
        page.shape(swatch, {e.tone, style.ink, style.hairline, {}});
      }
      page.words({{x + box + gap, y + 0.84 * box}, e.words, style.text, style.ink});
      x += wide(e) + apart;
    }
    y += style.leading() + 0.2 * style.text;
  }
  page.end();
  return y - topRight.y();
}

}  // namespace zyga::ui
