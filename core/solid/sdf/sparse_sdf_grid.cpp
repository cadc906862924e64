#include "core/solid/sdf/sparse_sdf_grid.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace zyga::solid {

namespace {

constexpr float kAway = 1000;
constexpr std::int32_t kOutside = -1, kInside = -2;
/// Fields may be steeper than one by this factor before a surface could be missed.
constexpr double kSteepest = 1.25;

int floorDivide(int a) {
  return a >= 0 ? a / SparseSdfGrid::kSide : -((SparseSdfGrid::kSide - 1 - a) / SparseSdfGrid::kSide);
}

}  // namespace

SparseSdfGrid::SparseSdfGrid(const Shape& shape, double voxel) : root_(shape.node()), voxel_(voxel) {
  assert(voxel > 0);
  if (!root_ || shape.bounds().isEmpty()) return;
  int largest = 1;
  for (int a = 0; a < 3; ++a) {
    const auto i = static_cast<std::size_t>(a);
    origin_[i] = static_cast<int>(std::floor(shape.bounds().min()[a] / voxel)) - 2;
    const int cells = static_cast<int>(std::ceil(shape.bounds().max()[a] / voxel)) + 2 - origin_[i];
    count_[i] = cells / kSide + 1;
    largest = std::max(largest, count_[i]);
  }
  index_.assign(
      static_cast<std::size_t>(count_[0]) * static_cast<std::size_t>(count_[1]) * static_cast<std::size_t>(count_[2]),
      kOutside);
  int size = 1;
  while (size < largest) size *= 2;
  visit(root_, {0, 0, 0}, size);
  addNeighbours();
  mendSigns();
}

Point SparseSdfGrid::position(const Cell& corner) const {
  return voxel_ * Point(corner[0] + origin_[0], corner[1] + origin_[1], corner[2] + origin_[2]);
}

std::size_t SparseSdfGrid::slot(const Cell& block) const {
  return static_cast<std::size_t>((block[2] * count_[1] + block[1]) * count_[0] + block[0]);
}

bool SparseSdfGrid::holds(const Cell& block) const {
  for (std::size_t i = 0; i < 3; ++i)
    if (block[i] < 0 || block[i] >= count_[i]) return false;
  return true;
}

FieldNode::Place SparseSdfGrid::placeOf(const Cell& firstBlock, int size) const {
  const Cell first{firstBlock[0] * kSide, firstBlock[1] * kSide, firstBlock[2] * kSide};
  const Point middle = position(first) + Point::Constant(0.5 * size * kSide * voxel_);
  // Vertices are moved a little, so each place answers for more than its own cells. Only crossings need true values.
  const double radius = (0.5 * size * kSide + 0.6) * voxel_ * std::sqrt(3.0);
  return {middle.cast<float>(), static_cast<float>(radius), static_cast<float>(2 * voxel_)};
}

void SparseSdfGrid::visit(const NodePtr& node, const Cell& firstBlock, int size) {
  if (!holds(firstBlock)) return;
  const FieldNode::Place place = placeOf(firstBlock, size);
  const FieldNode::Local local = node->near(node, place);
  if (std::abs(local.value) > kSteepest * place.radius) return fill(firstBlock, size, local.value < 0);
  if (size == 1) return addBlock(local.node, firstBlock, true);
  const int half = size / 2;
  for (int i = 0; i < 8; ++i)
    visit(local.node,
          {firstBlock[0] + (i & 1) * half, firstBlock[1] + ((i >> 1) & 1) * half, firstBlock[2] + (i >> 2) * half},
          half);
}

void SparseSdfGrid::fill(const Cell& firstBlock, int size, bool inside) {
  if (!inside) return;  // the index starts as outside
  for (int z = firstBlock[2]; z < std::min(firstBlock[2] + size, count_[2]); ++z)
    for (int y = firstBlock[1]; y < std::min(firstBlock[1] + size, count_[1]); ++y)
      for (int x = firstBlock[0]; x < std::min(firstBlock[0] + size, count_[0]); ++x) index_[slot({x, y, z})] = kInside;
}

void SparseSdfGrid::addBlock(const NodePtr& local, const Cell& at, bool evaluate) {
  auto block = std::make_unique<Block>();
  block->first = {at[0] * kSide, at[1] * kSide, at[2] * kSide};
  block->number = blocks_.size();
  block->local = local;
  block->vertex.fill(-1);
  std::int32_t& entry = index_[slot(at)];
  if (evaluate) {
    float x[kCells], y[kCells], z[kCells];
    for (int i = 0; i < kCells; ++i) {
      const Point p = position(
          {block->first[0] + i % kSide, block->first[1] + i / kSide % kSide, block->first[2] + i / kSide / kSide});
      const auto k = static_cast<std::size_t>(i);
      x[k] = static_cast<float>(p.x()), y[k] = static_cast<float>(p.y()), z[k] = static_cast<float>(p.z());
    }
    local->evaluate({x, y, z, kCells}, block->corner.data());
  } else {
    block->corner.fill(entry == kInside ? -kAway : kAway);
  }
  entry = static_cast<std::int32_t>(blocks_.size());
  blocks_.push_back(std::move(block));
}

/// Blocks beside evaluated ones get room for vertices; where a neighbour shows another sign than the block was given,
/// the field was steeper than assumed and the block is evaluated after all.
void SparseSdfGrid::addNeighbours() {
  for (std::size_t b = 0; b < blocks_.size(); ++b) {
    const Cell first = blocks_[b]->first;
    const bool evaluated = std::abs(blocks_[b]->corner[0]) != kAway;
    if (!evaluated) continue;
    for (int i = 0; i < 27; ++i) {
      const Cell next{first[0] / kSide + i % 3 - 1, first[1] / kSide + i / 3 % 3 - 1, first[2] / kSide + i / 9 - 1};
      if (!holds(next) || index_[slot(next)] >= 0) continue;
      const FieldNode::Local local = root_->near(root_, placeOf(next, 1));
      const bool asGiven = (local.value < 0) == (index_[slot(next)] == kInside);
      addBlock(local.node, next, !asGiven);
    }
  }
}

SparseSdfGrid::Block* SparseSdfGrid::blockOf(const Cell& cell) const {
  const Cell at{floorDivide(cell[0]), floorDivide(cell[1]), floorDivide(cell[2])};
  if (!holds(at)) return nullptr;
  const std::int32_t entry = index_[slot(at)];
  return entry < 0 ? nullptr : blocks_[static_cast<std::size_t>(entry)].get();
}

std::size_t SparseSdfGrid::offsetIn(const Block& block, const Cell& cell) {
  return static_cast<std::size_t>(((cell[2] - block.first[2]) * kSide + cell[1] - block.first[1]) * kSide + cell[0] -
                                  block.first[0]);
}

float SparseSdfGrid::value(const Cell& corner) const {
  if (const Block* block = blockOf(corner)) return block->corner[offsetIn(*block, corner)];
  const Cell at{floorDivide(corner[0]), floorDivide(corner[1]), floorDivide(corner[2])};
  return holds(at) && index_[slot(at)] == kInside ? -kAway : kAway;
}

bool SparseSdfGrid::gather(const Block& block, Corners& out) const {
  std::size_t k = 0;
  int inside = 0;
  for (int z = 0; z <= kSide; ++z)
    for (int y = 0; y <= kSide; ++y)
      for (int x = 0; x <= kSide; ++x, ++k) {
        const bool own = x < kSide && y < kSide && z < kSide;
        out[k] = own ? block.corner[static_cast<std::size_t>((z * kSide + y) * kSide + x)]
                     : value({block.first[0] + x, block.first[1] + y, block.first[2] + z});
        inside += out[k] < 0;
      }
  return inside > 0 && inside < static_cast<int>(out.size());
}

/// A face whose signs alternate around it could be joined in two ways. Such faces are made plain by taking one of
/// their outside corners in, by a hair; afterwards every face is crossed by the surface once or not at all, and the
/// dual surface is a manifold. Solids only grow, so this ends.
void SparseSdfGrid::mendSigns() {
  bool changed = true;
  while (changed) {
    changed = false;
    for (const auto& block : blocks_)
      while (mendBlock(*block)) changed = true;
  }
}

/// True when one face of the block had to be mended.
bool SparseSdfGrid::mendBlock(const Block& block) {
  Corners values;
  if (!gather(block, values)) return false;
  constexpr int kStep[3] = {1, kSide + 1, (kSide + 1) * (kSide + 1)};
  for (int i = 0; i < static_cast<int>(values.size()); ++i) {
    const int at[3] = {i % kStep[1], i / kStep[1] % kStep[1], i / kStep[2]};
    for (int u = 0; u < 3; ++u) {
      const int v = (u + 1) % 3;
      if (at[u] < kSide && at[v] < kSide && mendFace(block, values, i, kStep[u], kStep[v])) return true;
    }
  }
  return false;
}

bool SparseSdfGrid::mendFace(const Block& block, const Corners& values, int corner, int stepU, int stepV) {
  const auto value = [&](int i) { return values[static_cast<std::size_t>(i)]; };
  const int b = corner + stepU, c = b + stepV, d = corner + stepV;
  const bool in = value(corner) < 0;
  if (in != (value(c) < 0) || in == (value(b) < 0) || in == (value(d) < 0)) return false;
  const int p = in ? b : corner, q = in ? d : c, chosen = value(p) <= value(q) ? p : q;
  const Cell cell{block.first[0] + chosen % (kSide + 1), block.first[1] + chosen / (kSide + 1) % (kSide + 1),
                  block.first[2] + chosen / (kSide + 1) / (kSide + 1)};
  Block* owner = blockOf(cell);
  if (owner) owner->corner[offsetIn(*owner, cell)] = static_cast<float>(-1e-3 * voxel_);
  return owner != nullptr;
}

}  // namespace zyga::solid
