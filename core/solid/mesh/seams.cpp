#include "core/solid/mesh/seams.h"

#include <bit>
#include <cmath>
#include <map>
#include <unordered_map>

#include "core/solid/mesh/edge_table.h"

namespace zyga::solid {

namespace {

constexpr std::uint32_t kNoVertex = ~0u;

std::uint64_t mixed(std::uint64_t x) {
  x ^= x >> 32;
  x *= 0x9e3779b97f4a7c15;  // 2^64 over the golden ratio: Knuth, TAOCP 3, 6.4
  return x ^ (x >> 29);
}

/// -0 and 0 are one place.
std::uint64_t bitsOf(float x) { return std::bit_cast<std::uint32_t>(x + 0.0f); }

std::uint64_t hashOf(const Eigen::Vector3f& p) {
  return mixed(mixed(bitsOf(p.x()) | bitsOf(p.y()) << 32) + bitsOf(p.z()));
}

/// Open addressing. The table is larger than the caches, so slots are asked for some vertices ahead.
std::vector<std::uint32_t> firstAtSamePlace(const std::vector<Eigen::Vector3f>& positions) {
  constexpr std::size_t kAhead = 16;
  const std::size_t size = std::bit_ceil(2 * positions.size() + 1), mask = size - 1;
  std::vector<std::uint32_t> table(size, kNoVertex), first(positions.size());
  for (std::size_t i = 0; i < positions.size(); ++i) {
    if (i + kAhead < positions.size()) __builtin_prefetch(&table[hashOf(positions[i + kAhead]) & mask], 1);
    std::size_t slot = hashOf(positions[i]) & mask;
    while (table[slot] != kNoVertex && positions[table[slot]] != positions[i]) slot = (slot + 1) & mask;
    if (table[slot] == kNoVertex) table[slot] = static_cast<std::uint32_t>(i);
    first[i] = table[slot];
  }
  return first;
}

using VertexCell = std::array<std::int64_t, 3>;

struct CellHash {
  std::size_t operator()(const VertexCell& cell) const {
    std::uint64_t hash = 0;
    for (const std::int64_t x : cell) hash = mixed(hash + static_cast<std::uint64_t>(x));
    return hash;
  }
};

/// Vertices by cells of the joining distance, so that partners are found in a cell and its neighbours.
class VertexCells {
 public:
  VertexCells(const std::vector<Eigen::Vector3f>& positions, float distance)
      : positions_(positions), distance_(distance) {}

  /// The first vertex put in that lies near this one.
  std::uint32_t near(std::uint32_t vertex) const {
    const VertexCell home = cellOf(vertex);
    std::uint32_t best = kNoVertex;
    for (std::int64_t k = 0; k < 27; ++k) {
      const auto found = cells_.find({home[0] + k % 3 - 1, home[1] + k / 3 % 3 - 1, home[2] + k / 9 - 1});
      if (found == cells_.end()) continue;
      for (const std::uint32_t other : found->second)
        if ((positions_[other] - positions_[vertex]).norm() < distance_) best = std::min(best, other);
    }
    return best;
  }
  void put(std::uint32_t vertex) { cells_[cellOf(vertex)].push_back(vertex); }

 private:
  VertexCell cellOf(std::uint32_t vertex) const {
    VertexCell cell;
    for (int i = 0; i < 3; ++i)
      cell[static_cast<std::size_t>(i)] =
          static_cast<std::int64_t>(std::floor(static_cast<double>(positions_[vertex][i]) / distance_));
    return cell;
  }

  const std::vector<Eigen::Vector3f>& positions_;
  double distance_;
  std::unordered_map<VertexCell, std::vector<std::uint32_t>, CellHash> cells_;
};

/// Keeps the vertices marked, in their order; `renumbered` becomes their new places.
void compact(TriangleMesh& mesh, std::vector<std::uint32_t>& renumbered) {
  std::uint32_t kept = 0;
  for (std::size_t i = 0; i < renumbered.size(); ++i) {
    if (renumbered[i] == kNoVertex) continue;
    mesh.positions[kept] = mesh.positions[i];
    renumbered[i] = kept++;
  }
  mesh.positions.resize(kept);
}

}  // namespace

std::size_t weldSamePlace(TriangleMesh& mesh) {
  std::vector<std::uint32_t> first = firstAtSamePlace(mesh.positions);
  const std::size_t before = mesh.positions.size();
  std::uint32_t kept = 0;
  for (std::size_t i = 0; i < before; ++i) {
    if (first[i] != i) {
      first[i] = first[first[i]];  // the first one comes earlier and has its new number
      continue;
    }
    mesh.positions[kept] = mesh.positions[i];
    first[i] = kept++;
  }
  if (kept == before) return 0;
  mesh.positions.resize(kept);
  for (auto& t : mesh.triangles)
    for (std::uint32_t& v : t) v = first[v];
  return before - kept;
}

std::size_t weldNear(TriangleMesh& mesh, const std::vector<std::uint32_t>& vertices, float distance) {
  if (!(distance > 0)) return 0;
  VertexCells cells(mesh.positions, distance);
  std::unordered_map<std::uint32_t, std::uint32_t> joined;
  for (const std::uint32_t v : vertices) {
    const std::uint32_t partner = cells.near(v);
    if (partner == kNoVertex)
      cells.put(v);
    else
      joined[v] = partner;
  }
  if (joined.empty()) return 0;
  for (auto& t : mesh.triangles)
    for (std::uint32_t& v : t)
      if (const auto found = joined.find(v); found != joined.end()) v = found->second;
  return joined.size();
}

std::size_t dropUnused(TriangleMesh& mesh) {
  std::vector<std::uint32_t> renumbered(mesh.positions.size(), kNoVertex);
  for (const auto& t : mesh.triangles)
    for (const std::uint32_t v : t) renumbered[v] = 0;
  const std::size_t before = mesh.positions.size();
  compact(mesh, renumbered);
  if (mesh.positions.size() == before) return 0;
  for (auto& t : mesh.triangles)
    for (std::uint32_t& v : t) v = renumbered[v];
  return before - mesh.positions.size();
}

namespace {

using Loop = std::vector<std::uint32_t>;

/// Ways along the open borders, against the sense of the triangles there: from each vertex to those that follow.
std::multimap<std::uint32_t, std::uint32_t> borderWays(const TriangleMesh& mesh) {
  std::multimap<std::uint32_t, std::uint32_t> ways;
  EdgeTable(mesh).forEachEdge([&](std::uint32_t, std::span<const EdgeTable::Use> uses) {
    if (uses.size() == 1) ways.emplace(endOf(mesh, uses[0].side), startOf(mesh, uses[0].side));
  });
  return ways;
}

/// Takes one loop off the ways, starting at any vertex; a loop never passes a vertex twice. Empty when the way breaks
/// off.
Loop takeLoop(std::multimap<std::uint32_t, std::uint32_t>& ways) {
  Loop path{ways.begin()->first};
  std::map<std::uint32_t, std::size_t> at{{path[0], 0}};
  while (true) {
    const auto way = ways.find(path.back());
    if (way == ways.end()) return {};
    const std::uint32_t next = way->second;
    ways.erase(way);
    if (const auto seen = at.find(next); seen != at.end()) {
      // What led up to the loop goes back.
      for (std::size_t i = 0; i < seen->second; ++i) ways.emplace(path[i], path[i + 1]);
      return {path.begin() + static_cast<std::ptrdiff_t>(seen->second), path.end()};
    }
    at[next] = path.size();
    path.push_back(next);
  }
}

void fill(TriangleMesh& mesh, const Loop& loop) {
  Eigen::Vector3f middle = Eigen::Vector3f::Zero();
  for (const std::uint32_t v : loop) middle += mesh.positions[v] / static_cast<float>(loop.size());
  const auto centre = static_cast<std::uint32_t>(mesh.positions.size());
  mesh.positions.push_back(middle);
  for (std::size_t i = 0; i < loop.size(); ++i)
    mesh.triangles.push_back({loop[i], loop[(i + 1) % loop.size()], centre});
}

}  // namespace

TriangleMesh withHolesClosed(const TriangleMesh& mesh) {
  TriangleMesh out{mesh.positions, {}, {}, mesh.triangles};
  auto ways = borderWays(mesh);
  while (!ways.empty())
    if (const Loop loop = takeLoop(ways); loop.size() > 2) fill(out, loop);
  return out;
}

}  // namespace zyga::solid
