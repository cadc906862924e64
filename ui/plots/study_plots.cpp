#include "ui/plots/study_plots.h"

#include <QtMath>
#include <algorithm>
#include <cmath>

#include "ui/plots/plot_axes.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"
#include "ui/words/study_words.h"

namespace zyga::ui {
namespace {

using study::NeckCarriage;
using study::SpreadOf;
using study::SpreadStudy;

constexpr int kBins = 24;

QString nameOf(SpreadOf what) {
  switch (what) {
    case SpreadOf::NeutralSnout:
      return translated(QT_TRANSLATE_NOOP("words", "neutral"));
    case SpreadOf::HighestSnout:
      return translated(QT_TRANSLATE_NOOP("words", "highest"));
    case SpreadOf::LowestSnout:
      return translated(QT_TRANSLATE_NOOP("words", "lowest"));
    case SpreadOf::PresentSnout:
    case SpreadOf::PresentSlope:
      return translated(QT_TRANSLATE_NOOP("words", "present"));
    case SpreadOf::NeutralSlope:
      return translated(QT_TRANSLATE_NOOP("words", "neutral"));
    case SpreadOf::HighestSlope:
      return translated(QT_TRANSLATE_NOOP("words", "highest"));
    case SpreadOf::NeckLength:
      break;
  }
  return translated(QT_TRANSLATE_NOOP("words", "length"));
}

double shown(SpreadOf what, double value) { return study::isAngle(what) ? qRadiansToDegrees(value) : value; }

/// Quantities of one unit over each other, on one axis.
struct Group {
  std::vector<SpreadOf> rows;
  QString title;
};

PlotAxis axisOf(const SpreadStudy& spread, const Group& group) {
  PlotAxis x{1e9, -1e9, group.title};
  for (const SpreadOf what : group.rows) {
    const auto& q = spread.quantiles[static_cast<std::size_t>(what)];
    const auto values = spread.of(what);
    const auto [least, most] = std::minmax_element(values.begin(), values.end());
    const double asIs = spread.asIs[static_cast<std::size_t>(what)];
    x.min = std::min({x.min, shown(what, asIs), shown(what, values.empty() ? q.q05 : *least)});
    x.max = std::max({x.max, shown(what, asIs), shown(what, values.empty() ? q.q95 : *most)});
  }
  const double room = std::max(1e-3, 0.04 * (x.max - x.min));
  x.min -= room;
  x.max += room;
  return x;
}

class RowPainter {
 public:
  RowPainter(QPainter& painter, const PlotFrame& frame, const SpreadStudy& spread, const PlotInk& ink)
      : painter_(painter), frame_(frame), spread_(spread), ink_(ink) {}

  void paint(SpreadOf what, const QRectF& row) const {
    const double base = row.bottom() - 1.25 * ink_.size();
    paintCurve(what,
               QRectF(row.left(), row.top() + 0.2 * ink_.size(), row.width(), base - row.top() - 0.2 * ink_.size()));
    paintBar(what, base + 0.45 * ink_.size());
    painter_.setFont(ink_.font);
    painter_.setPen(ink_.ink);
    const QFontMetricsF metrics(ink_.font);
    painter_.drawText(QPointF(frame_.area().left() - 0.6 * ink_.size() - metrics.horizontalAdvance(nameOf(what)),
                              base + 0.45 * ink_.size() + 0.36 * metrics.ascent()),
                      nameOf(what));
  }

 private:
  double x(SpreadOf what, double value) const { return frame_.xAt(shown(what, value)); }

  /// How many draws fall where, as a curve of steps.
  void paintCurve(SpreadOf what, const QRectF& room) const {
    const auto values = spread_.of(what);
    if (values.empty()) return;
    const auto [least, most] = std::minmax_element(values.begin(), values.end());
    const double width = (*most - *least) / kBins;
    if (!(width > 0)) return;
    std::vector<int> bins(kBins);
    for (const double v : values) {
      ++bins[std::min<std::size_t>(kBins - 1, static_cast<std::size_t>((v - *least) / width))];
    }
    const double tallest = *std::max_element(bins.begin(), bins.end());
    QPolygonF hill{QPointF(x(what, *least), room.bottom())};
    for (std::size_t i = 0; i < bins.size(); ++i) {
      const double y = room.bottom() - room.height() * bins[i] / tallest;
      hill << QPointF(x(what, *least + width * static_cast<double>(i)), y)
           << QPointF(x(what, *least + width * static_cast<double>(i + 1)), y);
    }
    hill << QPointF(x(what, *most), room.bottom());
    painter_.setPen(ink_.pen(ink_.muted, 0.7));
    painter_.drawLines(hatchingIn({hill}, 0.4 * ink_.size()));
    painter_.setPen(ink_.pen(ink_.ink, 1));
    painter_.setBrush(Qt::NoBrush);
    painter_.drawPolyline(hill);
  }

  void paintBar(SpreadOf what, double y) const {
    const auto& q = spread_.quantiles[static_cast<std::size_t>(what)];
    const double half = 0.28 * ink_.size();
    const QRectF bar(QPointF(x(what, q.q05), y - half), QPointF(x(what, q.q95), y + half));
    painter_.setPen(ink_.pen(ink_.ink, 1));
    painter_.setBrush(ink_.paper.isValid() ? QBrush(ink_.paper) : QBrush(Qt::NoBrush));
    painter_.drawRect(bar);
    painter_.setPen(ink_.pen(ink_.ink, 3));
    const double middle = x(what, q.q50);
    painter_.drawLine(QPointF(middle, y - 1.6 * half), QPointF(middle, y + 1.6 * half));
    const double d = 0.34 * ink_.size();
    const QPointF asIs(x(what, spread_.asIs[static_cast<std::size_t>(what)]), y);
    painter_.setPen(ink_.pen(ink_.paper.isValid() ? ink_.paper : QColor(Qt::white), 0.8));
    painter_.setBrush(ink_.ink);
    painter_.drawPolygon(
        QPolygonF{asIs - QPointF(0, d), asIs + QPointF(d, 0), asIs + QPointF(0, d), asIs - QPointF(d, 0)});
    painter_.setFont(ink_.small());
    const QString words = plain(shown(what, q.q05), study::isAngle(what) ? 1 : 2) + QStringLiteral(" – ") +
                          (study::isAngle(what) ? degrees(q.q95) : metres(q.q95));
    const QFontMetricsF metrics(ink_.small());
    const bool right = bar.right() + metrics.horizontalAdvance(words) + ink_.size() < frame_.area().right();
    const QPointF at = right ? QPointF(std::max(bar.right(), asIs.x() + d) + 0.5 * ink_.size(), y)
                             : QPointF(std::min(bar.left(), asIs.x() - d) - 0.5 * ink_.size(), y);
    paintWords(painter_, at, words, (right ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter, ink_, ink_.ink);
  }

  QPainter& painter_;
  const PlotFrame& frame_;
  const SpreadStudy& spread_;
  const PlotInk& ink_;
};

void paintGroup(QPainter& painter, const QRectF& area, const SpreadStudy& spread, const Group& group,
                const PlotInk& ink) {
  const QRectF numbers = area.marginsRemoved({5.2 * ink.size(), 0.6 * ink.size(), 1.2 * ink.size(), 3.2 * ink.size()});
  const PlotFrame frame(numbers, axisOf(spread, group), {0, 1, {}});
  paintXAxis(painter, frame, ink);
  const double height = numbers.height() / static_cast<double>(group.rows.size());
  const RowPainter rows(painter, frame, spread, ink);
  for (std::size_t i = 0; i < group.rows.size(); ++i) {
    rows.paint(group.rows[i],
               {numbers.left(), numbers.top() + static_cast<double>(i) * height, numbers.width(), height});
  }
}

/// At the heart of an upright sauropod in one view (Seymour & Lillywhite 2000, Proc. R. Soc. B 267:1883), mmHg.
constexpr double kUprightView = 700;

QString heartWords(const study::Pressure::Row& row) {
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1, %2")),
                {millimetresOfMercury(row.atHeart), metres(row.column)});
}

/// From no pressure to a row's, hatched, and on to what it makes at the heart, open; a thin bar from thin to thick
/// blood at the column's end.
void paintRow(QPainter& painter, const PlotFrame& frame, const study::Pressure::Row& row, double y, double height,
              const PlotInk& ink) {
  const double zero = frame.xAt(0), end = frame.xAt(row.pressure);
  const QRectF bar = QRectF(QPointF(zero, y - height / 2), QPointF(end, y + height / 2)).normalized();
  const bool present = row.which == NeckCarriage::Present;
  painter.setPen(ink.pen(present ? ink.ink : ink.muted, present ? 1 : 0.7));
  painter.drawLines(hatchingIn({QPolygonF(bar)}, (present ? 0.28 : 0.5) * ink.size()));
  painter.setPen(ink.pen(ink.ink, present ? 2 : 1.2));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(bar);
  painter.setPen(ink.pen(ink.ink, 1, Qt::DashLine));
  painter.drawRect(
      QRectF(QPointF(std::max(zero, end), y - 0.35 * height), QPointF(frame.xAt(row.atHeart), y + 0.35 * height)));
  const QPointF low(frame.xAt(row.low), y), high(frame.xAt(row.high), y);
  painter.setPen(ink.pen(ink.ink, 2));
  painter.drawLine(low, high);
  for (const QPointF& at : {low, high}) painter.drawLine(at - QPointF(0, 0.3 * height), at + QPointF(0, 0.3 * height));
  painter.setFont(ink.font);
  paintWords(painter, {std::max({frame.xAt(row.atHeart), low.x(), high.x()}) + 0.6 * ink.size(), y}, heartWords(row),
             Qt::AlignLeft | Qt::AlignVCenter, ink, ink.ink);
  const QFontMetricsF metrics(ink.font);
  painter.setPen(ink.ink);
  painter.drawText(QPointF(frame.area().left() - 0.6 * ink.size() - metrics.horizontalAdvance(carriageWord(row.which)),
                           y + 0.36 * metrics.ascent()),
                   carriageWord(row.which));
}

/// One callable out of several.
template <class... Calls>
struct Each : Calls... {
  using Calls::operator()...;
};
template <class... Calls>
Each(Calls...) -> Each<Calls...>;

}  // namespace

void paintSpread(QPainter& painter, const QRectF& area, const study::SpreadStudy& spread, const PlotInk& ink) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (ink.paper.isValid()) painter.fillRect(area, ink.paper);
  const Group heights{{SpreadOf::HighestSnout, SpreadOf::PresentSnout, SpreadOf::NeutralSnout, SpreadOf::LowestSnout},
                      translated(QT_TRANSLATE_NOOP("words", "snout over the ground, m"))};
  const Group slopes{{SpreadOf::HighestSlope, SpreadOf::PresentSlope, SpreadOf::NeutralSlope},
                     translated(QT_TRANSLATE_NOOP("words", "slope of the neck, °"))};
  const QFontMetricsF metrics(ink.small());
  const double foot = 1.6 * metrics.height();
  const double share = 4.0 / 7;
  const double height = area.height() - foot;
  paintGroup(painter, {area.left(), area.top(), area.width(), height * share}, spread, heights, ink);
  paintGroup(painter, {area.left(), area.top() + height * share, area.width(), height * (1 - share)}, spread, slopes,
             ink);
  painter.setFont(ink.small());
  painter.setPen(ink.muted);
  const QString key =
      translated(QT_TRANSLATE_N_NOOP(
                     "words", "curve: %n samples; bar: 5 to 95 %; line: half of them; diamond: the table as it is"),
                 static_cast<int>(spread.draws.size()));
  painter.drawText(QPointF(area.left() + 0.8 * ink.size(), area.bottom() - metrics.descent() - 0.2 * ink.size()),
                   metrics.elidedText(key, Qt::ElideRight, area.width() - 1.6 * ink.size()));
  painter.restore();
}

void paintPressure(QPainter& painter, const QRectF& area, const study::Pressure& pressure, const PlotInk& ink) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (ink.paper.isValid()) painter.fillRect(area, ink.paper);
  const QFontMetricsF metrics(ink.font);
  double names = 0;
  PlotAxis x{0, kUprightView,
             translated(QT_TRANSLATE_NOOP("words", "at the heart, mmHg: column of blood, perfusion of the head"))};
  for (const auto& row : pressure.rows) {
    names = std::max(names, metrics.horizontalAdvance(carriageWord(row.which)));
    x.min = std::min(x.min, row.low);
    x.max = std::max({x.max, row.high, row.atHeart});
  }
  x.min = x.min < 0 ? 1.1 * x.min : 0;
  x.max *= 1.06;
  const QRectF numbers =
      area.marginsRemoved({names + 1.6 * ink.size(), 2 * ink.size(), 1.2 * ink.size(), 3.4 * ink.size()});
  // Room for the words beyond the end of each bar, where there is room at all.
  for (const auto& row : pressure.rows) {
    const double bar = 1 - (metrics.horizontalAdvance(heartWords(row)) + ink.size()) / numbers.width();
    constexpr double kLeastBar = 0.3;  // of the width
    if (bar > kLeastBar) x.max = std::max(x.max, x.min + (std::max(row.high, row.atHeart) - x.min) / bar);
  }
  const PlotFrame frame(numbers, x, {0, 1, {}});
  paintXAxis(painter, frame, ink);
  const double step = numbers.height() / static_cast<double>(pressure.rows.size());
  painter.setPen(ink.pen(ink.ink, 1.2, Qt::DashLine));
  painter.drawLine(QPointF(frame.xAt(kUprightView), numbers.top()), QPointF(frame.xAt(kUprightView), numbers.bottom()));
  painter.setFont(ink.small());
  paintWords(painter, {frame.xAt(kUprightView), numbers.top() - 0.5 * ink.size()},
             translated(QT_TRANSLATE_NOOP("words", "upright sauropod in one published view")), Qt::AlignRight, ink,
             ink.muted);
  for (std::size_t i = 0; i < pressure.rows.size(); ++i) {
    const double y = numbers.top() + (static_cast<double>(i) + 0.5) * step;
    paintRow(painter, frame, pressure.rows[i], y, std::min(0.5 * step, 2.2 * ink.size()), ink);
  }
  painter.setPen(ink.pen(ink.ink, 1.4));
  painter.drawLine(frame.at(0, 0), frame.at(0, 1));
  painter.restore();
}

void paintStudy(QPainter& painter, const QRectF& area, const study::StudyResult& result, const PlotInk& ink) {
  std::visit(Each{[&](const study::Elevation& found) { paintElevation(painter, area, found, ink); },
                  [&](const study::Envelope& found) { paintEnvelope(painter, area, found, ink); },
                  [&](const study::RangeChart& found) { paintRangeChart(painter, area, found, ink); },
                  [&](const study::SpreadStudy& found) { paintSpread(painter, area, found, ink); },
                  [&](const study::Pressure& found) { paintPressure(painter, area, found, ink); },
                  [&](const study::JointStress& found) { paintStress(painter, area, found, ink); }},
             result);
}

QSizeF figureSize(study::StudyKind kind) {
  switch (kind) {
    case study::StudyKind::Elevation:
      return {480, 320};
    case study::StudyKind::Envelope:
      return {480, 400};
    case study::StudyKind::Range:
      return {640, 400};
    case study::StudyKind::Spread:
      return {480, 480};
    case study::StudyKind::Pressure:
      return {480, 240};
    case study::StudyKind::Stress:
      break;
  }
  return {480, 340};
}

}  // namespace zyga::ui
