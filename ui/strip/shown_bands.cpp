#include "ui/strip/shown_bands.h"

#include <QElapsedTimer>

namespace zyga::ui {
namespace {

constexpr qint64 kSlice = 8;  // ms: half a frame

/// The largest angle from `inside` towards `edge` at which the joint is still clear of the near margin.
double firmUntil(const Document& document, JointIndex joint, int motion, double inside, double edge) {
  Eigen::Vector3d angles = document.pose()[joint];
  const auto firmAt = [&](double angle) {
    angles[motion] = angle;
    return range::levelAt(document.specimen(), document.articulation(), document.assumptions(), joint, angles) ==
           range::Level::Supported;
  };
  if (firmAt(edge)) return edge;
  constexpr int kHalvings = 10;
  for (int i = 0; i < kHalvings; ++i) {
    const double middle = (inside + edge) / 2;
    (firmAt(middle) ? inside : edge) = middle;
  }
  return inside;
}

/// An angle of the band that is clear of the near margin.
std::optional<double> firmAngle(const Document& document, JointIndex joint, int motion, const range::Band& band) {
  Eigen::Vector3d angles = document.pose()[joint];
  constexpr int kTries = 9;
  for (int i = 0; i < kTries; ++i) {
    // From the middle outwards in turns to both sides.
    const double share = 0.5 + (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * 0.1;
    angles[motion] = band.least + share * (band.most - band.least);
    if (range::levelAt(document.specimen(), document.articulation(), document.assumptions(), joint, angles) ==
        range::Level::Supported)
      return angles[motion];
  }
  return std::nullopt;
}

ShownBand shownBand(const Document& document, JointIndex joint, int motion) {
  const anatomy::Joint& bones = document.specimen()[joint];
  ShownBand shown{document.band(joint, motion), 1, -1, bones.typed.has_value() && !bones.hasFacets()};
  if (shown.width() <= 0) return shown;
  const auto inside = firmAngle(document, joint, motion, shown.band);
  if (!inside) return shown;
  shown.firmLeast = firmUntil(document, joint, motion, *inside, shown.band.least);
  shown.firmMost = firmUntil(document, joint, motion, *inside, shown.band.most);
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

}  // namespace zyga::ui
