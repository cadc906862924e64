#include "core/picture/line_tracing.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace zyga::picture {

namespace {

using Eigen::Vector2d;

double distanceTo(const Vector2d& p, const Vector2d& a, const Vector2d& b) {
  const Vector2d way = b - a;
  const double square = way.squaredNorm();
  const double share = square > 0 ? std::clamp(way.dot(p - a) / square, 0.0, 1.0) : 0;
  return (p - a - share * way).norm();
}

/// Marks what to keep between two kept points.
void keepBetween(const PlaneLine& line, std::size_t from, std::size_t to, double tolerance, std::vector<bool>& keep) {
  std::vector<std::pair<std::size_t, std::size_t>> spans{{from, to}};
  while (!spans.empty()) {
    const auto [a, b] = spans.back();
    spans.pop_back();
    double most = tolerance;
    std::size_t farthest = a;
    for (std::size_t i = a + 1; i < b; ++i) {
      const double d = distanceTo(line[i], line[a], line[b]);
      if (d > most) {
        most = d;
        farthest = i;
      }
    }
    if (farthest == a) continue;
    keep[farthest] = true;
    spans.emplace_back(a, farthest);
    spans.emplace_back(farthest, b);
  }
}

}  // namespace

GridEdge cellSide(int x, int y, int side) {
  switch (side) {
    case 0:
      return gridEdge(x, y, 0);
    case 1:
      return gridEdge(x + 1, y, 1);
    case 2:
      return gridEdge(x, y + 1, 0);
    default:
      return gridEdge(x, y, 1);
  }
}

void addCell(EdgeChains& chains, int x, int y, const std::array<bool, 4>& inside) {
  // Walking round the cell counter-clockwise, a border leaves the cell where inside gives way to outside and has
  // entered it where the inside before that began.
  for (int k = 0; k < 4; ++k) {
    const auto corner = [&](int i) { return inside[static_cast<std::size_t>((i + 8) % 4)]; };
    if (!corner(k) || corner(k + 1)) continue;
    int first = k;
    while (corner(first - 1)) --first;
    // The inside to the left of the step: from the side after the last inside corner to the side before the first.
    chains.addStep(cellSide(x, y, k), cellSide(x, y, (first + 7) % 4));
  }
}

std::vector<std::vector<GridEdge>> EdgeChains::loops() const {
  std::vector<GridEdge> starts;
  for (const auto& [from, to] : next_) starts.push_back(from);
  std::sort(starts.begin(), starts.end());  // hashing must not decide the order
  std::unordered_map<GridEdge, bool> used;
  std::vector<std::vector<GridEdge>> loops;
  for (const GridEdge start : starts) {
    if (used[start]) continue;
    std::vector<GridEdge> loop;
    for (GridEdge at = start; !used[at];) {
      used[at] = true;
      loop.push_back(at);
      const auto next = next_.find(at);
      if (next == next_.end()) break;
      at = next->second;
    }
    loops.push_back(std::move(loop));
  }
  return loops;
}

std::vector<std::vector<GridEdge>> joinPieces(const std::vector<std::array<GridEdge, 2>>& pieces) {
  std::map<GridEdge, std::vector<std::size_t>> at;
  for (std::size_t i = 0; i < pieces.size(); ++i)
    for (const GridEdge end : pieces[i]) at[end].push_back(i);
  std::vector<bool> used(pieces.size());
  const auto walk = [&](std::size_t first, GridEdge from) {
    std::vector<GridEdge> line{from};
    for (std::size_t piece = first;;) {
      used[piece] = true;
      const GridEdge end = pieces[piece][0] == line.back() ? pieces[piece][1] : pieces[piece][0];
      line.push_back(end);
      const auto& meeting = at[end];
      if (meeting.size() != 2) return line;
      piece = meeting[0] == piece ? meeting[1] : meeting[0];
      if (used[piece]) return line;
    }
  };
  std::vector<std::vector<GridEdge>> lines;
  for (const auto& [end, meeting] : at)  // from free ends and crossings first, closed lines last
    if (meeting.size() != 2)
      for (const std::size_t piece : meeting)
        if (!used[piece]) lines.push_back(walk(piece, end));
  for (std::size_t i = 0; i < pieces.size(); ++i)
    if (!used[i]) lines.push_back(walk(i, pieces[i][0]));
  return lines;
}

PlaneLine simplified(const PlaneLine& line, double tolerance, bool closed) {
  if (line.size() < 4) return line;
  PlaneLine all = line;
  std::vector<bool> keep(line.size() + 1);
  keep.front() = true;
  if (closed) {
    // Held at the first point and at the one farthest from it.
    std::size_t opposite = 1;
    for (std::size_t i = 1; i < line.size(); ++i)
      if ((line[i] - line[0]).norm() > (line[opposite] - line[0]).norm()) opposite = i;
    all.push_back(line.front());
    keep[opposite] = true;
    keepBetween(all, 0, opposite, tolerance, keep);
    keepBetween(all, opposite, line.size(), tolerance, keep);
  } else {
    keep[line.size() - 1] = true;
    keepBetween(all, 0, line.size() - 1, tolerance, keep);
  }
  PlaneLine kept;
  for (std::size_t i = 0; i < line.size(); ++i)
    if (keep[i]) kept.push_back(line[i]);
  return kept;
}

double areaOf(const std::vector<PlaneLine>& edges) {
  double area = 0;
  for (const PlaneLine& line : edges)
    for (std::size_t i = 0; i < line.size(); ++i) {
      const Vector2d &a = line[i], &b = line[(i + 1) % line.size()];
      area += (a.x() * b.y() - a.y() * b.x()) / 2;
    }
  return area;
}

}  // namespace zyga::picture
