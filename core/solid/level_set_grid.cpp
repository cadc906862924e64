#include "core/solid/level_set_grid.h"

#include <cmath>

namespace zyga::solid {

using anatomy::BoneField;
using Eigen::Vector3f;
using Eigen::Vector3i;

namespace {

/// Value between the eight samples at `v` (strides 1, dy, dz) for fractions in [0, 1].
template <class Sample>
float trilinear(const Sample* v, std::size_t dy, std::size_t dz, const Vector3f& f) {
  const auto along = [&](std::size_t at) {
    const auto a = static_cast<float>(v[at]);
    return a + f.x() * (static_cast<float>(v[at + 1]) - a);
  };
  const float low = along(0) + f.y() * (along(dy) - along(0));
  const float high = along(dz) + f.y() * (along(dz + dy) - along(dz));
  return low + f.z() * (high - low);
}

}  // namespace

bool LevelSetGrid::onLattice(const Vector3f& p) const {
  return (p.array() >= lattice_.min().array()).all() && (p.array() <= lattice_.max().array()).all();
}

LevelSetGrid::Cell LevelSetGrid::cellAt(const Vector3f& p) const {
  const Vector3f u = (p - lattice_.min()) / (voxel_ * kRefined);
  const Vector3i cell = u.cast<int>().cwiseMin(size_ - Vector3i::Constant(2)).cwiseMax(0);
  return {node(cell.x(), cell.y(), cell.z()), u - cell.cast<float>()};
}

float LevelSetGrid::coarse(const Cell& cell) const {
  return trilinear(&nodes_[cell.node], static_cast<std::size_t>(size_.x()), node(0, 0, 1), cell.f);
}

float LevelSetGrid::fine(const Cell& cell) const {
  const Vector3f u = cell.f * kRefined;
  const Vector3i sub = u.cast<int>().cwiseMin(kRefined - 1).cwiseMax(0);
  const std::int16_t* brick = &fine_[static_cast<std::size_t>(bricks_[cell.node]) * kBrick];
  return trilinear(brick + (sub.z() * kNodes + sub.y()) * kNodes + sub.x(), kNodes, kNodes * kNodes,
                   u - sub.cast<float>()) *
         (kStep * voxel_);
}

BoneField::Estimate LevelSetGrid::estimate(const Vector3f& p) const {
  if (!onLattice(p)) return {box_.exteriorDistance(p), 0};
  const Cell cell = cellAt(p);
  if (bricks_[cell.node] < 0) return {coarse(cell), 2.5F * voxel_};
  const float value = fine(cell);
  return {value, (std::abs(value) < kBand * voxel_ ? 0.5F : 1.0F) * voxel_};
}

Vector3f LevelSetGrid::nearest(std::size_t first, const Vector3f& p) const {
  std::array<std::uint32_t, 8> asked{};
  std::size_t count = 0;
  std::uint32_t best = 0;
  float least = std::numeric_limits<float>::max();
  for (int corner = 0; corner < 8; ++corner) {
    const std::uint32_t triangle = nearest_[first + node(corner & 1, (corner >> 1) & 1, corner >> 2)];
    if (std::find(asked.begin(), asked.begin() + count, triangle) != asked.begin() + count) continue;
    asked[count++] = triangle;
    const float squared = triangles_[triangle].squaredDistance(p);
    if (squared < least) {
      least = squared;
      best = triangle;
    }
  }
  return triangles_[best].nearest(p);
}

float LevelSetGrid::distance(const Vector3f& p) const {
  if (!onLattice(p)) return box_.exteriorDistance(p);
  const Cell cell = cellAt(p);
  float quick = 0;
  if (bricks_[cell.node] >= 0) {
    quick = fine(cell);
    if (std::abs(quick) < kBand * voxel_) return quick;
  } else {
    quick = coarse(cell);
  }
  return std::copysign((p - nearest(cell.node, p)).norm(), quick);
}

std::size_t LevelSetGrid::bytes() const {
  return triangles_.size() * sizeof(DistanceTriangle) + nodes_.size() * 12 + fine_.size() * sizeof(std::int16_t);
}

}  // namespace zyga::solid
