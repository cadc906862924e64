#include "core/solid/mesh/simplify.h"

#include <meshoptimizer.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <cassert>
#include <cmath>
#include <tuple>

#include "core/solid/mesh/edge_table.h"
#include "core/task/parallel.h"

namespace zyga::solid {

namespace {

using Vertex = std::uint32_t;
using Vector = Eigen::Vector3d;

/// Sum of squared distances to planes, weighted by area.
struct Quadric {
  Eigen::Matrix3d a = Eigen::Matrix3d::Zero();
  Vector b = Vector::Zero();
  double c = 0;

  void addPlane(const Vector& n, const Vector& on, double weight) {
    const double d = -n.dot(on);
    a += weight * n * n.transpose();
    b += weight * d * n;
    c += weight * d * d;
  }
  /// Keeps triangles even where all planes agree.
  void addPoint(const Vector& p, double weight) {
    a += weight * Eigen::Matrix3d::Identity();
    b -= weight * p;
    c += weight * p.squaredNorm();
  }
  void add(const Quadric& o) { a += o.a, b += o.b, c += o.c; }
  double at(const Vector& p) const { return std::max(p.dot(a * p) + 2 * b.dot(p) + c, 0.0); }
};

struct Candidate {
  double cost;
  Vertex from, to;
};

class Collapser {
 public:
  Collapser(const TriangleMesh& mesh, std::vector<bool> keep)
      : triangles_(mesh.triangles), keep_(std::move(keep)), quadrics_(mesh.positions.size()) {
    keep_.resize(mesh.positions.size(), false);
    for (const Eigen::Vector3f& p : mesh.positions) positions_.push_back(p.cast<double>());
    for (const auto& t : triangles_) addQuadrics(t);
  }

  void run(std::size_t target, const task::Task& task) {
    while (triangles_.size() > target && !task.cancelled() && pass(target) > 0) {
    }
  }

  std::vector<std::array<Vertex, 3>> take() { return std::move(triangles_); }

 private:
  Vector areaNormal(Vertex a, Vertex b, Vertex c) const {
    return 0.5 * (positions_[b] - positions_[a]).cross(positions_[c] - positions_[a]);
  }

  void addQuadrics(const std::array<Vertex, 3>& t) {
    const Vector n = areaNormal(t[0], t[1], t[2]);
    const double area = n.norm();
    if (area <= 0) return;
    for (const Vertex v : t) {
      quadrics_[v].addPlane(n / area, positions_[t[0]], area);
      quadrics_[v].addPoint(positions_[v], 1e-4 * area);
    }
  }

  void listTriangles() {
    first_.assign(positions_.size() + 1, 0);
    for (const auto& t : triangles_)
      for (const Vertex v : t) ++first_[v + 1];
    for (std::size_t i = 1; i < first_.size(); ++i) first_[i] += first_[i - 1];
    around_.resize(3 * triangles_.size());
    std::vector<std::size_t> next(first_.begin(), first_.end() - 1);
    for (std::size_t i = 0; i < triangles_.size(); ++i)
      for (const Vertex v : triangles_[i]) around_[next[v]++] = i;
  }

  std::vector<Candidate> candidates() const {
    std::vector<Candidate> all;
    for (const auto& t : triangles_)
      for (std::size_t i = 0; i < 3; ++i) {
        const Vertex u = t[i], v = t[(i + 1) % 3];
        if (u > v) continue;  // the neighbour's triangle runs the edge the other way
        Quadric q = quadrics_[u];
        q.add(quadrics_[v]);
        const double toV = q.at(positions_[v]), toU = q.at(positions_[u]);
        if (keep_[u] && keep_[v]) continue;
        const bool intoV = keep_[v] || (!keep_[u] && toV <= toU);
        all.push_back(intoV ? Candidate{toV, u, v} : Candidate{toU, v, u});
      }
    std::sort(all.begin(), all.end(), [](const Candidate& a, const Candidate& b) {
      return std::tie(a.cost, a.from, a.to) < std::tie(b.cost, b.from, b.to);
    });
    return all;
  }

  /// One round of collapses that do not touch each other; returns how many.
  std::size_t pass(std::size_t target) {
    listTriangles();
    locked_.assign(positions_.size(), false);
    removed_.assign(triangles_.size(), false);
    const std::vector<Candidate> order = candidates();
    if (order.empty()) return 0;
    const std::size_t wanted = (triangles_.size() - target + 1) / 2;
    // The dearest edges wait for a later round, when cheaper ones may have become free.
    const std::size_t allowed = std::min(order.size() - 1, 2 * wanted + order.size() / 20);
    const double dearest = order[allowed].cost;
    std::size_t done = 0;
    for (const Candidate& c : order) {
      if (done >= wanted || (c.cost > dearest && done > 0)) break;
      if (locked_[c.from] || locked_[c.to] || !mayCollapse(c)) continue;
      collapse(c);
      ++done;
    }
    sweep();
    return done;
  }

  std::vector<Vertex> neighbours(Vertex v) const {
    std::vector<Vertex> out;
    for (std::size_t i = first_[v]; i < first_[v + 1]; ++i)
      for (const Vertex o : triangles_[around_[i]])
        if (o != v) out.push_back(o);
    std::sort(out.begin(), out.end());
    out.erase(std::unique(out.begin(), out.end()), out.end());
    return out;
  }

  bool mayCollapse(const Candidate& c) const {
    const std::vector<Vertex> a = neighbours(c.from), b = neighbours(c.to);
    std::vector<Vertex> common;
    std::set_intersection(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(common));
    return common.size() == 2 && a.size() + b.size() > 6 && keepsSides(c);
  }

  /// No triangle around `from` may turn over or become a needle.
  bool keepsSides(const Candidate& c) const {
    for (std::size_t i = first_[c.from]; i < first_[c.from + 1]; ++i) {
      std::array<Vertex, 3> t = triangles_[around_[i]];
      if (std::find(t.begin(), t.end(), c.to) != t.end()) continue;
      const Vector before = areaNormal(t[0], t[1], t[2]);
      std::replace(t.begin(), t.end(), c.from, c.to);
      const Vector after = areaNormal(t[0], t[1], t[2]);
      if (before.dot(after) <= 0.25 * before.norm() * after.norm()) return false;
    }
    return true;
  }

  void collapse(const Candidate& c) {
    for (const Vertex v : neighbours(c.from)) locked_[v] = true;
    locked_[c.from] = locked_[c.to] = true;
    for (std::size_t i = first_[c.from]; i < first_[c.from + 1]; ++i) {
      auto& t = triangles_[around_[i]];
      if (std::find(t.begin(), t.end(), c.to) != t.end()) removed_[around_[i]] = true;
      std::replace(t.begin(), t.end(), c.from, c.to);
    }
    quadrics_[c.to].add(quadrics_[c.from]);
  }

  void sweep() {
    std::size_t kept = 0;
    for (std::size_t i = 0; i < triangles_.size(); ++i)
      if (!removed_[i]) triangles_[kept++] = triangles_[i];
    triangles_.resize(kept);
  }

  std::vector<Vector> positions_;
  std::vector<std::array<Vertex, 3>> triangles_;
  std::vector<bool> keep_;
  std::vector<Quadric> quadrics_;
  std::vector<std::size_t> first_, around_;
  std::vector<bool> locked_, removed_;
};

}  // namespace

TriangleMesh collapseEdges(const TriangleMesh& mesh, std::size_t triangles, const std::vector<bool>& keep,
                           const task::Task& task) {
  assert(keep.empty() || keep.size() == mesh.positions.size());
  Collapser collapser(mesh, keep);
  collapser.run(triangles, task);
  TriangleMesh out = mesh;
  out.triangles = collapser.take();
  return out;
}

namespace {

bool sound(const TriangleMesh& mesh, std::size_t components) {
  const MeshHealth health = examine(mesh);
  return health.closed && health.oriented && health.components == components && health.volume > 0;
}

std::vector<std::array<std::uint32_t, 3>> fewerTriangles(const TriangleMesh& mesh, std::size_t triangles,
                                                         unsigned options = 0) {
  std::vector<std::array<std::uint32_t, 3>> kept(mesh.triangles.size());
  const std::size_t count = meshopt_simplify(kept.data()->data(), mesh.triangles.data()->data(), 3 * kept.size(),
                                             mesh.positions.data()->data(), mesh.positions.size(),
                                             sizeof(Eigen::Vector3f), 3 * triangles, 1.0f, options, nullptr);
  kept.resize(count / 3);
  return kept;
}

}  // namespace

/// The quick simplifier does not promise a manifold. A slightly smaller target often gives one where the first did not;
/// else the careful one takes over.
TriangleMesh simplified(const TriangleMesh& mesh, std::size_t triangles, const task::Task& task) {
  if (mesh.triangles.size() <= triangles) return mesh;
  const std::size_t components = examine(mesh).components;
  for (const double share : {1.0, 0.97, 0.93}) {
    const auto target = static_cast<std::size_t>(share * static_cast<double>(triangles));
    TriangleMesh quick = withTriangles(mesh, fewerTriangles(mesh, target));
    if (sound(quick, components)) return quick;
    if (task.cancelled()) return mesh;
  }
  return withTriangles(mesh, collapseEdges(mesh, triangles, {}, task).triangles);
}

TriangleMesh simplifiedWithBorders(const TriangleMesh& mesh, std::size_t triangles) {
  if (mesh.triangles.size() <= triangles) return mesh;
  return withTriangles(mesh, fewerTriangles(mesh, triangles, meshopt_SimplifyLockBorder));
}

TriangleMesh carefullySimplifiedWithBorders(const TriangleMesh& mesh, std::size_t triangles, const task::Task& task) {
  std::vector<bool> keep(mesh.positions.size(), false);
  EdgeTable(mesh).forEachEdge([&](std::uint32_t lower, std::span<const EdgeTable::Use> uses) {
    if (uses.size() != 2) keep[lower] = keep[uses[0].upper] = true;
  });
  return collapseEdges(mesh, triangles, keep, task);
}

BoneMesh displayLevels(TriangleMesh mesh, std::size_t coarsest) {
  std::vector<TriangleMesh> coarser;
  const auto makeCoarser = [&] {
    const auto last = [&]() -> const TriangleMesh& { return coarser.empty() ? mesh : coarser.back(); };
    while (last().triangles.size() / 4 >= coarsest) {
      TriangleMesh next = withTriangles(last(), fewerTriangles(last(), last().triangles.size() / 4));
      // Scraps that cannot be simplified further would make levels of the same size for ever.
      if (next.empty() || next.triangles.size() > last().triangles.size() / 2) break;
      coarser.push_back(std::move(next));
    }
    for (TriangleMesh& level : coarser) computeNormals(level);
  };
  // The finest level has most of the normals. They are found while the coarser ones are made, which need its places
  // and triangles only.
  std::vector<Eigen::Vector3f> normals;
  mesh.normals.clear();
  task::forEach(2, {}, [&](std::size_t part) {
    if (part == 0)
      makeCoarser();
    else
      normals = normalsOf(mesh);
  });
  mesh.normals = std::move(normals);
  BoneMesh bone;
  bone.levels.push_back(std::move(mesh));
  for (TriangleMesh& level : coarser) bone.levels.push_back(std::move(level));
  return bone;
}

}  // namespace zyga::solid
