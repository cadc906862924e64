#include "core/solid/mesh/close_holes.h"

#include <map>

#include "core/solid/mesh/edge_table.h"

namespace zyga::solid {
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
