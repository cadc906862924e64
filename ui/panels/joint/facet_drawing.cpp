#include "ui/panels/joint/facet_drawing.h"

#include <QGridLayout>
#include <QLabel>
#include <QPainter>
#include <QPainterPath>
#include <QStyle>
#include <algorithm>
#include <cmath>

#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/words/numbers.h"

namespace zyga::ui {

namespace {

constexpr int kLinesHigh = 10, kLeastLines = 6, kMostLines = 14;

/// Sliding points up; seen from the tip of the normal the other axis then points left.
QPolygonF onScreen(const range::Polygon& outline, const QPointF& centre, double scale) {
  QPolygonF polygon;
  for (const Eigen::Vector2d& p : outline) polygon << centre + QPointF(-p.y() * scale, -p.x() * scale);
  return polygon;
}

/// Bounds of both outlines, m, in the screen's directions.
QRectF boundsOf(const range::FacetMeeting& meeting) {
  return onScreen(meeting.prezyg, {}, 1).boundingRect().united(onScreen(meeting.postzyg, {}, 1).boundingRect());
}

range::Level levelOf(const range::JointVerdict& verdict, anatomy::Side side) {
  range::Level level = range::Level::Supported;
  for (const range::Finding& finding : verdict.findings)
    if (finding.side == side) level = std::max(level, finding.level);
  return level;
}

void paintShared(QPainter& painter, const QPolygonF& shared, const QColor& colour) {
  if (shared.size() < 3) return;
  QPainterPath path;
  path.addPolygon(shared);
  path.closeSubpath();
  painter.save();
  painter.setClipPath(path, Qt::IntersectClip);
  painter.fillRect(shared.boundingRect(), withAlpha(colour, 0.16));
  paintHatching(painter, shared.boundingRect(), colour, 4);
  painter.restore();
}

}  // namespace

double roundLength(double longest) {
  double length = 0.001;
  for (double decade = 0.001; decade <= longest; decade *= 10)
    for (double step : {1.0, 2.0, 5.0})
      if (step * decade <= longest * (1 + 1e-9)) length = step * decade;
  return length;
}

FacetDrawing::FacetDrawing(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  setMaximumHeight(fontMetrics().height() * kMostLines);
  setAccessibleName(tr("Facets of the joint, to scale"));
}

QSize FacetDrawing::sizeHint() const { return {140, fontMetrics().height() * kLinesHigh}; }

QSize FacetDrawing::minimumSizeHint() const { return {120, fontMetrics().height() * kLeastLines}; }

void FacetDrawing::show(const range::JointVerdict& verdict) {
  left_ = {verdict.left, levelOf(verdict, anatomy::Side::Left)};
  right_ = {verdict.right, levelOf(verdict, anatomy::Side::Right)};
  update();
}

QSizeF FacetDrawing::halfRoom() const {
  const qreal text = QFontMetricsF(smallFont(font())).height();
  return {width() / 2.0 - kGap, height() - 2 * text - kGap};
}

double FacetDrawing::fittingScale(const QSizeF& room) const {
  double scale = 1e6;
  for (const Half* half : {&left_, &right_}) {
    if (!half->meeting) continue;
    const QRectF bounds = boundsOf(*half->meeting);
    if (bounds.isEmpty()) continue;
    scale = std::min({scale, room.width() / bounds.width(), room.height() / bounds.height()});
  }
  return scale;
}

void FacetDrawing::paintHalf(QPainter& painter, const QRectF& room, const Half& half, const QString& name,
                             double pixelsPerMetre) {
  painter.setFont(smallFont(font()));
  painter.setPen(theme().muted);
  painter.drawText(room.adjusted(0, -painter.fontMetrics().height(), 0, 0), Qt::AlignTop | Qt::AlignHCenter, name);
  if (!half.meeting) return painter.drawText(room, Qt::AlignCenter, tr("not known"));
  const QPointF centre = room.center() - boundsOf(*half.meeting).center() * pixelsPerMetre;
  const QPolygonF prezyg = onScreen(half.meeting->prezyg, centre, pixelsPerMetre);
  const QPolygonF postzyg = onScreen(half.meeting->postzyg, centre, pixelsPerMetre);
  painter.setPen(QPen(theme().text, 1.25));
  painter.setBrush(withAlpha(theme().boneFound, theme().scheme == Scheme::Light ? 0.45 : 0.28));
  painter.drawPolygon(prezyg);
  paintShared(painter, onScreen(half.meeting->shared, centre, pixelsPerMetre), theme().verdict(half.level));
  QPen dashed(theme().text, 1.25);
  dashed.setDashPattern({4, 2.5});
  painter.setPen(dashed);
  painter.setBrush(Qt::NoBrush);
  painter.drawPolygon(postzyg);
}

void FacetDrawing::paintScaleBar(QPainter& painter, double pixelsPerMetre) {
  const double length = roundLength(width() * 0.3 / pixelsPerMetre);
  const qreal half = length * pixelsPerMetre / 2, y = height() - 3.5;
  const qreal middle = narrow() ? width() * 0.75 : width() / 2.0;
  painter.setPen(QPen(theme().muted, 1.25));
  painter.drawLine(QPointF(middle - half, y), QPointF(middle + half, y));
  for (qreal end : {-half, half}) painter.drawLine(QPointF(middle + end, y - 3), QPointF(middle + end, y + 3));
  painter.setFont(smallFont(font()));
  const QRectF words(middle - 60, y - 4 - painter.fontMetrics().height(), 120, painter.fontMetrics().height());
  painter.drawText(words, Qt::AlignCenter, millimetres(length, 0));
}

void FacetDrawing::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QSizeF room = halfRoom();
  const double scale = fittingScale(room);
  const qreal top = QFontMetricsF(smallFont(font())).height() + 2;
  paintHalf(painter, QRectF(QPointF(0, top), room), left_, tr("left"), scale);
  paintHalf(painter, QRectF(QPointF(width() - room.width(), top), room), right_, tr("right"), scale);
  if (!left_.meeting && !right_.meeting) return;
  painter.setPen(theme().muted);
  painter.setFont(smallFont(font()));
  if (narrow())
    painter.drawText(rect(), Qt::AlignBottom | Qt::AlignLeft, tr("cranial \u2191"));
  else
    painter.drawText(rect().adjusted(0, 2, 0, 0), Qt::AlignTop | Qt::AlignHCenter, tr("cranial \u2191"));
  paintScaleBar(painter, scale);
}

namespace {

/// In mm without the unit, which stands beside the row.
QString figures(double length) { return millimetres(length).chopped(3); }

}  // namespace

MeetingNumbers::MeetingNumbers(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setHorizontalSpacing(kWideGap);
  grid_->setVerticalSpacing(0);
  grid_->setColumnStretch(0, 1);
  for (int row = 0; row < Rows; ++row)
    for (int column = 0; column < 3; ++column) {
      auto* cell = cells_[row][column] = new QLabel(this);
      cell->setFont(smallFont(font()));
      grid_->addWidget(cell, row, column, column == 0 ? Qt::AlignLeft : Qt::AlignRight);
    }
  write(Head, 1, tr("left"), true);
  write(Head, 2, tr("right"), true);
  write(Gap, 0, tr("Facet gap, mm"));
  write(Centra, 0, tr("Gap between centra, mm"));
}

void MeetingNumbers::write(Row row, int column, const QString& words, bool muted) {
  QLabel* cell = cells_[row][column];
  cell->setText(words);
  const QString role = muted ? QStringLiteral("muted") : QString();
  if (cell->property("role").toString() == role) return;
  cell->setProperty("role", role);
  cell->style()->unpolish(cell);
  cell->style()->polish(cell);
}

void MeetingNumbers::show(const range::JointVerdict& verdict, const range::Assumptions& assumptions) {
  const bool byArea = assumptions.overlapBy == range::OverlapBy::Area;
  const QString rule = byArea ? tr("minimum %1 by area") : tr("minimum %1 by length");
  write(Head, 0, rule.arg(percent(assumptions.minOverlap)), true);
  write(ByLength, 0, tr("Overlap by length"), byArea);
  write(ByArea, 0, tr("Overlap by area"), !byArea);
  const std::optional<range::FacetMeeting>* const sides[] = {&verdict.left, &verdict.right};
  for (int side = 0; side < 2; ++side) {
    const auto& meeting = *sides[side];
    const QString unknown = QStringLiteral("\u2013");
    write(ByLength, side + 1, meeting ? percent(meeting->overlapLength) : unknown, byArea);
    write(ByArea, side + 1, meeting ? percent(meeting->overlapArea) : unknown, !byArea);
    const bool together = meeting && !meeting->shared.empty();
    write(Gap, side + 1, together ? tr("%1 to %2").arg(figures(meeting->minGap), figures(meeting->maxGap)) : unknown);
  }
  write(Centra, 2, figures(verdict.centrumGap));
  cells_[Centra][2]->setObjectName(QStringLiteral("centrumGap"));
  cells_[ByLength][1]->setObjectName(QStringLiteral("overlapLengthLeft"));
  cells_[ByLength][2]->setObjectName(QStringLiteral("overlapLengthRight"));
}

}  // namespace zyga::ui
