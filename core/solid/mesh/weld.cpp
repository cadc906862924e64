#include "core/solid/mesh/weld.h"

#include <bit>
#include <cmath>
#include <unordered_map>

namespace zyga::solid {

namespace {

constexpr std::uint32_t kNone = ~0u;

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
  std::vector<std::uint32_t> table(size, kNone), first(positions.size());
  for (std::size_t i = 0; i < positions.size(); ++i) {
    if (i + kAhead < positions.size()) __builtin_prefetch(&table[hashOf(positions[i + kAhead]) & mask], 1);
    std::size_t slot = hashOf(positions[i]) & mask;
    while (table[slot] != kNone && positions[table[slot]] != positions[i]) slot = (slot + 1) & mask;
    if (table[slot] == kNone) table[slot] = static_cast<std::uint32_t>(i);
    first[i] = table[slot];
  }
  return first;
}

using Cell = std::array<std::int64_t, 3>;

struct CellHash {
  std::size_t operator()(const Cell& cell) const {
    std::uint64_t hash = 0;
    for (const std::int64_t x : cell) hash = mixed(hash + static_cast<std::uint64_t>(x));
    return hash;
  }
};

/// Vertices by cells of the joining distance, so that partners are found in a cell and its neighbours.
class Cells {
 public:
  Cells(const std::vector<Eigen::Vector3f>& positions, float distance) : positions_(positions), distance_(distance) {}

  /// The first vertex put in that lies near this one.
  std::uint32_t near(std::uint32_t vertex) const {
    const Cell home = cellOf(vertex);
    std::uint32_t best = kNone;
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
  Cell cellOf(std::uint32_t vertex) const {
    Cell cell;
    for (int i = 0; i < 3; ++i)
      cell[static_cast<std::size_t>(i)] =
          static_cast<std::int64_t>(std::floor(static_cast<double>(positions_[vertex][i]) / distance_));
    return cell;
  }

  const std::vector<Eigen::Vector3f>& positions_;
  double distance_;
  std::unordered_map<Cell, std::vector<std::uint32_t>, CellHash> cells_;
};

/// Keeps the vertices marked, in their order; `renumbered` becomes their new places.
void compact(TriangleMesh& mesh, std::vector<std::uint32_t>& renumbered) {
  std::uint32_t kept = 0;
  for (std::size_t i = 0; i < renumbered.size(); ++i) {
    if (renumbered[i] == kNone) continue;
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
  Cells cells(mesh.positions, distance);
  std::unordered_map<std::uint32_t, std::uint32_t> joined;
  for (const std::uint32_t v : vertices) {
    const std::uint32_t partner = cells.near(v);
    if (partner == kNone)
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
  std::vector<std::uint32_t> renumbered(mesh.positions.size(), kNone);
  for (const auto& t : mesh.triangles)
    for (const std::uint32_t v : t) renumbered[v] = 0;
  const std::size_t before = mesh.positions.size();
  compact(mesh, renumbered);
  if (mesh.positions.size() == before) return 0;
  for (auto& t : mesh.triangles)
    for (std::uint32_t& v : t) v = renumbered[v];
  return before - mesh.positions.size();
}

}  // namespace zyga::solid
