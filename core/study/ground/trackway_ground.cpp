#include "core/study/ground/trackway_ground.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>

namespace zyga::study {
namespace {

using Eigen::Vector2d;

Vector2d leftOf(const Vector2d& forward) { return {-forward.y(), forward.x()}; }
Vector2d turned(const Vector2d& v, double angle) { return Eigen::Rotation2Dd(angle) * v; }

/// The prints of one kind of foot, in a frame of their own: the first at the origin, travel roughly along x.
class PrintChain {
 public:
  PrintChain(const Trackway& trackway, bool fore) : trackway_(trackway), fore_(fore) {
    for (std::size_t i = 0; i < trackway.prints.size(); ++i) {
      const auto foot = footFromText(trackway.prints[i].foot);
      if (foot && isFore(*foot) == fore) rows_.push_back(i);
    }
    if (rows_.empty()) return;
    start();
    while (points_.size() < rows_.size() + 2 && step()) {
    }
    straighten();
  }

  const std::vector<std::size_t>& rows() const { return rows_; }
  const reason::Reason& gap() const { return gap_; }
  /// The prints with `p_W` and `heading` still in the chain's frame, the line of travel on y = 0.
  std::vector<PlacedPrint> placed() const {
    std::vector<PlacedPrint> prints;
    for (std::size_t i = 0; i < points_.size(); ++i) prints.push_back(printAt(i));
    return prints;
  }

 private:
  const Footprint& row(std::size_t i) const { return trackway_.prints[rows_[i]]; }
  bool leftAt(std::size_t i) const {
    if (i < rows_.size()) return isLeft(*footFromText(row(i).foot));
    const bool last = isLeft(*footFromText(row(rows_.size() - 1).foot));
    return (i - rows_.size()) % 2 == 0 ? !last : last;
  }
  /// +1 for a print of the left side, -1 for one of the right.
  double sideAt(std::size_t i) const { return leftAt(i) ? 1 : -1; }
  /// The pace after print i: its own, or the next pace of the print before it.
  std::optional<double> paceFrom(std::size_t i) const {
    if (i < rows_.size() && row(i).pace) return row(i).pace;
    return i > 0 && i - 1 < rows_.size() ? row(i - 1).nextPace : std::nullopt;
  }

  /// The first print, and the second where anything tells of it.
  void start() {
    points_.emplace_back(Vector2d::Zero());
    const auto& first = row(0);
    const auto pace = paceFrom(0);
    const auto next = first.nextPace ? first.nextPace : paceFrom(1);
    if (pace && next && first.stride && gaugeOf(*pace, *next, *first.stride)) {
      const double across = *gaugeOf(*pace, *next, *first.stride);
      // The foot of the height on the stride may lie before its start, with a very unequal pair of paces.
      const double along = (*pace * *pace - *next * *next + *first.stride * *first.stride) / (2 * *first.stride);
      points_.emplace_back(along, sideAt(1) * across);
    } else if (pace && first.gauge && std::abs(*first.gauge) <= *pace) {
      points_.emplace_back(std::sqrt(*pace * *pace - *first.gauge * *first.gauge), sideAt(1) * *first.gauge);
    } else {
      stop(0, pace ? kNextPaceUnknown : kPaceUnknown);
    }
  }

  /// Adds the print after the last one; false when nothing tells where it is.
  bool step() {
    const std::size_t n = points_.size();
    if (n < 2 || n - 2 >= rows_.size()) return false;
    const auto pace = paceFrom(n - 1);
    const auto& stride = row(n - 2).stride;
    const Vector2d back = points_[n - 1] - points_[n - 2];
    if (pace && stride && paceAngulation(back.norm(), *pace, *stride)) {
      // Angle at the print before the last between the step made and the stride.
      const double cosine = (back.squaredNorm() + *stride * *stride - *pace * *pace) / (2 * back.norm() * *stride);
      const double angle = std::acos(std::clamp(cosine, -1.0, 1.0));
      const Vector2d way = turned(back.normalized(), -sideAt(n - 1) * angle);
      points_.emplace_back(points_[n - 2] + *stride * way);
      return true;
    }
    const auto gauge = n - 1 < rows_.size() && row(n - 1).gauge ? row(n - 1).gauge : row(n - 2).gauge;
    if (pace && gauge && std::abs(*gauge) <= *pace) {
      const Vector2d way = travel();
      points_.emplace_back(points_[n - 1] + way * std::sqrt(*pace * *pace - *gauge * *gauge) +
                           leftOf(way) * sideAt(n) * *gauge);
      return true;
    }
    if (n < rows_.size()) stop(n - 1, pace ? kStrideUnknown : kPaceUnknown);
    return false;
  }

  /// Direction of the last stride, or of the first step with its sideways part left out.
  Vector2d travel() const {
    const std::size_t n = points_.size();
    return n > 2 ? (points_[n - 1] - points_[n - 3]).normalized() : Vector2d::UnitX();
  }

  void stop(std::size_t i, reason::Id missing) {
    if (i + 1 >= rows_.size()) return;  // nothing stands after it
    gap_ = {missing, {reason::text(row(i).foot)}};
  }

  /// Turns the whole so that the first and last stride's middles lie along x, and shifts the line between left and
  /// right to y = 0.
  void straighten() {
    const std::size_t n = points_.size();
    if (n >= 3) {
      const Vector2d from = (points_[0] + points_[1]) / 2, to = (points_[n - 2] + points_[n - 1]) / 2;
      const Vector2d way = to - from;
      const double angle = -std::atan2(way.y(), way.x());
      for (auto& point : points_) point = turned(point, angle);
    }
    const double middle = n >= 2 ? lineOfTravel() : 0;
    for (auto& point : points_) point.y() -= middle;
  }

  double lineOfTravel() const {
    double left = 0, right = 0;
    std::size_t lefts = 0;
    for (std::size_t i = 0; i < points_.size(); ++i) {
      (leftAt(i) ? left : right) += points_[i].y();
      lefts += leftAt(i);
    }
    const std::size_t rights = points_.size() - lefts;
    if (!lefts || !rights) return (left + right) / static_cast<double>(points_.size());
    return (left / static_cast<double>(lefts) + right / static_cast<double>(rights)) / 2;
  }

  PlacedPrint printAt(std::size_t i) const {
    PlacedPrint print;
    print.ownRow = i < rows_.size();
    print.row = rows_[std::min(i, rows_.size() - 1)];
    const auto& from = trackway_.prints[print.row];
    print.label = from.foot;
    if (fore_) {
      print.foot = leftAt(i) ? Foot::LeftFore : Foot::RightFore;
    } else {
      print.foot = leftAt(i) ? Foot::LeftHind : Foot::RightHind;
    }
    print.p_W = points_[i];
    // Along the stride that passes it.
    const std::size_t before = i > 0 ? i - 1 : i, after = std::min(i + 1, points_.size() - 1);
    const std::size_t span = after - before;
    const Vector2d way = span == 2 ? Vector2d(points_[after] - points_[before]) : Vector2d::UnitX();
    print.heading = std::atan2(way.y(), way.x());
    if (print.ownRow) {
      print.length = from.length;
      print.width = from.width;
    }
    return print;
  }

  const Trackway& trackway_;
  bool fore_;
  std::vector<std::size_t> rows_;
  std::vector<Vector2d> points_;
  reason::Reason gap_;
};

/// How far the chain of fore prints must be moved along the line of travel, from the first row that says how far it
/// lies ahead of the hind print of its side.
std::optional<double> foreShift(const Trackway& trackway, const std::vector<PlacedPrint>& hind,
                                const std::vector<PlacedPrint>& fore) {
  std::array<std::size_t, 2> nth{};
  for (const auto& print : fore) {
    std::size_t wanted = nth.at(isLeft(print.foot) ? 0 : 1)++;
    const auto& ahead = trackway.prints[print.row].ahead;
    if (!print.ownRow || !ahead) continue;
    for (const auto& other : hind) {
      if (isLeft(other.foot) == isLeft(print.foot) && wanted-- == 0) return other.p_W.x() + *ahead - print.p_W.x();
    }
  }
  return {};
}

void append(LaidTrackway& laid, std::vector<PlacedPrint> prints, const Trackway& trackway) {
  for (auto& print : prints) {
    print.p_W = turned(print.p_W, trackway.heading) + Vector2d(trackway.x, trackway.y);
    print.heading += trackway.heading;
    laid.prints.push_back(std::move(print));
  }
}

}  // namespace

LaidTrackway layOut(const Trackway& trackway) {
  LaidTrackway laid;
  const PrintChain hind(trackway, false), fore(trackway, true);
  for (const auto* chain : {&hind, &fore}) {
    if (!chain->gap().empty()) laid.gaps.push_back(chain->gap());
  }
  for (const auto& print : trackway.prints) {
    if (footFromText(print.foot)) continue;
    laid.gaps.push_back(print.foot.empty() ? reason::Reason(kPrintWithoutName)
                                           : reason::Reason(kPrintWithoutSide, {reason::text(print.foot)}));
  }
  const auto hindPrints = hind.placed();
  auto forePrints = fore.placed();
  append(laid, hindPrints, trackway);
  if (forePrints.empty()) return laid;
  const auto shift = foreShift(trackway, hindPrints, forePrints);
  if (!shift && !hindPrints.empty()) {
    laid.gaps.push_back({kForePrintsAdrift, {}});
    return laid;
  }
  for (auto& print : forePrints) print.p_W.x() += shift.value_or(0);
  append(laid, std::move(forePrints), trackway);
  return laid;
}

}  // namespace zyga::study
