#pragma once

#include <array>
#include <functional>
#include <unordered_map>

#include "core/picture/line_drawing.h"

/// Lines between the samples of a grid.
namespace zyga::picture {

/// An edge of the grid: from the sample (x, y) to its right (along 0) or upper (along 1) neighbour.
using GridEdge = std::uint64_t;
inline GridEdge gridEdge(int x, int y, int along) {
  return (static_cast<std::uint64_t>(y) << 32 | static_cast<std::uint32_t>(x)) << 1 | static_cast<unsigned>(along);
}

/// Closed or open runs of grid edges, pieced together from steps across single cells.
class EdgeChains {
 public:
  /// A directed step of a closed line: a shape's border enters a cell through one edge and leaves through another.
  void addStep(GridEdge from, GridEdge to) { next_[from] = to; }
  /// All closed lines, each once, in the order in which their first steps were added by the caller's scan.
  std::vector<std::vector<GridEdge>> loops() const;

 private:
  std::unordered_map<GridEdge, GridEdge> next_;
};

/// Undirected pieces joined end to end where just two of them meet.
std::vector<std::vector<GridEdge>> joinPieces(const std::vector<std::array<GridEdge, 2>>& pieces);

/// The steps across one cell around the corners that are inside, the inside to the left. Corners and sides run
/// counter-clockwise: corner 0 (x, y), 1 (x + 1, y), 2 (x + 1, y + 1), 3 (x, y + 1); side k from corner k to k + 1.
/// Corners that touch only across the diagonal stay apart.
void addCell(EdgeChains& chains, int x, int y, const std::array<bool, 4>& inside);

/// Grid edge of a cell's side.
GridEdge cellSide(int x, int y, int side);

/// Fewer points of a line, none of those left out farther than `tolerance` from what is kept (Douglas & Peucker 1973,
/// Cartographica 10(2):112). `closed`: the last point is joined to the first, which is not repeated.
PlaneLine simplified(const PlaneLine& line, double tolerance, bool closed);

}  // namespace zyga::picture
