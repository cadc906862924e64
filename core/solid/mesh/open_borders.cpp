#include "core/solid/mesh/open_borders.h"

#include <Eigen/Geometry>
#include <cmath>
#include <map>
#include <numbers>
#include <utility>

#include "core/solid/mesh/edge_table.h"

namespace zyga::solid {
namespace {

using Eigen::Vector3d;

Vector3d borderPlace(const TriangleMesh& mesh, std::uint32_t v) { return mesh.positions[v].cast<double>(); }

/// Which open side follows each along its hole. Where holes touch in one vertex, the border turns over the gap, so that
/// they stay two: by the angles about the vertex's normal.
class BorderWalk {
 public:
  BorderWalk(const TriangleMesh& mesh, const std::vector<std::uint32_t>& open) : mesh_(mesh) {
    for (const std::uint32_t side : open) {
      ends_[startOf(mesh, side)].out.push_back(side);
      ends_[endOf(mesh, side)].in.push_back(side);
    }
    for (auto& [v, end] : ends_) join(v, end);
  }
  /// Calls visit(side) for each side of each closed run; `begin()` before each run.
  template <class Begin, class Visit>
  void runs(const Begin& begin, const Visit& visit) {
    while (!next_.empty()) {
      begin();
      for (auto at = next_.begin(); at != next_.end();) {
        visit(at->first);
        const std::uint32_t following = at->second;
        next_.erase(at);
        at = next_.find(following);
      }
    }
  }

 private:
  struct Ends {
    std::vector<std::uint32_t> out, in;
  };

  void join(std::uint32_t v, Ends& end) {
    const std::size_t pairs = std::min(end.out.size(), end.in.size());
    if (pairs == 1 && end.out.size() == 1 && end.in.size() == 1) {
      next_[end.in[0]] = end.out[0];
      return;
    }
    Vector3d normal = Vector3d::Zero();
    for (const auto* sides : {&end.out, &end.in})
      for (const std::uint32_t side : *sides) {
        const auto& [a, b, c] = mesh_.triangles[side / 3];
        const Vector3d p = borderPlace(mesh_, a);
        normal += (borderPlace(mesh_, b) - p).cross(borderPlace(mesh_, c) - p);
      }
    if (!(normal.norm() > 0)) normal = Vector3d::UnitZ();
    const Vector3d u = normal.unitOrthogonal(), w = normal.normalized().cross(u), here = borderPlace(mesh_, v);
    const auto angle = [&](std::uint32_t other) {
      const Vector3d d = borderPlace(mesh_, other) - here;
      return std::atan2(d.dot(w), d.dot(u));
    };
    for (const std::uint32_t in : end.in) {
      const double from = angle(startOf(mesh_, in));
      std::size_t best = end.out.size();
      double least = 0;
      for (std::size_t i = 0; i < end.out.size(); ++i) {
        double turn = angle(endOf(mesh_, end.out[i])) - from;
        if (turn <= 0) turn += 2 * std::numbers::pi;
        if (best < end.out.size() && turn >= least) continue;
        best = i;
        least = turn;
      }
      if (best == end.out.size()) {  // neighbours that do not agree which way they face: the run ends
        next_[in] = in;
        continue;
      }
      next_[in] = end.out[best];
      end.out.erase(end.out.begin() + static_cast<std::ptrdiff_t>(best));
    }
  }

  const TriangleMesh& mesh_;
  std::map<std::uint32_t, Ends> ends_;
  std::map<std::uint32_t, std::uint32_t> next_;
};

}  // namespace

OpenBorders openBorders(const TriangleMesh& mesh) {
  OpenBorders out;
  for (const auto& [a, b, c] : mesh.triangles) {
    const Vector3d p = borderPlace(mesh, a);
    out.area += (borderPlace(mesh, b) - p).cross(borderPlace(mesh, c) - p).norm() / 2;
  }
  std::vector<std::uint32_t> open;  // sides
  EdgeTable(mesh).forEachEdge([&open](std::uint32_t, std::span<const EdgeTable::Use> uses) {
    if (uses.size() == 1) open.push_back(uses.front().side);
  });
  if (open.empty()) return out;
  Vector3d twice = Vector3d::Zero(), about = Vector3d::Zero();
  bool fresh = false;
  const auto close = [&] {
    out.holes += twice.norm() / 2;
    twice.setZero();
    fresh = true;
  };
  BorderWalk(mesh, open)
      .runs(
          [&] {
            close();
            ++out.borders;
          },
          [&](std::uint32_t side) {
            const Vector3d p = borderPlace(mesh, startOf(mesh, side)), q = borderPlace(mesh, endOf(mesh, side));
            if (std::exchange(fresh, false)) about = p;  // rounding stays that of the border
            twice += (p - about).cross(q - about);
            out.length += (q - p).norm();
          });
  close();
  return out;
}

}  // namespace zyga::solid
