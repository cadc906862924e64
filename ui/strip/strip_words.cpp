#include "ui/strip/strip_words.h"

#include <QFontMetricsF>
#include <QObject>
#include <QPainter>
#include <QtMath>
#include <algorithm>
#include <array>

#include "ui/strip/strip_scene.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/numbers.h"
#include "ui/words/range_words.h"

namespace zyga::ui {

namespace {

QString verdictWords(const Document& document, JointIndex joint) {
  const range::JointVerdict* verdict = document.assessment().find(joint);
  if (!verdict || verdict->level == range::Level::NotJudged) return notJudgedWords(document.specimen(), joint);
  const QString state = stateWords(*verdict);
  if (verdict->level == range::Level::Supported || verdict->findings.empty()) return state;
  return QObject::tr("%1: %2").arg(
      state, findingWords(document.specimen(), document.assumptions(), joint, verdict->findings.front()));
}

}  // namespace

MotionEnds motionEnds(int motion) {
  switch (motion) {
    case 0:
      return {QObject::tr("dorsal"), QObject::tr("ventral")};
    case 1:
      return {QObject::tr("left"), QObject::tr("right")};
    default:
      return {QObject::tr("left up"), QObject::tr("right up")};
  }
}

QString motionTitle(int motion) {
  switch (motion) {
    case 0:
      return QObject::tr("Dorsal / ventral");
    case 1:
      return QObject::tr("Left / right");
    default:
      return QObject::tr("Axial rotation");
  }
}

QString jointWords(const Document& document, JointIndex joint, int motion, const range::MotionRange& band) {
  const anatomy::Joint& bones = document.specimen()[joint];
  const double angle = document.pose()[joint][motion];
  const double limit = angle < 0 ? band.min : band.max;
  const QString id = QString::fromStdString(bones.id), turned = turnWords(bones, motion, angle);
  const QString verdict = verdictWords(document, joint);
  if (!band.judged || band.empty) return QObject::tr("%1  %2 \u00B7 %3").arg(id, turned, verdict);
  return QObject::tr("%1  %2 (limit %3) \u00B7 %4").arg(id, turned, degrees(std::abs(limit)), verdict);
}

QString spanName(const Document& document, const StripColumns& columns, std::size_t first, std::size_t last) {
  const anatomy::Specimen& specimen = document.specimen();
  const auto from = specimen.cranialBone(columns.columns[first].joint);
  const auto to = specimen.caudalBone(columns.columns[last].joint);
  return QString::fromStdString(specimen[from].id) + QStringLiteral("\u2013") + QString::fromStdString(specimen[to].id);
}

QString notJudgedWords(const anatomy::Specimen& specimen, JointIndex joint) {
  const anatomy::Joint& bones = specimen[joint];
  if (bones.kind == anatomy::JointKind::Fixed) return QObject::tr("these bones do not move against each other");
  if (bones.hasFacets()) return QObject::tr("not assessed: the facets of one bone are missing");
  return QObject::tr("not assessed: no facets and no typed limits");
}

namespace {

void paintAxis(QPainter& painter, const StripScene& scene) {
  const QFontMetricsF metrics(scene.font);
  const qreal right = scene.layout.plot().left() - kGap;
  const auto write = [&](qreal y, const QString& words, const QColor& colour) {
    painter.setPen(colour);
    painter.drawText(QRectF(0, y - metrics.height() / 2, right, metrics.height()), Qt::AlignRight | Qt::AlignVCenter,
                     words);
  };
  painter.setFont(scene.font);
  for (double tick : axisTicks(scene.layout.reach())) {
    const double degrees = qRadiansToDegrees(tick);
    const bool whole = std::abs(degrees - std::round(degrees)) < 1e-9;
    const QString figures = QString::number(std::abs(degrees), 'f', whole ? 0 : 1);
    const QString sign = tick > 0 ? QStringLiteral("+") : tick < 0 ? QStringLiteral("\u2212") : QString();
    write(scene.layout.yOf(tick), sign + figures + QStringLiteral("\u00B0"), theme().muted);
  }
  const MotionEnds ends = motionEnds(scene.motion);
  write(scene.layout.plot().top() - metrics.height() * 0.7, ends.positive, theme().text);
  write(scene.layout.plot().bottom() + metrics.height() * 0.7, ends.negative, theme().text);
}

/// What the joints of a region turn together, and what their bands allow that way.
QString spending(const StripScene& scene, const StripRegion& region) {
  double turned = 0, least = 0, most = 0;
  for (std::size_t i = region.firstColumn; i < region.firstColumn + region.columns; ++i) {
    turned += scene.angle(i);
    const auto& shown = scene.bands[i];
    if (!shown || !shown->band.judged || shown->band.empty) continue;
    least += shown->band.min;
    most += shown->band.max;
  }
  const double limit = turned < 0 ? least : most;
  return QObject::tr("%1 (limit %2)").arg(signedDegrees(turned), signedDegrees(limit));
}

void paintRegionName(QPainter& painter, const StripScene& scene, std::size_t index) {
  const StripRegion& region = scene.columns.regions[index];
  QRectF room = scene.layout.regionRect(region).adjusted(kGridStep, 0, -kGridStep, 0);
  room.setHeight(scene.layout.labels().height());
  const QString name = regionName(region.region);
  const bool lively = scene.hoveredLabel == index;
  QFont font = scene.font;
  font.setWeight(QFont::DemiBold);
  font.setUnderline(lively);
  const qreal width = QFontMetricsF(font).horizontalAdvance(name);
  painter.setFont(font);
  painter.setPen(lively ? theme().choice : theme().text);
  if (width > room.width()) {
    // A sliver of a neighbouring region, or a narrow sacrum: its initial, where that fits.
    if (!scene.zoomed) painter.drawText(room.adjusted(-kGridStep, 0, kGridStep, 0), Qt::AlignCenter, name.left(1));
    return;
  }
  painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, name);
  if (region.columns == 0) return;
  painter.setFont(scene.font);
  painter.setPen(theme().muted);
  const QString sum = spending(scene, region);
  const QRectF rest = room.adjusted(width + kGap, 0, 0, 0);
  if (QFontMetricsF(scene.font).horizontalAdvance(sum) <= rest.width())
    painter.drawText(rest, Qt::AlignLeft | Qt::AlignVCenter, sum);
}

/// Every how many bones a name fits under the column.
int nameStep(const StripScene& scene, const QFontMetricsF& metrics) {
  const qreal wanted = metrics.horizontalAdvance(QStringLiteral("Ca88")) + kGap;
  for (int step : {1, 2, 5, 10})
    if (step * scene.layout.slotWidth() >= wanted) return step;
  return 20;
}

QRectF nameRect(const StripScene& scene, qreal x, const QString& name, const QFontMetricsF& metrics) {
  const qreal width = metrics.horizontalAdvance(name) + kGridStep;
  const QRectF& row = scene.layout.names();
  const qreal left = std::clamp(x - width / 2, row.left(), std::max(row.left(), row.right() - width));
  return QRectF(left, row.top(), width, row.height());
}

/// The selected joint's name in the choice colour; the bones' names make room for it.
QRectF paintSelectedName(QPainter& painter, const StripScene& scene) {
  if (!scene.selected) return {};
  QFont font = scene.font;
  font.setWeight(QFont::DemiBold);
  const QString name = QString::fromStdString(scene.document.specimen()[scene.joint(*scene.selected)].id);
  const QRectF rect = nameRect(scene, scene.layout.xOfColumn(*scene.selected), name, QFontMetricsF(font));
  painter.setFont(font);
  painter.setPen(theme().choice);
  painter.drawText(rect, Qt::AlignCenter, name);
  return rect.adjusted(-kGridStep, 0, kGridStep, 0);
}

/// Names of every so many bones; a name that would touch one already there is left out.
void paintBoneNames(QPainter& painter, const StripScene& scene, bool firstOfRegion, std::vector<QRectF>& taken) {
  const QFontMetricsF metrics(scene.font);
  const int step = nameStep(scene, metrics);
  painter.setFont(scene.font);
  painter.setPen(theme().muted);
  for (const StripStation& station : scene.columns.stations) {
    const anatomy::Bone& bone = scene.document.specimen()[station.bones.front()];
    const qreal x = scene.layout.xOf(station.start + station.width / 2);
    if (station.bones.size() > 1 || !isVertebra(bone.name.kind)) continue;
    if (x < scene.layout.plot().left() || x > scene.layout.plot().right()) continue;
    const bool first = bone.name.number == 1;
    if (firstOfRegion ? !first : bone.name.number % step != 0) continue;
    const QString name = QString::fromStdString(bone.id);
    const QRectF rect = nameRect(scene, x, name, metrics);
    if (std::any_of(taken.begin(), taken.end(), [&](const QRectF& other) { return other.intersects(rect); })) continue;
    painter.drawText(rect, Qt::AlignCenter, name);
    taken.push_back(rect);
  }
}

void paintSpanName(QPainter& painter, const StripScene& scene) {
  if (!scene.span) return;
  double turned = 0;
  for (std::size_t i = scene.span->first; i <= scene.span->last; ++i) turned += scene.angle(i);
  const QString words = spanName(scene.document, scene.columns, scene.span->first, scene.span->last) +
                        QStringLiteral("  ") + signedDegrees(turned);
  const QFontMetricsF metrics(scene.font);
  const qreal middle = (scene.layout.xOfColumn(scene.span->first) + scene.layout.xOfColumn(scene.span->last)) / 2;
  QRectF rect = nameRect(scene, middle, words, metrics).adjusted(-kGridStep, 0, kGridStep, 0);
  rect.moveTop(scene.layout.plot().bottom() - rect.height() - kGridStep);
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme().choice);
  painter.drawRoundedRect(rect, 3, 3);
  painter.setFont(scene.font);
  painter.setPen(theme().panel);
  painter.drawText(rect, Qt::AlignCenter, words);
}

}  // namespace

void paintWords(QPainter& painter, const StripScene& scene) {
  paintAxis(painter, scene);
  for (std::size_t i = 0; i < scene.columns.regions.size(); ++i)
    if (scene.layout.regionRect(scene.columns.regions[i]).width() > 0) paintRegionName(painter, scene, i);
  std::vector<QRectF> taken{paintSelectedName(painter, scene)};
  paintBoneNames(painter, scene, true, taken);
  paintBoneNames(painter, scene, false, taken);
  paintSpanName(painter, scene);
}

}  // namespace zyga::ui
