#include "core/solid/mesh/edge_table.h"

#include <algorithm>

#include "core/task/parallel.h"

namespace zyga::solid {

namespace {

constexpr std::size_t kAtOnce = 50'000;  ///< vertices of which one core sorts the edges

}  // namespace

/// A counting sort by the lower vertex, then a short sort of the few edges at each vertex.
EdgeTable::EdgeTable(const TriangleMesh& mesh)
    : first_(mesh.positions.size() + 2, 0), uses_(3 * mesh.triangles.size()) {
  for (const auto& t : mesh.triangles)
    for (std::size_t i = 0; i < 3; ++i) ++first_[std::min(t[i], t[(i + 1) % 3]) + 2];
  for (std::size_t v = 2; v < first_.size(); ++v) first_[v] += first_[v - 1];
  std::uint32_t side = 0;
  for (const auto& t : mesh.triangles)
    for (std::size_t i = 0; i < 3; ++i, ++side) {
      const std::uint32_t a = t[i], b = t[(i + 1) % 3];
      uses_[first_[std::min(a, b) + 1]++] = {std::max(a, b), side};
    }
  first_.pop_back();
  const std::size_t vertices = first_.size() - 1;
  task::forEach((vertices + kAtOnce - 1) / kAtOnce, {}, [&](std::size_t block) {
    const std::size_t end = std::min(vertices, (block + 1) * kAtOnce);
    for (std::size_t v = block * kAtOnce; v < end; ++v)
      std::sort(uses_.begin() + static_cast<std::ptrdiff_t>(first_[v]),
                uses_.begin() + static_cast<std::ptrdiff_t>(first_[v + 1]), [](const Use& a, const Use& b) {
                  return a.upper < b.upper || (a.upper == b.upper && a.side < b.side);
                });
  });
}

bool EdgeTable::hasEdge(std::uint32_t a, std::uint32_t b) const {
  const std::uint32_t lower = std::min(a, b), upper = std::max(a, b);
  return std::any_of(uses_.begin() + static_cast<std::ptrdiff_t>(first_[lower]),
                     uses_.begin() + static_cast<std::ptrdiff_t>(first_[lower + 1]),
                     [upper](const Use& use) { return use.upper == upper; });
}

}  // namespace zyga::solid
