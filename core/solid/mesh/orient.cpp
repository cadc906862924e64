#include "core/solid/mesh/orient.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace zyga::solid {

namespace {

constexpr std::uint32_t kNoOther = ~0u;
/// Triangles looked at in all to find out which surface lies in which: beyond it, each is taken for itself. A bone has
/// a handful of surfaces; a cloud of thousands of scraps would take for ever.
constexpr std::size_t kMostLooks = 40'000'000;

/// The side across each side's edge where exactly two triangles share it.
std::vector<std::uint32_t> partners(const TriangleMesh& mesh, const EdgeTable& edges) {
  std::vector<std::uint32_t> partner(3 * mesh.triangles.size(), kNoOther);
  edges.forEachEdge([&](std::uint32_t, std::span<const EdgeTable::Use> uses) {
    if (uses.size() != 2) return;
    partner[uses[0].side] = uses[1].side;
    partner[uses[1].side] = uses[0].side;
  });
  return partner;
}

struct Surface {
  std::vector<std::uint32_t> triangles;
  Eigen::AlignedBox3d box;
  double volume = 0, area = 0;
  bool insideOut = false;
};

/// Walks over one surface, turning what disagrees with where it comes from.
class Walker {
 public:
  Walker(TriangleMesh& mesh, const EdgeTable& edges)
      : mesh_(mesh), partner_(partners(mesh, edges)), turned_(mesh.triangles.size(), kUnseen) {}

  std::vector<Surface> surfaces() {
    std::vector<Surface> all;
    for (std::uint32_t t = 0; t < turned_.size(); ++t)
      if (turned_[t] == kUnseen) all.push_back(walk(t));
    return all;
  }

  /// The walk needs the mesh as it was found, so that triangles are turned over after it.
  void apply() {
    for (const std::uint32_t t : turns_) std::swap(mesh_.triangles[t][1], mesh_.triangles[t][2]);
  }

  std::size_t turned() const { return turns_.size(); }
  std::size_t twisted() const { return twisted_ / 2; }

 private:
  enum Seen : char { kUnseen, kKept, kTurned };

  Surface walk(std::uint32_t from) {
    Surface surface;
    surface.triangles.push_back(from);
    turned_[from] = kKept;
    std::size_t over = 0;
    for (std::size_t i = 0; i < surface.triangles.size(); ++i) {
      const std::uint32_t t = surface.triangles[i];
      over += turned_[t] == kTurned;
      for (std::uint32_t side = 3 * t; side < 3 * t + 3; ++side) cross(side, surface.triangles);
    }
    settle(surface, over);
    return surface;
  }

  /// As the mesh was found, neighbours agree when they run through their edge in opposite senses.
  void cross(std::uint32_t side, std::vector<std::uint32_t>& reached) {
    const std::uint32_t other = partner_[side];
    if (other == kNoOther) return;
    const bool agree = startOf(mesh_, side) == endOf(mesh_, other);
    const Seen wanted = (turned_[side / 3] == kKept) == agree ? kKept : kTurned;
    if (turned_[other / 3] == kUnseen) {
      turned_[other / 3] = wanted;
      reached.push_back(other / 3);
    } else if (turned_[other / 3] != wanted) {
      ++twisted_;
    }
  }

  /// The greater part keeps its sense.
  void settle(const Surface& surface, std::size_t over) {
    const Seen odd = 2 * over > surface.triangles.size() ? kKept : kTurned;
    for (const std::uint32_t t : surface.triangles)
      if (turned_[t] == odd) turns_.push_back(t);
  }

  TriangleMesh& mesh_;
  std::vector<std::uint32_t> partner_;
  std::vector<Seen> turned_;
  std::vector<std::uint32_t> turns_;
  std::size_t twisted_ = 0;
};

Eigen::Vector3d corner(const TriangleMesh& mesh, std::uint32_t t, std::size_t i) {
  return mesh.positions[mesh.triangles[t][i]].cast<double>();
}

/// Volume under the cone from the middle of the surface's box, so that holes matter little; and area.
void measure(const TriangleMesh& mesh, Surface& surface) {
  for (const std::uint32_t t : surface.triangles)
    for (std::size_t i = 0; i < 3; ++i) surface.box.extend(corner(mesh, t, i));
  const Eigen::Vector3d o = surface.box.center();
  for (const std::uint32_t t : surface.triangles) {
    const Eigen::Vector3d a = corner(mesh, t, 0) - o, b = corner(mesh, t, 1) - o, c = corner(mesh, t, 2) - o;
    surface.volume += a.dot(b.cross(c)) / 6;
    surface.area += (b - a).cross(c - a).norm() / 2;
  }
}

/// A sheet encloses nothing; rounding must not decide its side. A sphere has V = 0.094 A^1.5.
bool enclosesNegative(const Surface& surface) { return surface.volume < -1e-4 * std::pow(surface.area, 1.5); }

/// How often the surface winds round the point: the sum of solid angles over 4 pi (van Oosterom & Strackee 1983, IEEE
/// Trans. Biomed. Eng. 30:125). Near 1 or -1 inside, also where the surface has small holes.
double winding(const TriangleMesh& mesh, const Surface& surface, const Eigen::Vector3d& p) {
  double angle = 0;
  for (const std::uint32_t t : surface.triangles) {
    const Eigen::Vector3d a = corner(mesh, t, 0) - p, b = corner(mesh, t, 1) - p, c = corner(mesh, t, 2) - p;
    const double la = a.norm(), lb = b.norm(), lc = c.norm();
    angle += 2 * std::atan2(a.dot(b.cross(c)), la * lb * lc + a.dot(b) * lc + b.dot(c) * la + c.dot(a) * lb);
  }
  return angle / (4 * std::numbers::pi);
}

/// The smallest surface that encloses this one, by index; kNoOther when there is none.
class Nesting {
 public:
  Nesting(const TriangleMesh& mesh, const std::vector<Surface>& surfaces) : mesh_(mesh), surfaces_(surfaces) {
    for (std::uint32_t i = 0; i < surfaces.size(); ++i) bySize_.push_back(i);
    std::sort(bySize_.begin(), bySize_.end(),
              [&](auto a, auto b) { return surfaces[a].box.volume() > surfaces[b].box.volume(); });
  }

  const std::vector<std::uint32_t>& largestFirst() const { return bySize_; }

  std::uint32_t around(std::uint32_t inner) {
    const Eigen::Vector3d p = corner(mesh_, surfaces_[inner].triangles.front(), 0);
    std::uint32_t best = kNoOther;
    for (const std::uint32_t outer : bySize_) {
      if (outer == inner) break;  // the rest are smaller
      if (looks_ > kMostLooks || !surfaces_[outer].box.contains(surfaces_[inner].box)) continue;
      looks_ += surfaces_[outer].triangles.size();
      if (std::abs(winding(mesh_, surfaces_[outer], p)) > 0.5) best = outer;
    }
    return best;
  }

 private:
  const TriangleMesh& mesh_;
  const std::vector<Surface>& surfaces_;
  std::vector<std::uint32_t> bySize_;
  std::size_t looks_ = 0;
};

void turnOver(TriangleMesh& mesh, const Surface& surface) {
  for (const std::uint32_t t : surface.triangles) std::swap(mesh.triangles[t][1], mesh.triangles[t][2]);
}

}  // namespace

Orientation orientOutwards(TriangleMesh& mesh, const EdgeTable& edges) {
  Walker walker(mesh, edges);
  std::vector<Surface> surfaces = walker.surfaces();
  walker.apply();
  Orientation out{walker.turned(), 0, walker.twisted(), surfaces.size(), 0};
  for (Surface& surface : surfaces) measure(mesh, surface);
  Nesting nesting(mesh, surfaces);
  for (const std::uint32_t i : nesting.largestFirst()) {
    Surface& surface = surfaces[i];
    const std::uint32_t around = nesting.around(i);
    surface.insideOut = around == kNoOther ? enclosesNegative(surface) : surfaces[around].insideOut;
    if (around != kNoOther && surface.insideOut != enclosesNegative(surface)) ++out.cavities;
  }
  for (const Surface& surface : surfaces) {
    if (!surface.insideOut) continue;
    ++out.insideOut;
    turnOver(mesh, surface);
  }
  return out;
}

}  // namespace zyga::solid
