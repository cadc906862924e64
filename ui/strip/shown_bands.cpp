#include "ui/strip/shown_bands.h"

#include <QElapsedTimer>
#include <algorithm>
#include <numeric>

#include "core/kinematics/bend.h"
#include "core/range/limit_search.h"

namespace zyga::ui {

namespace {

constexpr qint64 kSlice = 8;  // ms: half a frame

ShownBand shownBand(const Document& document, JointIndex joint, int motion) {
  const anatomy::Joint& bones = document.specimen()[joint];
  ShownBand shown{document.motionRange(joint, motion), 1, -1, bones.typed.has_value() && !bones.hasFacets()};
  if (shown.width() <= 0) return shown;
  const range::JointEvaluator judge(document.specimen(), document.articulation(), document.assumptions(), joint);
  const range::LimitSearch search(judge, document.pose()[joint], motion);
  const range::Interval firm = search.firm({shown.band.min, shown.band.max, false, false, false});
  if (firm.empty) return shown;
  shown.firmLeast = firm.min;
  shown.firmMost = firm.max;
  return shown;
}

}  // namespace

ShownBands::ShownBands(const Document& document, QObject* parent) : QObject(parent), document_(document) {
  timer_.setInterval(0);
  connect(&timer_, &QTimer::timeout, this, &ShownBands::findSome);
}

void ShownBands::reset(const StripColumns& columns, int motion) {
  motion_ = motion;
  joints_.clear();
  for (const StripColumn& column : columns.columns) joints_.push_back(column.joint);
  shown_.assign(joints_.size(), {});
  waiting_ = shown_.size();
  next_ = 0;
  if (waiting_ > 0) timer_.start();
}

void ShownBands::markStale(std::size_t column) {
  if (shown_[column].stale) return;
  shown_[column].stale = true;
  ++waiting_;
  timer_.start();
}

void ShownBands::poseChanged() {
  for (std::size_t i = 0; i < shown_.size(); ++i) {
    // The band of a motion hangs on the joint's other angles only.
    Eigen::Vector3d moved = document_.pose()[joints_[i]] - shown_[i].angles;
    moved[motion_] = 0;
    if (!moved.isZero(0)) markStale(i);
  }
}

void ShownBands::assumptionsChanged() {
  for (std::size_t i = 0; i < shown_.size(); ++i) markStale(i);
}

const ShownBand& ShownBands::upToDate(std::size_t column) {
  if (shown_[column].stale) find(column);
  return *shown_[column].band;
}

void ShownBands::find(std::size_t column) {
  Shown& shown = shown_[column];
  shown.band = shownBand(document_, joints_[column], motion_);
  shown.angles = document_.pose()[joints_[column]];
  shown.stale = false;
  --waiting_;
}

void ShownBands::findSome() {
  QElapsedTimer clock;
  clock.start();
  while (waiting_ > 0 && clock.elapsed() < kSlice) {
    if (shown_[next_].stale) find(next_);
    next_ = (next_ + 1) % shown_.size();
  }
  if (waiting_ == 0) timer_.stop();
  emit changed();
}

SpanTurn spanTurn(const std::vector<double>& widths, int motion, std::size_t grabbed, double delta) {
  SpanTurn span{widths};
  if (widths.empty()) return span;
  double sum = std::accumulate(widths.begin(), widths.end(), 0.0);
  if (sum <= 0) {
    span.weights.assign(widths.size(), 1.0);
    sum = static_cast<double>(widths.size());
  }
  const std::vector<double>& given = span.weights;
  const double leader = given[grabbed] > 0 ? given[grabbed] : *std::max_element(given.begin(), given.end());
  for (double& weight : span.weights) weight /= sum;
  span.turn[motion] = delta * sum / leader;
  return span;
}

}  // namespace zyga::ui
