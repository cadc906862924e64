#include "core/solid/levelset/level_set_grid.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace zyga::solid {

using anatomy::SignedDistance;
using Eigen::Vector3f;
using Eigen::Vector3i;

namespace {

/// Value between the eight samples from 0 on (strides 1, dy, dz) for fractions in [0, 1].
template <class Sample>
float trilinear(const Sample& sample, std::size_t dy, std::size_t dz, const Vector3f& f) {
  const auto along = [&](std::size_t at) {
    const float a = sample(at);
    return a + f.x() * (sample(at + 1) - a);
  };
  const float low = along(0) + f.y() * (along(dy) - along(0));
  const float high = along(dz) + f.y() * (along(dz + dy) - along(dz));
  return low + f.z() * (high - low);
}

}  // namespace

bool LevelSetGrid::locate(const Vector3f& p, Place& place) const {
  const Vector3f u = (p - lattice_.min()) * perVoxel_;
  const Vector3i at = u.cast<int>().cwiseMin(last_);
  // Asked this way round, a point with a NaN is off the lattice as well.
  if (!(u.minCoeff() >= 0) || (u.array() > (last_.array() + 1).cast<float>()).any()) return false;
  const Vector3i cell(at.x() / kRefined, at.y() / kRefined, at.z() / kRefined);
  const Vector3i sub = at - kRefined * cell;
  place.node = node(cell.x(), cell.y(), cell.z());
  place.offset = (sub.z() * kNodes + sub.y()) * kNodes + sub.x();
  place.rest = u - at.cast<float>();
  place.inCell = (u - (kRefined * cell).cast<float>()) * (1.0F / kRefined);
  return true;
}

float LevelSetGrid::coarse(const Place& place) const {
  return trilinear([first = &nodes_[place.node]](std::size_t i) { return first[i].distance; },
                   static_cast<std::size_t>(size_.x()), node(0, 0, 1), place.inCell);
}

float LevelSetGrid::fine(const Place& place) const {
  const std::int16_t* first = &fine_[static_cast<std::size_t>(nodes_[place.node].brick * kBrick + place.offset)];
  return trilinear([first](std::size_t i) { return static_cast<float>(first[i]); }, kNodes, kNodes * kNodes,
                   place.rest) *
         (kStep * voxel_);
}

SignedDistance::Estimate LevelSetGrid::estimate(const Vector3f& p) const {
  Place place;
  if (!locate(p, place)) {
    const float toBox = box_.exteriorDistance(p);
    return {toBox, toBox};
  }
  if (nodes_[place.node].brick >= 0) {
    const float value = fine(place);
    return {value, value - 0.3F * voxel_};
  }
  const float value = coarse(place);
  // Every point is nearer than 0.87 voxels to a fine sample, and those of a cell without a brick are off the band.
  const float least = value > 0 ? (kBand - 0.87F) * voxel_ : -std::numeric_limits<float>::infinity();
  return {value, std::max(value - 2.5F * voxel_, least)};
}

LevelSetGrid::Known LevelSetGrid::knownAt(std::size_t first) const {
  Known known;
  for (int corner = 0; corner < 8; ++corner) {
    const std::uint32_t triangle = nodes_[first + node(corner & 1, (corner >> 1) & 1, corner >> 2)].nearest;
    const auto end = known.triangles.begin() + known.count;
    if (std::find(known.triangles.begin(), end, triangle) == end) known.triangles[known.count++] = triangle;
  }
  return known;
}

float LevelSetGrid::distanceFrom(const Known& known, const Vector3f& p) const {
  float least = std::numeric_limits<float>::max();
  for (std::size_t i = 0; i < known.count; ++i) {
    least = std::min(least, triangles_[known.triangles[i]].squaredDistance(p));
  }
  return std::sqrt(least);
}

float LevelSetGrid::distance(const Vector3f& p) const {
  Place place;
  if (!locate(p, place)) return box_.exteriorDistance(p);
  if (nodes_[place.node].brick >= 0) return fine(place);
  return std::copysign(distanceFrom(knownAt(place.node), p), coarse(place));
}

std::size_t LevelSetGrid::bytes() const {
  return triangles_.size() * sizeof(DistanceTriangle) + nodes_.size() * sizeof(Node) +
         fine_.size() * sizeof(std::int16_t);
}

void LevelSetGrid::write(ByteWriter& out) const {
  std::vector<std::array<Vector3f, 3>> corners;
  corners.reserve(triangles_.size());
  for (const DistanceTriangle& triangle : triangles_) corners.push_back(triangle.corner);
  for (const float* value : {&voxel_, &perVoxel_}) out.value(*value);
  for (const Eigen::AlignedBox3f* box : {&box_, &lattice_}) {
    out.value(box->min());
    out.value(box->max());
  }
  out.value(size_);
  out.value(last_);
  out.list(corners);
  out.list(nodes_);
  out.list(fine_);
}

/// Whether every lookup stays within the lists.
bool LevelSetGrid::sound() const {
  if (!(voxel_ > 0) || !(perVoxel_ > 0) || (size_.array() < 2).any() || (size_.array() > (1 << 16)).any()) return false;
  if (last_ != Vector3i((size_.array() - 1) * kRefined - 1) || nodes_.size() != node(0, 0, size_.z())) return false;
  if (fine_.size() % kBrick != 0) return false;
  const auto bricks = static_cast<std::int64_t>(fine_.size() / kBrick);
  return std::all_of(nodes_.begin(), nodes_.end(), [&](const Node& node) {
    return node.nearest < triangles_.size() && node.brick >= -1 && node.brick < bricks;
  });
}

std::optional<LevelSetGrid> LevelSetGrid::read(ByteReader& in) {
  LevelSetGrid grid;
  std::vector<std::array<Vector3f, 3>> corners;
  if (!in.value(grid.voxel_) || !in.value(grid.perVoxel_)) return std::nullopt;
  for (Eigen::AlignedBox3f* box : {&grid.box_, &grid.lattice_})
    if (!in.value(box->min()) || !in.value(box->max())) return std::nullopt;
  if (!in.value(grid.size_) || !in.value(grid.last_) || !in.list(corners) || !in.list(grid.nodes_) ||
      !in.list(grid.fine_))
    return std::nullopt;
  grid.triangles_.reserve(corners.size());
  for (const auto& triangle : corners) grid.triangles_.emplace_back(triangle);
  return grid.sound() ? std::optional(std::move(grid)) : std::nullopt;
}

using Eigen::Vector3f;

DistanceTriangle::DistanceTriangle(const std::array<Vector3f, 3>& corners) : corner(corners) {
  float longest = 0;
  for (std::size_t k = 0; k < 3; ++k) {
    edge[k] = corner[(k + 1) % 3] - corner[k];
    const float squared = edge[k].squaredNorm();
    edgeScale[k] = squared > 0 ? 1 / squared : 0;
    longest = std::max(longest, squared);
  }
  const Vector3f cross = edge[0].cross(edge[1]);
  const float doubled = cross.norm();
  if (doubled <= 1e-5F * longest) {
    inward.fill(Vector3f::Zero());
    return;
  }
  area = doubled;
  normal = cross / doubled;
  for (std::size_t k = 0; k < 3; ++k) inward[k] = normal.cross(edge[k]);
}

Eigen::AlignedBox3f DistanceTriangle::box() const {
  Eigen::AlignedBox3f box;
  for (const Vector3f& c : corner) box.extend(c);
  return box;
}

}  // namespace zyga::solid
