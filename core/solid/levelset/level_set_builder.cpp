#include "core/solid/levelset/level_set_builder.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cassert>
#include <cmath>

namespace zyga::solid {

using Eigen::Vector3f;
using Eigen::Vector3i;

namespace {

constexpr float kUnmeasured = 1e9F;
constexpr int kRefined = LevelSetGrid::kRefined;
constexpr std::uint32_t kNoTriangle = ~0U;

struct Samples {
  Vector3i first, last;
};

/// Samples within `reach` of a box, on a lattice from `origin`.
Samples samplesIn(const Eigen::AlignedBox3f& box, float reach, const Vector3f& origin, float spacing,
                  const Vector3i& size) {
  const auto at = [&](const Vector3f& p) { return Vector3f((p - origin) / spacing); };
  return {at(box.min().array() - reach).array().ceil().cast<int>().max(0),
          at(box.max().array() + reach).array().floor().cast<int>().min(size.array() - 1)};
}

}  // namespace

LevelSetGrid::LevelSetGrid(const TriangleMesh& mesh, float voxel) : voxel_(voxel) {
  assert(voxel > 0 && !mesh.empty());
  LevelSetBuilder(*this, mesh).build();
}

void LevelSetBuilder::build() {
  layOut();
  measureBand();
  spreadNearest();
  turnInside();
  fillBricks();
}

void LevelSetBuilder::layOut() {
  for (const auto& t : mesh_.triangles) {
    grid_.triangles_.emplace_back(
        std::array<Vector3f, 3>{mesh_.positions[t[0]], mesh_.positions[t[1]], mesh_.positions[t[2]]});
    grid_.box_.extend(grid_.triangles_.back().box());
  }
  const float spacing = grid_.voxel_ * kRefined;
  // Odd parts of a voxel keep samples off the round coordinates at which many meshes have their corners.
  Vector3f corner = grid_.box_.min() - Vector3f::Constant(LevelSetGrid::kMargin * spacing) -
                    grid_.voxel_ * Vector3f(0.1373F, 0, 0.4139F);
  // The mid-plane runs half way between samples, which so mirror each other.
  corner.y() = (std::floor(corner.y() / grid_.voxel_) - 0.5F) * grid_.voxel_;
  const Vector3f extent = grid_.box_.max() + Vector3f::Constant(LevelSetGrid::kMargin * spacing) - corner;
  grid_.size_ = (extent / spacing).array().ceil().cast<int>() + 1;
  grid_.lattice_ = {corner, corner + Vector3f((grid_.size_.array() - 1).cast<float>() * spacing)};
  grid_.perVoxel_ = 1 / grid_.voxel_;
  grid_.last_ = (grid_.size_.array() - 1) * kRefined - 1;
  denseSize_ = (grid_.size_.array() - 1) * kRefined + 1;
  dense_.assign(dense(0, 0, denseSize_.z()), kUnmeasured);
  grid_.nodes_.assign(grid_.node(0, 0, grid_.size_.z()), {kUnmeasured, -1, kNoTriangle});
}

void LevelSetBuilder::measureBand() {
  const Vector3f& origin = grid_.lattice_.min();
  const float fine = grid_.voxel_, coarse = fine * kRefined;
  for (std::uint32_t i = 0; i < grid_.triangles_.size(); ++i) {
    const DistanceTriangle& triangle = grid_.triangles_[i];
    const Samples near = samplesIn(triangle.box(), LevelSetGrid::kBand * fine, origin, fine, denseSize_);
    for (int z = near.first.z(); z <= near.last.z(); ++z) {
      for (int y = near.first.y(); y <= near.last.y(); ++y) {
        float* row = &dense_[dense(0, y, z)];
        const Vector3f p = place(0, y, z, fine);
        for (int x = near.first.x(); x <= near.last.x(); ++x) {
          row[x] = std::min(row[x], triangle.squaredDistance(p.x() + static_cast<float>(x) * fine, p.y(), p.z()));
        }
      }
    }
    const Samples around = samplesIn(triangle.box(), coarse, origin, coarse, grid_.size_);
    for (int z = around.first.z(); z <= around.last.z(); ++z) {
      for (int y = around.first.y(); y <= around.last.y(); ++y) {
        for (int x = around.first.x(); x <= around.last.x(); ++x) {
          improve(grid_.nodes_[grid_.node(x, y, z)], i, {x, y, z});
        }
      }
    }
  }
}

void LevelSetBuilder::improve(LevelSetGrid::Node& node, std::uint32_t candidate, const Vector3i& here) {
  const Vector3f p = place(here.x(), here.y(), here.z(), grid_.voxel_ * kRefined);
  const float squared = grid_.triangles_[candidate].squaredDistance(p);
  if (squared >= node.distance) return;
  node.distance = squared;
  node.nearest = candidate;
}

/// From each sample's 13 neighbours before it, in the order of the lattice (Way 1) or against it (Way -1).
template <int Way>
void LevelSetBuilder::sweep() {
  const Vector3i size = grid_.size_;
  const auto index = [](int i, int count) { return Way > 0 ? i : count - 1 - i; };
  std::array<std::ptrdiff_t, 13> before;
  for (int n = 0; n < 13; ++n) {
    before[static_cast<std::size_t>(n)] =
        Way * (((n / 9 - 1) * size.y() + (n / 3) % 3 - 1) * static_cast<std::ptrdiff_t>(size.x()) + n % 3 - 1);
  }
  const auto inner = [&](int x, int y, int z) {
    return x > 0 && y > 0 && z > 0 && x + 1 < size.x() && y + 1 < size.y() && z + 1 < size.z();
  };
  const auto fits = [&](const Vector3i& n) { return (n.array() >= 0).all() && (n.array() < size.array()).all(); };
  for (int k = 0; k < size.z(); ++k) {
    for (int j = 0; j < size.y(); ++j) {
      for (int i = 0; i < size.x(); ++i) {
        const Vector3i here(index(i, size.x()), index(j, size.y()), index(k, size.z()));
        LevelSetGrid::Node& node = grid_.nodes_[grid_.node(here.x(), here.y(), here.z())];
        const bool whole = inner(i, j, k);
        for (int n = 0; n < 13; ++n) {
          if (!whole && !fits(here + Way * Vector3i(n % 3 - 1, (n / 3) % 3 - 1, n / 9 - 1))) continue;
          const std::uint32_t candidate = (&node)[before[static_cast<std::size_t>(n)]].nearest;
          if (candidate != kNoTriangle && candidate != node.nearest) improve(node, candidate, here);
        }
      }
    }
  }
}

void LevelSetBuilder::spreadNearest() {
  sweep<1>();
  sweep<-1>();
  for (LevelSetGrid::Node& node : grid_.nodes_) node.distance = std::sqrt(node.distance);
  for (float& value : dense_) value = value < kUnmeasured ? std::sqrt(value) : kUnmeasured;
}

void LevelSetBuilder::turnInside() {
  const Vector3f& origin = grid_.lattice_.min();
  const auto found = crossings(mesh_, {origin.y(), origin.z(), grid_.voxel_, denseSize_.y(), denseSize_.z()});
  int winding = 0;
  for (std::size_t i = 0; i + 1 < found.size(); ++i) {
    winding = i > 0 && found[i - 1].line == found[i].line ? winding + found[i].entering : found[i].entering;
    if (winding <= 0 || found[i + 1].line != found[i].line) continue;
    float* row = &dense_[static_cast<std::size_t>(found[i].line) * static_cast<std::size_t>(denseSize_.x())];
    const int first = static_cast<int>(std::ceil((found[i].x - origin.x()) / grid_.voxel_));
    const int last = static_cast<int>(std::ceil((found[i + 1].x - origin.x()) / grid_.voxel_)) - 1;
    for (int x = first; x <= last; ++x) row[x] = -row[x];
  }
  for (int z = 0; z < grid_.size_.z(); ++z) {
    for (int y = 0; y < grid_.size_.y(); ++y) {
      for (int x = 0; x < grid_.size_.x(); ++x) {
        float& value = grid_.nodes_[grid_.node(x, y, z)].distance;
        value = std::copysign(value, dense_[dense(x * kRefined, y * kRefined, z * kRefined)]);
      }
    }
  }
}

bool LevelSetBuilder::atSurface(const Vector3i& cell) const {
  const float near = LevelSetGrid::kBand * grid_.voxel_;
  const Vector3i first = cell * kRefined;
  for (int z = 0; z <= kRefined; ++z) {
    for (int y = 0; y <= kRefined; ++y) {
      const float* row = &dense_[dense(first.x(), first.y() + y, first.z() + z)];
      if (std::any_of(row, row + kRefined + 1, [near](float d) { return std::abs(d) < near; })) return true;
    }
  }
  return false;
}

void LevelSetBuilder::fillBricks() {
  const Vector3i size = grid_.size_;
  for (int z = 0; z + 1 < size.z(); ++z) {
    for (int y = 0; y + 1 < size.y(); ++y) {
      for (int x = 0; x + 1 < size.x(); ++x) {
        const std::size_t node = grid_.node(x, y, z);
        // No sample of a cell is farther than its diagonal from its first.
        if (std::abs(grid_.nodes_[node].distance) > (1.74F * kRefined + LevelSetGrid::kBand) * grid_.voxel_) continue;
        if (atSurface({x, y, z})) fillBrick({x, y, z}, node);
      }
    }
  }
  grid_.fine_.shrink_to_fit();
}

void LevelSetBuilder::fillBrick(const Vector3i& cell, std::size_t node) {
  grid_.nodes_[node].brick = static_cast<std::int32_t>(grid_.fine_.size() / LevelSetGrid::kBrick);
  const float unit = LevelSetGrid::kStep * grid_.voxel_;
  const float exact = LevelSetGrid::kBand * grid_.voxel_;
  const LevelSetGrid::Known known = grid_.knownAt(node);
  for (int z = 0; z <= kRefined; ++z) {
    for (int y = 0; y <= kRefined; ++y) {
      for (int x = 0; x <= kRefined; ++x) {
        const Vector3i at = cell * kRefined + Vector3i(x, y, z);
        float value = dense_[dense(at.x(), at.y(), at.z())];
        if (std::abs(value) > exact) {
          const Vector3f p = place(at.x(), at.y(), at.z(), grid_.voxel_);
          value = std::copysign(grid_.distanceFrom(known, p), value);
        }
        grid_.fine_.push_back(static_cast<std::int16_t>(std::clamp(std::round(value / unit), -32767.0F, 32767.0F)));
      }
    }
  }
}

namespace {

using Eigen::Vector2d;
using Eigen::Vector3f;

Vector2d flat(const Vector3f& p) { return p.tail<2>().cast<double>(); }

/// Whether p lies to the left of the edge from a to b, in the plane of y and z. Always worked out in the same direction
/// of the edge, so that its two triangles agree to the last bit.
bool leftOf(std::uint32_t a, std::uint32_t b, const TriangleMesh& mesh, const Vector2d& p) {
  const bool turned = b < a;
  const Vector2d start = flat(mesh.positions[turned ? b : a]);
  const Vector2d way = flat(mesh.positions[turned ? a : b]) - start;
  const Vector2d to = p - start;
  return (way.x() * to.y() - way.y() * to.x() > 0) != turned;
}

struct Span {
  int first, last;
};

Span spanOf(float least, float most, float start, float spacing, int count) {
  return {std::max(0, static_cast<int>(std::floor((least - start) / spacing))),
          std::min(count - 1, static_cast<int>(std::ceil((most - start) / spacing)))};
}

void addTriangle(const TriangleMesh& mesh, const std::array<std::uint32_t, 3>& t, const LineGrid& lines,
                 std::vector<Crossing>& out) {
  const Vector3f &a = mesh.positions[t[0]], &b = mesh.positions[t[1]], &c = mesh.positions[t[2]];
  const Eigen::Vector3d normal = (b - a).cast<double>().cross((c - a).cast<double>());
  const Vector3f least = a.cwiseMin(b).cwiseMin(c), most = a.cwiseMax(b).cwiseMax(c);
  const Span y = spanOf(least.y(), most.y(), lines.y, lines.spacing, lines.countY);
  const Span z = spanOf(least.z(), most.z(), lines.z, lines.spacing, lines.countZ);
  for (int k = z.first; k <= z.last; ++k) {
    for (int j = y.first; j <= y.last; ++j) {
      const Vector2d p(lines.y + static_cast<float>(j) * lines.spacing,
                       lines.z + static_cast<float>(k) * lines.spacing);
      const bool left = leftOf(t[0], t[1], mesh, p);
      if (leftOf(t[1], t[2], mesh, p) != left || leftOf(t[2], t[0], mesh, p) != left) continue;
      const Vector2d to = p - flat(a);
      const double x = a.x() - (normal.y() * to.x() + normal.z() * to.y()) / normal.x();
      out.push_back({static_cast<std::uint32_t>(k * lines.countY + j),
                     std::clamp(static_cast<float>(x), least.x(), most.x()), left ? -1 : 1});
    }
  }
}

}  // namespace

std::vector<Crossing> crossings(const TriangleMesh& mesh, const LineGrid& lines) {
  std::vector<Crossing> out;
  for (const auto& t : mesh.triangles) addTriangle(mesh, t, lines, out);
  std::sort(out.begin(), out.end(),
            [](const Crossing& a, const Crossing& b) { return a.line != b.line ? a.line < b.line : a.x < b.x; });
  return out;
}

}  // namespace zyga::solid
