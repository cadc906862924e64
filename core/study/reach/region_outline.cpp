#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "core/study/reach/swept_region.h"

// Outlines by marching squares on the distance, then each of their points is drawn back to the region.
namespace zyga::study {
namespace {

using Eigen::Vector2d;
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

}  // namespace zyga::study
