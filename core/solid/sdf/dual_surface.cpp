#include "core/solid/sdf/dual_surface.h"

#include <stdexcept>

namespace zyga::solid {

namespace {

/// Corners of a cell are numbered by bits (x, y, z); edge e runs along axis e / 4 from its lower corner.
constexpr int kEdges = 12;

struct EdgeEnds {
  int low, high;
};

constexpr EdgeEnds edgeEnds(int edge) {
  const int axis = edge / 4, u = (axis + 1) % 3, v = (axis + 2) % 3;
  const int low = ((edge & 1) << u) | (((edge >> 1) & 1) << v);
  return {low, low | (1 << axis)};
}

/// For every pattern of inside corners: to which sheet each crossed edge belongs.
struct Sheets {
  int count = 0;
  std::array<int, kEdges> of{};  ///< -1 where the edge is not crossed
};

bool shareFace(int a, int b) {
  const EdgeEnds p = edgeEnds(a), q = edgeEnds(b);
  const int all = p.low & p.high & q.low & q.high, none = ~(p.low | p.high | q.low | q.high) & 7;
  return all != 0 || none != 0;
}

Sheets sheetsOf(int pattern) {
  Sheets sheets;
  for (int e = 0; e < kEdges; ++e) {
    const EdgeEnds ends = edgeEnds(e);
    sheets.of[static_cast<std::size_t>(e)] = ((pattern >> ends.low) ^ (pattern >> ends.high)) & 1 ? kEdges : -1;
  }
  // Crossed edges of one face belong together: faces are crossed at most once (SparseSdfGrid mends the others).
  for (int seed = 0; seed < kEdges; ++seed) {
    if (sheets.of[static_cast<std::size_t>(seed)] != kEdges) continue;
    std::vector<int> open{seed};
    sheets.of[static_cast<std::size_t>(seed)] = sheets.count;
    while (!open.empty()) {
      const int e = open.back();
      open.pop_back();
      for (int o = 0; o < kEdges; ++o)
        if (sheets.of[static_cast<std::size_t>(o)] == kEdges && shareFace(e, o)) {
          sheets.of[static_cast<std::size_t>(o)] = sheets.count;
          open.push_back(o);
        }
    }
    ++sheets.count;
  }
  return sheets;
}

const Sheets& sheets(int pattern) {
  static const std::vector<Sheets> table = [] {
    std::vector<Sheets> all;
    for (int p = 0; p < 256; ++p) all.push_back(sheetsOf(p));
    return all;
  }();
  return table[static_cast<std::size_t>(pattern)];
}

constexpr int kRow = SparseSdfGrid::kSide + 1;

int cornerIndex(int cell, int corner) {
  const int x = cell % SparseSdfGrid::kSide + (corner & 1),
            y = cell / SparseSdfGrid::kSide % SparseSdfGrid::kSide + ((corner >> 1) & 1),
            z = cell / SparseSdfGrid::kSide / SparseSdfGrid::kSide + (corner >> 2);
  return (z * kRow + y) * kRow + x;
}

int patternOf(const SparseSdfGrid::Corners& values, int cell) {
  int pattern = 0;
  for (int c = 0; c < 8; ++c) pattern |= (values[static_cast<std::size_t>(cornerIndex(cell, c))] < 0) << c;
  return pattern;
}

Cell cellAt(const SparseSdfGrid::Block& block, int cell) {
  constexpr int n = SparseSdfGrid::kSide;
  return {block.first[0] + cell % n, block.first[1] + cell / n % n, block.first[2] + cell / n / n};
}

class Builder {
 public:
  explicit Builder(SparseSdfGrid& grid) : grid_(grid), patterns_(grid.blocks().size()) {}

  DualSurface build() {
    for (std::size_t b = 0; b < grid_.blocks().size(); ++b) placeVertices(b);
    for (std::size_t b = 0; b < grid_.blocks().size(); ++b) joinFaces(b);
    return std::move(surface_);
  }

 private:
  void placeVertices(std::size_t b) {
    SparseSdfGrid::Block& block = *grid_.blocks()[b];
    SparseSdfGrid::Corners values;
    if (!grid_.gather(block, values)) return;
    for (int cell = 0; cell < SparseSdfGrid::kCells; ++cell) {
      const int pattern = patternOf(values, cell);
      const Sheets& sheet = sheets(pattern);
      if (sheet.count == 0) continue;
      block.vertex[static_cast<std::size_t>(cell)] = static_cast<std::int32_t>(surface_.vertices.size());
      patterns_[b][static_cast<std::size_t>(cell)] = static_cast<std::uint8_t>(pattern);
      for (int s = 0; s < sheet.count; ++s) addVertex(b, values, cell, sheet, s);
    }
  }

  /// The vertex starts at the mean of the places where the surface crosses the cell's edges.
  void addVertex(std::size_t b, const SparseSdfGrid::Corners& values, int cell, const Sheets& sheet, int s) {
    Point sum = Point::Zero();
    int count = 0;
    for (int e = 0; e < kEdges; ++e) {
      if (sheet.of[static_cast<std::size_t>(e)] != s) continue;
      const EdgeEnds ends = edgeEnds(e);
      const double a = values[static_cast<std::size_t>(cornerIndex(cell, ends.low))];
      const double c = values[static_cast<std::size_t>(cornerIndex(cell, ends.high))];
      const Point low(ends.low & 1, (ends.low >> 1) & 1, ends.low >> 2);
      sum += low;
      sum[e / 4] += a / (a - c);
      ++count;
    }
    surface_.vertices.push_back(grid_.position(cellAt(*grid_.blocks()[b], cell)) + grid_.voxel() * sum / count);
    surface_.block.push_back(b);
  }

  /// Grid edges that start at the cell's low corner: each is shared by four cells.
  void joinFaces(std::size_t b) {
    const SparseSdfGrid::Block& block = *grid_.blocks()[b];
    for (int cell = 0; cell < SparseSdfGrid::kCells; ++cell) {
      if (block.vertex[static_cast<std::size_t>(cell)] < 0) continue;
      const int pattern = patterns_[b][static_cast<std::size_t>(cell)];
      for (int axis = 0; axis < 3; ++axis)
        if (((pattern & 1) != 0) != (((pattern >> (1 << axis)) & 1) != 0))
          addFace(cellAt(block, cell), axis, pattern & 1);
    }
  }

  void addFace(const Cell& cell, int axis, bool lowInside) {
    const auto u = static_cast<std::size_t>((axis + 1) % 3), v = static_cast<std::size_t>((axis + 2) % 3);
    // The four cells around the edge, counter-clockwise seen from its high end.
    constexpr int kAround[4][2] = {{0, 0}, {1, 0}, {1, 1}, {0, 1}};
    std::array<std::uint32_t, 4> face{};
    for (std::size_t i = 0; i < 4; ++i) {
      Cell at = cell;
      at[u] -= kAround[i][0], at[v] -= kAround[i][1];
      const int edge = axis * 4 + kAround[i][0] + 2 * kAround[i][1];
      face[i] = vertexAt(at, edge);
    }
    if (!lowInside) std::swap(face[1], face[3]);
    surface_.faces.push_back(face);
  }

  std::uint32_t vertexAt(const Cell& cell, int edge) const {
    const SparseSdfGrid::Block* block = grid_.blockOf(cell);
    if (!block) throw std::logic_error("a solid reaches beyond its own bounds");
    const std::size_t offset = SparseSdfGrid::offsetIn(*block, cell);
    const int sheet = sheets(patterns_[block->number][offset]).of[static_cast<std::size_t>(edge)];
    return static_cast<std::uint32_t>(block->vertex[offset] + sheet);
  }

  SparseSdfGrid& grid_;
  std::vector<std::array<std::uint8_t, SparseSdfGrid::kCells>> patterns_;
  DualSurface surface_;
};

}  // namespace

DualSurface dualSurface(SparseSdfGrid& grid) { return Builder(grid).build(); }

}  // namespace zyga::solid
