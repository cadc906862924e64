#include <algorithm>
#include <cmath>

#include "ui/plots/carriage_pen.h"
#include "ui/plots/plot_axes.h"
#include "ui/plots/study_plots.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"
#include "ui/words/study_words.h"

// Joint stress against the joints of the neck.
namespace zyga::ui {
namespace {

using study::JointStress;
using study::NeckLoads;

double inMegapascals(double stress) { return stress / 1e6; }

/// "neutral, variation 23 %"
QString keyWords(const NeckLoads& posture) {
  if (!posture.evenness.variation) return carriageWord(posture.which);
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1, variation %2")),
                {carriageWord(posture.which), percent(*posture.evenness.variation)});
}

PlotAxis stressAxis(const JointStress& stress) {
  PlotAxis y{0, 0, translated(QT_TRANSLATE_NOOP("words", "stress, MPa"))};
  for (const NeckLoads& posture : stress.postures) {
    for (const study::JointLoad& load : posture.joints) {
      y.min = std::min(y.min, inMegapascals(load.stress));
      y.max = std::max(y.max, inMegapascals(load.stress));
    }
  }
  const double room = std::max(1e-3, 0.05 * (y.max - y.min));
  y.max += room;
  if (y.min < 0) y.min -= room;
  return y;
}

/// Ids of the joints under the axis, as many as fit; the base of the neck stands right.
void paintStressJoints(QPainter& painter, const PlotFrame& frame, const JointStress& stress, const PlotInk& ink) {
  painter.setFont(ink.small());
  const QFontMetricsF metrics(ink.small());
  const QRectF& area = frame.area();
  double free = -1e9;
  for (std::size_t i = stress.joints.size(); i-- > 0;) {
    const double x = frame.xAt(static_cast<double>(i));
    const QString name = QString::fromStdString(stress.joints[i].id);
    const double half = metrics.horizontalAdvance(name) / 2;
    painter.setPen(ink.pen(ink.muted, 0.8));
    painter.drawLine(QPointF(x, area.bottom()), QPointF(x, area.bottom() + 0.25 * ink.size()));
    if (x - half < free || x + half > area.right() + 1.2 * ink.size()) continue;
    painter.setPen(ink.muted);
    painter.drawText(QPointF(x - half, area.bottom() + 0.4 * ink.size() + metrics.ascent()), name);
    free = x + half + 0.8 * ink.size();
  }
}

void paintLoads(QPainter& painter, const PlotFrame& frame, const NeckLoads& posture, const PlotInk& ink) {
  QPolygonF line;
  for (std::size_t i = 0; i < posture.joints.size(); ++i)
    line << frame.at(static_cast<double>(i), inMegapascals(posture.joints[i].stress));
  painter.setPen(carriagePen(posture.which, ink));
  painter.setBrush(Qt::NoBrush);
  painter.drawPolyline(line);
  if (posture.which != study::NeckCarriage::Present) return;
  painter.setPen(Qt::NoPen);
  painter.setBrush(ink.ink);
  for (const QPointF& at : line) painter.drawEllipse(at, 0.26 * ink.size(), 0.26 * ink.size());
}

/// Kinds of line with their words, side by side in as many columns as fit.
class StressKey {
 public:
  StressKey(const JointStress& stress, double width, const PlotInk& ink) : stress_(stress), ink_(ink) {
    const QFontMetricsF metrics(ink.font);
    double widest = 0;
    for (const NeckLoads& posture : stress.postures)
      widest = std::max(widest, metrics.horizontalAdvance(keyWords(posture)));
    column_ = widest + 5.4 * ink.size();
    columns_ = std::clamp<std::size_t>(static_cast<std::size_t>(width / column_), 1, stress.postures.size());
    rows_ = (stress.postures.size() + columns_ - 1) / columns_;
  }
  double height() const { return 1.4 * ink_.size() * static_cast<double>(rows_); }

  void paint(QPainter& painter, const QPointF& corner) const {
    painter.setFont(ink_.font);
    for (std::size_t i = 0; i < stress_.postures.size(); ++i) {
      const QPointF at = corner + QPointF(column_ * static_cast<double>(i / rows_),
                                          1.4 * ink_.size() * (static_cast<double>(i % rows_) + 0.5));
      painter.setPen(carriagePen(stress_.postures[i].which, ink_));
      painter.drawLine(at, at + QPointF(3.4 * ink_.size(), 0));
      paintWords(painter, at + QPointF(4 * ink_.size(), 0), keyWords(stress_.postures[i]),
                 Qt::AlignLeft | Qt::AlignVCenter, ink_, ink_.ink);
    }
  }

 private:
  const JointStress& stress_;
  const PlotInk& ink_;
  double column_ = 0;
  std::size_t columns_ = 1, rows_ = 1;
};

}  // namespace

void paintStress(QPainter& painter, const QRectF& area, const JointStress& stress, const PlotInk& ink) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (ink.paper.isValid()) painter.fillRect(area, ink.paper);
  const StressKey key(stress, area.width() - 2 * ink.size(), ink);
  QMarginsF room = axisRoom(ink);
  room.setBottom(2.2 * ink.size() + key.height());
  const PlotAxis x{-0.4, static_cast<double>(stress.joints.size()) - 0.6, {}};
  const PlotFrame frame(area.marginsRemoved(room), x, stressAxis(stress), true);
  paintYAxis(painter, frame, ink);
  paintStressJoints(painter, frame, stress, ink);
  painter.setPen(ink.pen(ink.ink, 1.4));
  painter.drawLine(frame.at(x.min, 0), frame.at(x.max, 0));
  for (const NeckLoads& posture : stress.postures) paintLoads(painter, frame, posture, ink);
  key.paint(painter, {area.left() + ink.size(), area.bottom() - key.height() - 0.2 * ink.size()});
  painter.restore();
}

}  // namespace zyga::ui
