#include <QtMath>
#include <algorithm>
#include <cmath>

#include "ui/plots/plot_axes.h"
#include "ui/plots/study_plots.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using study::RangeChart;

/// One motion of the whole column.
struct Lane {
  int motion;
  QString title;
};

constexpr double kMostShown = 60;  // degrees; typed joints may go much farther

double inDegrees(double angle) { return qRadiansToDegrees(angle); }

/// What a lane has to show, degrees: facets decide, typed limits only up to what the others need.
double reachOf(const RangeChart& chart, int motion) {
  double facets = 5, all = 5;
  for (const auto& row : chart.rows) {
    for (std::size_t k : {2 * static_cast<std::size_t>(motion), 2 * static_cast<std::size_t>(motion) + 1}) {
      if (!row.limits.judged || !row.limits.ends[k].supported) continue;
      const double end = std::abs(inDegrees(row.limits.ends[k].angle));
      all = std::max(all, end);
      if (!row.typed) facets = std::max(facets, end);
    }
  }
  return std::min({all, 1.25 * facets, kMostShown});
}

class LanePainter {
 public:
  LanePainter(QPainter& painter, const PlotFrame& frame, const RangeChart& chart, int motion, const PlotInk& ink)
      : painter_(painter), frame_(frame), chart_(chart), motion_(motion), ink_(ink) {
    width_ = std::clamp(0.7 * frame.perX(), 1.5, 14.0 * ink.size() / 12);
  }

  void paint() const {
    painter_.setPen(ink_.pen(ink_.muted, 1));
    painter_.drawLine(frame_.at(frame_.xAxis().min, 0), frame_.at(frame_.xAxis().max, 0));
    for (std::size_t i = 0; i < chart_.rows.size(); ++i) paintJoint(static_cast<double>(i), chart_.rows[i]);
  }

 private:
  double inside(double angle) const { return std::clamp(angle, frame_.yAxis().min, frame_.yAxis().max); }

  QRectF bar(double x, double least, double most) const {
    const QPointF top = frame_.at(x, inside(most)), bottom = frame_.at(x, inside(least));
    return {top.x() - width_ / 2, top.y(), width_, bottom.y() - top.y()};
  }

  void paintJoint(double x, const RangeChart::Row& row) const {
    const auto k = 2 * static_cast<std::size_t>(motion_);
    const range::Limit &most = row.limits.ends[k], &least = row.limits.ends[k + 1];
    if (!row.limits.judged) {
      paintUnjudged(x);
    } else if (most.supported && least.supported) {
      paintBar(x, row, inDegrees(least.angle), inDegrees(most.angle));
    }
    paintMark(x, row);
  }

  /// Crossed out over the whole height: nothing is known.
  void paintUnjudged(double x) const {
    painter_.setPen(ink_.pen(ink_.muted, 0.6));
    const QRectF whole = bar(x, frame_.yAxis().min, frame_.yAxis().max);
    painter_.drawLines(hatchingIn({QPolygonF(whole)}, 0.35 * ink_.size()));
  }

  void paintBar(double x, const RangeChart::Row& row, double least, double most) const {
    const QRectF box = bar(x, least, most);
    painter_.setPen(Qt::NoPen);
    QColor fill = ink_.ink;
    fill.setAlphaF(row.typed ? 0.0f : 0.22f);
    painter_.fillRect(box, fill);
    // Typed limits are hollow and dotted: somebody's word, not a bone's.
    painter_.setBrush(Qt::NoBrush);
    painter_.setPen(ink_.pen(ink_.ink, 1, row.typed ? Qt::DotLine : Qt::SolidLine));
    painter_.drawLine(box.topLeft(), box.bottomLeft());
    painter_.drawLine(box.topRight(), box.bottomRight());
    painter_.setPen(ink_.pen(ink_.ink, 1.6));
    if (most <= frame_.yAxis().max) painter_.drawLine(box.topLeft(), box.topRight());
    if (least >= frame_.yAxis().min) painter_.drawLine(box.bottomLeft(), box.bottomRight());
  }

  void paintMark(double x, const RangeChart::Row& row) const {
    const QPointF at = frame_.at(x, inside(inDegrees(row.present[motion_])));
    const qreal r = std::clamp(0.36 * frame_.perX(), 0.14 * ink_.size(), 0.36 * ink_.size());
    painter_.setPen(QPen(ink_.paper.isValid() ? ink_.paper : QColor(Qt::white), 0.6 * r));
    painter_.setBrush(ink_.ink);
    if (row.level == range::Level::Beyond) {
      const qreal s = 1.7 * r;
      painter_.drawPolygon(QPolygonF{at + QPointF(0, -s), at + QPointF(s, 0.8 * s), at + QPointF(-s, 0.8 * s)});
    } else {
      painter_.drawEllipse(at, r, r);
    }
  }

  QPainter& painter_;
  const PlotFrame& frame_;
  const RangeChart& chart_;
  int motion_;
  const PlotInk& ink_;
  double width_;
};

/// Ids of joints under the lanes, as many as fit, and a stroke between regions.
void paintJointNames(QPainter& painter, const PlotFrame& frame, const RangeChart& chart, const QRectF& lanes,
                     const PlotInk& ink) {
  painter.setFont(ink.small());
  const QFontMetricsF metrics(ink.small());
  double free = -1e9;
  for (std::size_t i = 0; i < chart.rows.size(); ++i) {
    const double x = frame.xAt(static_cast<double>(i));
    if (i > 0 && chart.rows[i].region != chart.rows[i - 1].region) {
      const double between = frame.xAt(static_cast<double>(i) - 0.5);
      painter.setPen(ink.pen(ink.muted, 0.8, Qt::DashLine));
      painter.drawLine(QPointF(between, lanes.top()), QPointF(between, lanes.bottom()));
    }
    const QString name = QString::fromStdString(chart.rows[i].id);
    const double half = metrics.horizontalAdvance(name) / 2;
    if (x - half < free || x + half > lanes.right() + 2 * ink.size()) continue;
    painter.setPen(ink.muted);
    painter.drawLine(QPointF(x, lanes.bottom()), QPointF(x, lanes.bottom() + 0.25 * ink.size()));
    painter.drawText(QPointF(x - half, lanes.bottom() + 0.4 * ink.size() + metrics.ascent()), name);
    free = x + half + 0.8 * ink.size();
  }
}

}  // namespace

void paintRangeChart(QPainter& painter, const QRectF& area, const study::RangeChart& chart, const PlotInk& ink) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (ink.paper.isValid()) painter.fillRect(area, ink.paper);
  const Lane lanes[] = {{0, translated(QT_TRANSLATE_NOOP("words", "ventral – dorsal, °"))},
                        {1, translated(QT_TRANSLATE_NOOP("words", "right – left, °"))},
                        {2, translated(QT_TRANSLATE_NOOP("words", "rotation right – left, °"))}};
  const QMarginsF room(4.2 * ink.size(), 0.8 * ink.size(), 1.2 * ink.size(), 3.4 * ink.size());
  const QRectF whole = area.marginsRemoved(room);
  const double gap = 1.2 * ink.size();
  const double height = (whole.height() - 2 * gap) / 3;
  const PlotAxis x{-0.7, static_cast<double>(chart.rows.size()) - 0.3, {}};
  for (int i = 0; i < 3; ++i) {
    const QRectF lane(whole.left(), whole.top() + i * (height + gap), whole.width(), height);
    const double reach = 1.08 * reachOf(chart, lanes[i].motion);
    const PlotFrame frame(lane, x, {-reach, reach, lanes[i].title});
    paintYAxis(painter, frame, ink);
    if (i == 2) paintJointNames(painter, frame, chart, whole, ink);
    LanePainter(painter, frame, chart, lanes[i].motion, ink).paint();
  }
  painter.setFont(ink.small());
  painter.setPen(ink.muted);
  const QString key = translated(QT_TRANSLATE_NOOP(
      "words", "bar: range from neutral; dotted: typed limits; mark: present angle, triangle where out of range"));
  const QFontMetricsF metrics(ink.small());
  painter.drawText(QPointF(whole.left(), whole.bottom() + 1.8 * ink.size() + metrics.ascent()),
                   metrics.elidedText(key, Qt::ElideRight, area.right() - whole.left()));
  painter.restore();
}

}  // namespace zyga::ui
