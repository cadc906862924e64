#include "core/solid/mesh/surface_distance.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <atomic>
#include <cmath>
#include <limits>
#include <numeric>

#include "core/task/parallel.h"

namespace zyga::solid {

using Eigen::Vector3d;
using Eigen::Vector3f;

Vector3d nearestOn(const std::array<Vector3d, 3>& t, const Vector3d& p) {
  const Vector3d ab = t[1] - t[0], ac = t[2] - t[0], ap = p - t[0];
  const double d1 = ab.dot(ap), d2 = ac.dot(ap);
  if (d1 <= 0 && d2 <= 0) return t[0];
  const Vector3d bp = p - t[1];
  const double d3 = ab.dot(bp), d4 = ac.dot(bp);
  if (d3 >= 0 && d4 <= d3) return t[1];
  const double vc = d1 * d4 - d3 * d2;
  if (vc <= 0 && d1 >= 0 && d3 <= 0) return t[0] + d1 / (d1 - d3) * ab;
  const Vector3d cp = p - t[2];
  const double d5 = ab.dot(cp), d6 = ac.dot(cp);
  if (d6 >= 0 && d5 <= d6) return t[2];
  const double vb = d5 * d2 - d1 * d6;
  if (vb <= 0 && d2 >= 0 && d6 <= 0) return t[0] + d2 / (d2 - d6) * ac;
  const double va = d3 * d6 - d5 * d4;
  if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) return t[1] + (d4 - d3) / ((d4 - d3) + (d5 - d6)) * (t[2] - t[1]);
  const double sum = va + vb + vc;
  if (!(std::abs(sum) > 0)) return t[0];
  return t[0] + vb / sum * ab + vc / sum * ac;
}

namespace {

/// Boxes around triangles, each of two halves, down to a few triangles (bounding volume hierarchy: Ericson 2005, 6.2).
class BoxTree {
 public:
  explicit BoxTree(const TriangleMesh& mesh) : mesh_(mesh), order_(mesh.triangles.size()) {
    std::iota(order_.begin(), order_.end(), 0U);
    middles_.reserve(order_.size());
    for (const auto& t : mesh.triangles)
      middles_.push_back((mesh.positions[t[0]] + mesh.positions[t[1]] + mesh.positions[t[2]]) / 3);
    nodes_.reserve(order_.size() / 2 + 1);
    build(0, static_cast<std::uint32_t>(order_.size()));
    middles_ = {};
  }

  /// Squared distance of the point; where that is `enough` or less, some value that is too.
  double squaredDistance(const Vector3d& p, double enough) const {
    struct Waiting {
      std::uint32_t node;
      double squared;
    };
    std::array<Waiting, 64> waiting;  // the tree halves its triangles, so it is no deeper than 32
    std::size_t count = 0;
    double best = std::numeric_limits<double>::infinity();
    waiting[count++] = {0, 0};
    while (count > 0 && best > enough) {
      const Waiting next = waiting[--count];
      if (next.squared >= best) continue;
      const Node& node = nodes_[next.node];
      if (node.second == 0) {
        best = std::min(best, nearestIn(node, p));
        continue;
      }
      Waiting near{next.node + 1, toBox(nodes_[next.node + 1], p)}, far{node.second, toBox(nodes_[node.second], p)};
      if (far.squared < near.squared) std::swap(near, far);
      waiting[count++] = far;
      waiting[count++] = near;
    }
    return best;
  }

 private:
  static constexpr std::uint32_t kFew = 6;  ///< triangles that are not parted further

  struct Node {
    Eigen::AlignedBox3f box;
    std::uint32_t first = 0, end = 0;  ///< in `order_`
    std::uint32_t second = 0;          ///< its second half; its first follows it. 0: it has none
  };

  std::uint32_t build(std::uint32_t first, std::uint32_t end) {
    const auto at = static_cast<std::uint32_t>(nodes_.size());
    Node node{{}, first, end, 0};
    Eigen::AlignedBox3f middles;
    for (std::uint32_t i = first; i < end; ++i) {
      for (const std::uint32_t v : mesh_.triangles[order_[i]]) node.box.extend(mesh_.positions[v]);
      middles.extend(middles_[order_[i]]);
    }
    nodes_.push_back(node);
    if (end - first <= kFew) return at;
    Eigen::Index axis = 0;
    middles.sizes().maxCoeff(&axis);
    const std::uint32_t half = first + (end - first) / 2;
    const auto from = order_.begin();
    std::nth_element(from + first, from + half, from + end,
                     [&](std::uint32_t a, std::uint32_t b) { return middles_[a][axis] < middles_[b][axis]; });
    build(first, half);
    const std::uint32_t second = build(half, end);
    nodes_[at].second = second;
    return at;
  }

  static double toBox(const Node& node, const Vector3d& p) {
    const Vector3d below = node.box.min().cast<double>() - p, above = p - node.box.max().cast<double>();
    return below.cwiseMax(above).cwiseMax(0.0).squaredNorm();
  }

  double nearestIn(const Node& node, const Vector3d& p) const {
    double best = std::numeric_limits<double>::infinity();
    for (std::uint32_t i = node.first; i < node.end; ++i) {
      const auto& t = mesh_.triangles[order_[i]];
      const std::array<Vector3d, 3> corners{mesh_.positions[t[0]].cast<double>(), mesh_.positions[t[1]].cast<double>(),
                                            mesh_.positions[t[2]].cast<double>()};
      best = std::min(best, (nearestOn(corners, p) - p).squaredNorm());
    }
    return best;
  }

  const TriangleMesh& mesh_;
  std::vector<std::uint32_t> order_;
  std::vector<Vector3f> middles_;
  std::vector<Node> nodes_;
};

}  // namespace

double greatestDistance(const std::vector<Vector3f>& points, const TriangleMesh& surface, const task::Task& task) {
  constexpr std::size_t kAtOnce = 20'000;  // points that one core looks at
  if (points.empty()) return 0;
  if (surface.empty()) return std::numeric_limits<double>::infinity();
  const BoxTree tree(surface);
  std::atomic<double> most{0};
  task::forEach((points.size() + kAtOnce - 1) / kAtOnce, task.quiet(), [&](std::size_t block) {
    const std::size_t end = std::min(points.size(), (block + 1) * kAtOnce);
    for (std::size_t i = block * kAtOnce; i < end; ++i) {
      double known = most.load(std::memory_order_relaxed);
      const double squared = tree.squaredDistance(points[i].cast<double>(), known);
      while (squared > known && !most.compare_exchange_weak(known, squared, std::memory_order_relaxed)) {
      }
    }
  });
  return std::sqrt(most.load());
}

}  // namespace zyga::solid
