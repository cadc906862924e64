#include "core/solid/mesh/repair.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>

#include "core/solid/mesh/edge_table.h"
#include "core/solid/mesh/orient.h"
#include "core/solid/mesh/seams.h"
#include "core/task/parallel.h"

namespace zyga::solid {

namespace {

using Triangle = std::array<std::uint32_t, 3>;

constexpr int kSliverRounds = 4;  ///< of taking slivers out: one may uncover another

template <class Bad>
std::size_t dropTriangles(TriangleMesh& mesh, Bad bad) {
  const std::size_t before = mesh.triangles.size();
  mesh.triangles.erase(std::remove_if(mesh.triangles.begin(), mesh.triangles.end(), bad), mesh.triangles.end());
  return before - mesh.triangles.size();
}

void dropUnusable(TriangleMesh& mesh, Repairs& repairs) {
  const std::size_t n = mesh.positions.size();
  repairs.badIndices = dropTriangles(mesh, [n](const Triangle& t) { return t[0] >= n || t[1] >= n || t[2] >= n; });
  std::vector<bool> finite(n);
  bool all = true;
  for (std::size_t i = 0; i < n; ++i) all = (finite[i] = mesh.positions[i].allFinite()) && all;
  if (all) return;
  repairs.notFinite =
      dropTriangles(mesh, [&](const Triangle& t) { return !finite[t[0]] || !finite[t[1]] || !finite[t[2]]; });
  repairs.unusedVertices += dropUnused(mesh);
}

std::size_t dropCollapsed(TriangleMesh& mesh) {
  return dropTriangles(mesh, [](const Triangle& t) { return t[0] == t[1] || t[1] == t[2] || t[2] == t[0]; });
}

/// Triangles of which an edge's other users include one with the same third corner. The first of them stays.
std::size_t dropDuplicates(TriangleMesh& mesh, const EdgeTable& edges) {
  std::vector<std::uint32_t> doubles;
  edges.forEachEdge([&](std::uint32_t, std::span<const EdgeTable::Use> uses) {
    for (std::size_t i = 1; i < uses.size(); ++i)
      for (std::size_t j = 0; j < std::min<std::size_t>(i, 8); ++j)
        if (oppositeOf(mesh, uses[i].side) == oppositeOf(mesh, uses[j].side)) {
          doubles.push_back(uses[i].side / 3);
          break;
        }
  });
  if (doubles.empty()) return 0;
  for (const std::uint32_t t : doubles) mesh.triangles[t] = {0, 0, 0};
  return dropCollapsed(mesh);
}

/// Twice the area over the square of the longest edge is the height over that edge: none that single precision could
/// tell.
bool isSliver(const TriangleMesh& mesh, const Triangle& t) {
  constexpr double kFlat = 1e-6;
  const Eigen::Vector3d a = mesh.positions[t[0]].cast<double>();
  const Eigen::Vector3d u = mesh.positions[t[1]].cast<double>() - a, v = mesh.positions[t[2]].cast<double>() - a;
  const double longest = std::max({u.squaredNorm(), v.squaredNorm(), (u - v).squaredNorm()});
  return u.cross(v).squaredNorm() <= kFlat * kFlat * longest * longest;
}

/// The side of a sliver that runs past its third corner.
std::uint32_t longestSide(const TriangleMesh& mesh, std::uint32_t t) {
  const auto length = [&](std::uint32_t side) {
    return (mesh.positions[startOf(mesh, side)] - mesh.positions[endOf(mesh, side)]).squaredNorm();
  };
  std::uint32_t best = 3 * t;
  for (std::uint32_t side = best + 1; side < 3 * t + 3; ++side)
    if (length(side) > length(best)) best = side;
  return best;
}

/// A triangle of three points on a line cannot just be dropped: the neighbour along its long side would no longer meet
/// the two along its short ones. The neighbour is split at the middle point instead, and takes the sliver's place.
class SliverRound {
 public:
  explicit SliverRound(TriangleMesh& mesh) : mesh_(mesh), edges_(mesh), touched_(mesh.triangles.size(), false) {}

  std::size_t run(const std::vector<std::uint32_t>& slivers) {
    for (const std::uint32_t t : slivers) sides_.push_back(longestSide(mesh_, t));
    std::vector<std::uint32_t> partner(sides_.size(), kNone);
    findPartners(partner);
    std::size_t removed = 0;
    for (std::size_t i = 0; i < sides_.size(); ++i) removed += remove(sides_[i], partner[i]);
    return removed;
  }

 private:
  static constexpr std::uint32_t kNone = ~0u;

  void findPartners(std::vector<std::uint32_t>& partner) const {
    std::vector<std::pair<std::uint32_t, std::size_t>> wanted;
    for (std::size_t i = 0; i < sides_.size(); ++i) wanted.emplace_back(sides_[i], i);
    std::sort(wanted.begin(), wanted.end());
    const auto set = [&](std::uint32_t side, std::uint32_t other) {
      const auto found = std::lower_bound(wanted.begin(), wanted.end(), std::pair<std::uint32_t, std::size_t>(side, 0));
      if (found != wanted.end() && found->first == side) partner[found->second] = other;
    };
    edges_.forEachEdge([&](std::uint32_t, std::span<const EdgeTable::Use> uses) {
      if (uses.size() != 2) return;
      set(uses[0].side, uses[1].side);
      set(uses[1].side, uses[0].side);
    });
  }

  bool remove(std::uint32_t side, std::uint32_t other) {
    const std::uint32_t t = side / 3;
    if (touched_[t]) return false;
    if (other == kNone) {  // on a border nothing depends on it
      mesh_.triangles[t] = {0, 0, 0};
      return touched_[t] = true;
    }
    const std::uint32_t u = other / 3;
    const std::uint32_t middle = oppositeOf(mesh_, side), far = oppositeOf(mesh_, other);
    if (touched_[u] || middle == far || edges_.hasEdge(middle, far)) return false;
    const std::uint32_t from = startOf(mesh_, other), to = endOf(mesh_, other);
    mesh_.triangles[t] = {from, middle, far};
    mesh_.triangles[u] = {middle, to, far};
    return touched_[t] = touched_[u] = true;
  }

  TriangleMesh& mesh_;
  EdgeTable edges_;
  std::vector<bool> touched_;
  std::vector<std::uint32_t> sides_;
};

std::vector<std::uint32_t> findSlivers(const TriangleMesh& mesh) {
  constexpr std::size_t kAtOnce = 100'000;  // triangles that one core looks at
  std::vector<std::vector<std::uint32_t>> found((mesh.triangles.size() + kAtOnce - 1) / kAtOnce);
  task::forEach(found.size(), {}, [&](std::size_t block) {
    const std::size_t end = std::min(mesh.triangles.size(), (block + 1) * kAtOnce);
    for (std::size_t t = block * kAtOnce; t < end; ++t)
      if (isSliver(mesh, mesh.triangles[t])) found[block].push_back(static_cast<std::uint32_t>(t));
  });
  std::vector<std::uint32_t> slivers;
  for (const auto& block : found) slivers.insert(slivers.end(), block.begin(), block.end());
  return slivers;
}

/// Slivers are split away; what cannot be is dropped.
std::size_t dropSlivers(TriangleMesh& mesh) {
  std::size_t removed = 0;
  for (int round = 0; round < kSliverRounds; ++round) {
    const auto slivers = findSlivers(mesh);
    if (slivers.empty()) return removed;
    removed += SliverRound(mesh).run(slivers);
    dropCollapsed(mesh);
  }
  return removed + dropTriangles(mesh, [&](const Triangle& t) { return isSliver(mesh, t); });
}

std::vector<std::uint32_t> borderVertices(const EdgeTable& edges) {
  std::vector<std::uint32_t> border;
  edges.forEachEdge([&](std::uint32_t lower, std::span<const EdgeTable::Use> uses) {
    if (uses.size() != 1) return;
    border.push_back(lower);
    border.push_back(uses[0].upper);
  });
  std::sort(border.begin(), border.end());
  border.erase(std::unique(border.begin(), border.end()), border.end());
  return border;
}

double diagonalOf(const TriangleMesh& mesh) {
  Eigen::AlignedBox3d box;
  for (const auto& p : mesh.positions) box.extend(p.cast<double>());
  return box.isEmpty() ? 0 : box.diagonal().norm();
}

/// Open borders, gathered by the vertices they share.
class Borders {
 public:
  explicit Borders(const TriangleMesh& mesh) : mesh_(mesh) {}

  void add(std::uint32_t a, std::uint32_t b) { edges_.emplace_back(a, b); }

  void count(Flaws& flaws) {
    flaws.openEdges = edges_.size();
    std::vector<std::uint32_t> vertices;
    for (const auto& [a, b] : edges_) vertices.insert(vertices.end(), {a, b});
    std::sort(vertices.begin(), vertices.end());
    vertices.erase(std::unique(vertices.begin(), vertices.end()), vertices.end());
    const auto placeOf = [&](std::uint32_t v) {
      return static_cast<std::size_t>(std::lower_bound(vertices.begin(), vertices.end(), v) - vertices.begin());
    };
    parent_.resize(vertices.size());
    std::iota(parent_.begin(), parent_.end(), std::size_t{0});
    for (const auto& [a, b] : edges_) parent_[root(placeOf(a))] = root(placeOf(b));
    std::vector<double> length(vertices.size(), 0);
    for (const auto& [a, b] : edges_)
      length[root(placeOf(a))] += static_cast<double>((mesh_.positions[a] - mesh_.positions[b]).norm());
    for (std::size_t i = 0; i < parent_.size(); ++i) flaws.holes += root(i) == i;
    if (!length.empty()) flaws.longestHole = *std::max_element(length.begin(), length.end());
  }

 private:
  std::size_t root(std::size_t i) {
    while (parent_[i] != i) i = parent_[i] = parent_[parent_[i]];
    return i;
  }

  const TriangleMesh& mesh_;
  std::vector<std::pair<std::uint32_t, std::uint32_t>> edges_;
  std::vector<std::size_t> parent_;
};

void findFlaws(const TriangleMesh& mesh, const EdgeTable& edges, Flaws& flaws) {
  Borders borders(mesh);
  edges.forEachEdge([&](std::uint32_t lower, std::span<const EdgeTable::Use> uses) {
    if (uses.size() == 1) borders.add(lower, uses[0].upper);
    flaws.nonManifoldEdges += uses.size() > 2;
  });
  borders.count(flaws);
}

/// Welding the borders may make triangles collapse or coincide.
void closeSeams(TriangleMesh& mesh, double weldShare, Repairs& repairs) {
  const EdgeTable edges(mesh);
  repairs.seamsClosed = weldNear(mesh, borderVertices(edges), static_cast<float>(weldShare * diagonalOf(mesh)));
  if (repairs.seamsClosed > 0) repairs.degenerate += dropCollapsed(mesh);
}

bool hasBorder(const EdgeTable& edges) {
  bool open = false;
  edges.forEachEdge([&](std::uint32_t, std::span<const EdgeTable::Use> uses) { open = open || uses.size() == 1; });
  return open;
}

}  // namespace

Repaired repair(TriangleMesh input, const RepairOptions& options) {
  Repaired out;
  out.mesh = std::move(input);
  TriangleMesh& mesh = out.mesh;
  mesh.normals.clear();
  mesh.occlusion.clear();
  const auto cancelled = [&] { return options.task.cancelled(); };
  dropUnusable(mesh, out.repairs);
  out.repairs.welded = weldSamePlace(mesh);
  out.repairs.degenerate = dropCollapsed(mesh);
  if (cancelled()) return {};
  out.repairs.degenerate += dropSlivers(mesh);
  std::optional<EdgeTable> edges(std::in_place, mesh);
  if (cancelled()) return {};
  if (hasBorder(*edges)) {
    closeSeams(mesh, options.weldShare, out.repairs);
    if (out.repairs.seamsClosed > 0) edges.emplace(mesh);
  }
  out.repairs.duplicates = dropDuplicates(mesh, *edges);
  if (out.repairs.duplicates > 0) edges.emplace(mesh);
  if (cancelled()) return {};
  const Orientation orientation = orientOutwards(mesh, *edges);
  out.repairs.turned = orientation.turned;
  out.repairs.insideOut = orientation.insideOut;
  out.flaws.twisted = orientation.twisted;
  out.flaws.surfaces = orientation.surfaces;
  out.flaws.cavities = orientation.cavities;
  findFlaws(mesh, *edges, out.flaws);
  out.repairs.unusedVertices += dropUnused(mesh);
  return out;
}

}  // namespace zyga::solid
