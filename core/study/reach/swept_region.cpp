#include "core/study/reach/swept_region.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>

namespace zyga::study {
namespace {

using Eigen::Vector2d;
using std::numbers::pi;

/// Rings kept beyond the farthest reach, so that the outline has room.
constexpr int kRingsAround = 6;

/// Least value of a ring's entries from `first` to `last` (in spokes, not whole, at most one turn apart) around each
/// spoke: the two ends are taken between spokes, what lies between them by a sliding window.
class RingWindow {
 public:
  RingWindow(double first, double last, int spokes) : first_(first), last_(last), spokes_(spokes) {
    from_ = static_cast<int>(std::ceil(first));
    to_ = std::min(static_cast<int>(std::floor(last)), from_ + spokes - 1);
  }

  void slide(const std::vector<float>& ring, std::vector<float>& least) {
    const int n = spokes_;
    const auto entry = [&](int i) { return ring[static_cast<std::size_t>(((i % n) + n) % n)]; };
    queue_.clear();
    std::size_t head = 0;
    for (int i = from_; i < to_; ++i) push(i, entry(i), head);
    for (int j = 0; j < n; ++j) {
      float value = std::min(between(entry, j + first_), between(entry, j + last_));
      if (to_ >= from_) {
        push(j + to_, entry(j + to_), head);
        while (queue_[head].index < j + from_) ++head;
        value = std::min(value, queue_[head].value);
      }
      least[static_cast<std::size_t>(j)] = value;
    }
  }

 private:
  struct Entry {
    int index;
    float value;
  };
  /// Keeps the queue rising from its head: whoever is no less than a later entry will never be the least.
  void push(int index, float value, std::size_t head) {
    while (queue_.size() > head && queue_.back().value >= value) queue_.pop_back();
    queue_.push_back({index, value});
  }
  template <class At>
  static float between(const At& entry, double place) {
    const int below = static_cast<int>(std::floor(place));
    const auto share = static_cast<float>(place - below);
    return (1 - share) * entry(below) + share * entry(below + 1);
  }

  double first_, last_;
  int spokes_, from_, to_;
  std::vector<Entry> queue_;
};

/// How far from joint k the tip can be at most: its links stretched out.
std::vector<double> farthest(const std::vector<PlanarJoint>& joints, const Vector2d& tip) {
  std::vector<double> reach(joints.size());
  for (std::size_t k = joints.size(); k-- > 0;) {
    const bool last = k + 1 == joints.size();
    const Vector2d& next = last ? tip : joints[k + 1].centre;
    reach[k] = (next - joints[k].centre).norm() + (last ? 0 : reach[k + 1]);
  }
  return reach;
}

// Outlines by marching squares on the distance, then each of their points is drawn back to the region.

using Outline = std::vector<Vector2d>;

/// The line that is followed lies this many steps outside, where the distance is smooth.
constexpr double kStepsOutside = 2;

/// The edge of a cell between two neighbouring nodes: the node it starts at, and whether it goes up from there.
struct Edge {
  int column, row;
  bool upright;
  auto operator<=>(const Edge&) const = default;
};

class Marcher {
 public:
  explicit Marcher(const SweptRegion& region)
      : h_(region.step()),
        level_(kStepsOutside * region.step()),
        least_(region.centre() - Vector2d::Constant(region.radius() + 5 * h_)),
        nodes_(static_cast<int>(std::ceil(2 * (region.radius() + 5 * h_) / h_)) + 1),
        values_(static_cast<std::size_t>(nodes_) * static_cast<std::size_t>(nodes_)) {
    for (int row = 0; row < nodes_; ++row)
      for (int column = 0; column < nodes_; ++column)
        values_[index(column, row)] = static_cast<float>(region.distance(node(column, row)) - level_);
  }

  std::vector<Outline> outlines() {
    for (int row = 0; row + 1 < nodes_; ++row)
      for (int column = 0; column + 1 < nodes_; ++column) march(column, row);
    std::vector<Outline> all;
    while (!next_.empty()) all.push_back(followed());
    return all;
  }

 private:
  Vector2d node(int column, int row) const { return least_ + h_ * Vector2d(column, row); }
  std::size_t index(int column, int row) const { return static_cast<std::size_t>(row * nodes_ + column); }
  double value(int column, int row) const { return values_[index(column, row)]; }
  bool inside(int column, int row) const { return value(column, row) < 0; }

  /// Where the line crosses an edge.
  Vector2d crossing(const Edge& edge) const {
    const int c = edge.column + (edge.upright ? 0 : 1), r = edge.row + (edge.upright ? 1 : 0);
    const double from = value(edge.column, edge.row), to = value(c, r);
    return node(edge.column, edge.row) + from / (from - to) * (node(c, r) - node(edge.column, edge.row));
  }

  /// The pieces of line in one cell, each with the inside on its left. Corners count counter-clockwise from the lower
  /// left one; side k runs from corner k to the next.
  void march(int column, int row) {
    const std::array<bool, 4> in{inside(column, row), inside(column + 1, row), inside(column + 1, row + 1),
                                 inside(column, row + 1)};
    const std::array<Edge, 4> sides{
        {{column, row, false}, {column + 1, row, true}, {column, row + 1, false}, {column, row, true}}};
    // Going round a cell, the line enters the inside where a side goes from out to in and leaves it at the next change.
    // The stretch of inside corners between them lies on the line's left when it runs from leaving to entering.
    for (std::size_t k = 0; k < 4; ++k) {
      if (in[k] || !in[(k + 1) % 4]) continue;
      std::size_t leaving = (k + 1) % 4;
      while (in[(leaving + 1) % 4]) leaving = (leaving + 1) % 4;
      next_[sides[leaving]] = sides[k];
    }
  }

  Outline followed() {
    Outline outline;
    for (auto at = next_.begin(); at != next_.end();) {
      outline.push_back(crossing(at->first));
      const Edge to = at->second;
      next_.erase(at);
      at = next_.find(to);
    }
    return outline;
  }

  double h_, level_;
  Vector2d least_;
  int nodes_;
  std::vector<float> values_;
  std::map<Edge, Edge> next_;
};

/// Down the distance by as much as the line lies outside.
Vector2d drawnBack(const SweptRegion& region, const Vector2d& p) {
  const double h = 0.5 * region.step();
  const auto d = [&](double x, double y) { return region.distance(p + Vector2d(x, y)); };
  const Vector2d slope(d(h, 0) - d(-h, 0), d(0, h) - d(0, -h));
  return slope.norm() < 1e-9 ? p : Vector2d(p - kStepsOutside * region.step() * slope.normalized());
}

/// Points closer than half a step tell nothing.
Outline thinned(const Outline& outline, double step) {
  Outline kept;
  for (const Vector2d& p : outline) {
    if (kept.empty() || (p - kept.back()).norm() > 0.5 * step) kept.push_back(p);
  }
  return kept;
}

}  // namespace

SweptRegion::SweptRegion(const std::vector<PlanarJoint>& joints, const Vector2d& tip, int rings,
                         const task::Task& task) {
  if (joints.empty()) return;
  const std::vector<double> reach = farthest(joints, tip);
  step_ = reach.front() / rings;
  for (std::size_t k = joints.size(); k-- > 0;) {
    if (task.cancelled()) {
      distances_.clear();
      return;
    }
    if (k + 1 == joints.size()) {
      turnAbout(joints[k], reach[k], [&](const Vector2d& p) { return (p - tip).norm(); });
    } else {
      const SweptRegion before = *this;
      turnAbout(joints[k], reach[k], [&](const Vector2d& p) { return before.distance(p); });
    }
    task.tell(1 - static_cast<double>(k) / static_cast<double>(joints.size()));
  }
}

void SweptRegion::turnAbout(const PlanarJoint& joint, double radius, const Field& before) {
  centre_ = joint.centre;
  radius_ = radius;
  rings_ = static_cast<int>(std::ceil(radius / step_)) + kRingsAround + 1;
  spokes_ = std::max(16, static_cast<int>(std::ceil(2 * pi * radius / step_)));
  distances_.resize(static_cast<std::size_t>(rings_) * static_cast<std::size_t>(spokes_));
  // What the joint brings to a spoke comes from the spokes that lie its angles back.
  const double perSpoke = 2 * pi / spokes_;
  RingWindow window(-joint.max / perSpoke, -joint.min / perSpoke, spokes_);
  std::vector<float> ring(static_cast<std::size_t>(spokes_)), least(ring.size());
  std::vector<Vector2d> spoke(ring.size());
  for (std::size_t j = 0; j < spoke.size(); ++j) {
    const double angle = perSpoke * static_cast<double>(j);
    spoke[j] = {std::cos(angle), std::sin(angle)};
  }
  for (int i = 0; i < rings_; ++i) {
    for (std::size_t j = 0; j < ring.size(); ++j) {
      ring[j] = static_cast<float>(before(centre_ + i * step_ * spoke[j]));
    }
    window.slide(ring, least);
    std::copy(least.begin(), least.end(), distances_.begin() + static_cast<std::ptrdiff_t>(i) * spokes_);
  }
}

double SweptRegion::distance(const Vector2d& p) const {
  const Vector2d from = p - centre_;
  const double r = from.norm();
  const double outermost = (rings_ - 1) * step_;
  const double place = std::min(r, outermost) / step_;
  double turn = std::atan2(from.y(), from.x()) / (2 * pi) * spokes_;
  if (turn < 0) turn += spokes_;
  const int ring = std::min(static_cast<int>(place), rings_ - 2);
  const int spoke = std::min(static_cast<int>(turn), spokes_ - 1);
  const int next = spoke + 1 == spokes_ ? 0 : spoke + 1;
  const double a = place - ring, b = turn - spoke;
  const double inner = (1 - b) * at(ring, spoke) + b * at(ring, next);
  const double outer = (1 - b) * at(ring + 1, spoke) + b * at(ring + 1, next);
  return std::max(0.0, (1 - a) * inner + a * outer) + std::max(0.0, r - outermost);
}

std::vector<Outline> outlinesOf(const SweptRegion& region) {
  if (region.empty()) return {};
  std::vector<Outline> all = Marcher(region).outlines();
  for (Outline& outline : all) {
    for (Vector2d& p : outline) p = drawnBack(region, p);
    outline = thinned(outline, region.step());
  }
  std::erase_if(all, [](const Outline& outline) { return outline.size() < 2; });
  std::stable_sort(all.begin(), all.end(),
                   [](const auto& a, const auto& b) { return std::abs(areaOf(a)) > std::abs(areaOf(b)); });
  return all;
}

double areaOf(const std::vector<Vector2d>& outline) {
  double twice = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Vector2d& a = outline[i];
    const Vector2d& b = outline[(i + 1) % outline.size()];
    twice += a.x() * b.y() - a.y() * b.x();
  }
  return 0.5 * twice;
}

}  // namespace zyga::study
