#include "core/range/convex_clip.h"

#include <cmath>

namespace zyga::range {

void ConvexClip::load(const std::vector<Point>& subject) {
  nodes_.clear();
  const auto count = static_cast<std::uint32_t>(subject.size());
  for (std::uint32_t i = 0; i < count; ++i) {
    nodes_.push_back({subject[i], i + 1 == count ? 0 : i + 1, i == 0 ? count - 1 : i - 1});
  }
  current_ = 0;
}

bool ConvexClip::intersect(const std::vector<Point>& subject, const std::vector<Point>& window, double tolerance) {
  if (subject.size() < 3 || window.size() < 3) return false;
  load(subject);
  nodes_.reserve(subject.size() + 2 * window.size());
  for (std::size_t i = 0; i < window.size(); ++i) {
    const Point& start = window[i];
    const Point edge = window[i + 1 == window.size() ? 0 : i + 1] - start;
    const double length = std::sqrt(edge.squaredNorm());
    if (length <= tolerance) continue;
    const HalfPlane plane{start, edge / length};
    goToOutermost(plane);
    if (!cut(plane, tolerance)) return false;
  }
  return nodes_[nodes_[current_].next].next != current_;
}

// Depth over a convex ring has one valley and one ridge, so walking downhill ends at the outermost corner. The edges
// of the window turn steadily, so the walk is short.
void ConvexClip::goToOutermost(const HalfPlane& plane) {
  double depth = depthAt(plane, current_);
  const auto walk = [&](std::uint32_t Node::*step) {
    bool moved = false;
    for (std::size_t steps = 0; steps < nodes_.size(); ++steps) {
      const std::uint32_t there = nodes_[current_].*step;
      const double depthThere = depthAt(plane, there);
      if (depthThere > depth) break;
      moved = moved || depthThere < depth;
      current_ = there;
      depth = depthThere;
    }
    return moved;
  };
  if (!walk(&Node::next)) walk(&Node::previous);
}

bool ConvexClip::cut(const HalfPlane& plane, double tolerance) {
  if (depthAt(plane, current_) >= -tolerance) return true;
  std::uint32_t lastOut = current_;
  while (depthAt(plane, nodes_[lastOut].next) < -tolerance) {
    lastOut = nodes_[lastOut].next;
    if (lastOut == current_) return false;
  }
  std::uint32_t firstOut = current_;
  while (depthAt(plane, nodes_[firstOut].previous) < -tolerance) firstOut = nodes_[firstOut].previous;

  const std::uint32_t before = nodes_[firstOut].previous;
  const std::uint32_t after = nodes_[lastOut].next;
  const std::uint32_t enter = crossing(plane, firstOut, before, tolerance);
  const std::uint32_t leave = crossing(plane, lastOut, after, tolerance);
  if (enter == leave) return false;  // only a corner touches
  if (enter != before) {
    nodes_[before].next = enter;
    nodes_[enter].previous = before;
  }
  if (leave != after) {
    nodes_[after].previous = leave;
    nodes_[leave].next = after;
  }
  nodes_[enter].next = leave;
  nodes_[leave].previous = enter;
  current_ = leave;
  return true;
}

std::uint32_t ConvexClip::crossing(const HalfPlane& plane, std::uint32_t outside, std::uint32_t inside,
                                   double tolerance) {
  const double out = depthAt(plane, outside);
  const double in = depthAt(plane, inside);
  if (in <= tolerance) return inside;  // the corner lies on the line: no second corner beside it
  const Point point = nodes_[inside].point + (nodes_[outside].point - nodes_[inside].point) * (in / (in - out));
  nodes_.push_back({point, 0, 0});
  return static_cast<std::uint32_t>(nodes_.size() - 1);
}

}  // namespace zyga::range
