#include <meshoptimizer.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

#include "core/solid/sdf/collapse.h"
#include "core/solid/sdf/mesher.h"

namespace zyga::solid {

namespace {

/// The mesh's vertices that the given triangles use, with all they carry.
TriangleMesh withTriangles(const TriangleMesh& mesh, const std::vector<std::array<std::uint32_t, 3>>& triangles) {
  constexpr std::uint32_t kUnused = ~0u;
  std::vector<std::uint32_t> renumbered(mesh.positions.size(), kUnused);
  TriangleMesh out;
  out.triangles = triangles;
  for (auto& t : out.triangles)
    for (std::uint32_t& v : t) {
      const std::uint32_t old = v;
      if (renumbered[old] == kUnused) {
        renumbered[old] = static_cast<std::uint32_t>(out.positions.size());
        out.positions.push_back(mesh.positions[old]);
        if (!mesh.normals.empty()) out.normals.push_back(mesh.normals[old]);
        if (!mesh.occlusion.empty()) out.occlusion.push_back(mesh.occlusion[old]);
      }
      v = renumbered[old];
    }
  return out;
}

bool sound(const TriangleMesh& mesh, std::size_t components) {
  const MeshHealth health = examine(mesh);
  return health.closed && health.oriented && health.components == components && health.volume > 0;
}

std::vector<std::array<std::uint32_t, 3>> fewerTriangles(const TriangleMesh& mesh, std::size_t triangles) {
  std::vector<std::array<std::uint32_t, 3>> kept(mesh.triangles.size());
  const std::size_t count = meshopt_simplify(kept.data()->data(), mesh.triangles.data()->data(), 3 * kept.size(),
                                             mesh.positions.data()->data(), mesh.positions.size(),
                                             sizeof(Eigen::Vector3f), 3 * triangles, 1.0f, 0, nullptr);
  kept.resize(count / 3);
  return kept;
}

}  // namespace

/// The quick simplifier does not promise a manifold. A slightly smaller target often gives one where the first did not;
/// else the careful one takes over.
TriangleMesh simplified(const TriangleMesh& mesh, std::size_t triangles, const std::atomic<bool>* cancel) {
  if (mesh.triangles.size() <= triangles) return mesh;
  const std::size_t components = examine(mesh).components;
  for (const double share : {1.0, 0.97, 0.93}) {
    const auto target = static_cast<std::size_t>(share * static_cast<double>(triangles));
    TriangleMesh quick = withTriangles(mesh, fewerTriangles(mesh, target));
    if (sound(quick, components)) return quick;
    if (cancel && *cancel) return mesh;
  }
  return withTriangles(mesh, collapseEdges(mesh, triangles, {}, cancel).triangles);
}

namespace {

constexpr double kBeside = 1.38;  ///< the surface is flat out to this share of a flat part's half extents

struct InPart {
  double radius;  ///< 1 on the part's rim
  double height;  ///< over its plane, m
};

InPart placeIn(const FlatPart& part, const Eigen::Vector3f& position) {
  const Point q = position.cast<double>() - part.centre;
  return {std::hypot(q.dot(part.along) / part.halfAlong, q.dot(part.normal.cross(part.along)) / part.halfAcross),
          q.dot(part.normal)};
}

/// Puts vertices that lie almost in the plane of a flat part into it: where edges were cut off a little.
void flatten(TriangleMesh& mesh, const std::vector<FlatPart>& parts) {
  for (const FlatPart& part : parts)
    for (Eigen::Vector3f& position : mesh.positions) {
      const InPart place = placeIn(part, position);
      if (place.radius < kBeside && std::abs(place.height) < 0.1 * part.halfAlong)
        position = (position.cast<double>() - place.height * part.normal).cast<float>();
    }
}

/// The vertices around the flat parts: as long as they stay, no triangle that leaves the plane reaches into a part.
std::vector<bool> ringsAround(const TriangleMesh& mesh, const std::vector<FlatPart>& parts) {
  std::vector<bool> rings(mesh.positions.size(), false);
  for (const FlatPart& part : parts)
    for (std::size_t i = 0; i < mesh.positions.size(); ++i) {
      const InPart place = placeIn(part, mesh.positions[i]);
      if (place.radius > 0.9 && place.radius < kBeside && std::abs(place.height) < 1e-5) rings[i] = true;
    }
  return rings;
}

/// Distance from the origin to a segment of the plane.
double distanceToSegment(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
  const Eigen::Vector2d e = b - a;
  const double t = std::clamp(-a.dot(e) / std::max(e.squaredNorm(), 1e-18), 0.0, 1.0);
  return (a + t * e).norm();
}

/// Whether a triangle that leaves the plane of the part beside it reaches into the part.
bool intruded(const TriangleMesh& mesh, const FlatPart& part) {
  constexpr double kOff = 2e-5;
  const Point across = part.normal.cross(part.along);
  std::vector<Eigen::Vector2d> flat;
  std::vector<double> height;
  for (const Eigen::Vector3f& position : mesh.positions) {
    const Point q = position.cast<double>() - part.centre;
    flat.emplace_back(q.dot(part.along) / part.halfAlong, q.dot(across) / part.halfAcross);
    height.push_back(std::abs(q.dot(part.normal)));
  }
  const auto isOn = [&](std::uint32_t v) { return height[v] < kOff && flat[v].norm() < kBeside; };
  return std::any_of(mesh.triangles.begin(), mesh.triangles.end(), [&](const auto& t) {
    if (!isOn(t[0]) && !isOn(t[1]) && !isOn(t[2])) return false;
    if (height[t[0]] < kOff && height[t[1]] < kOff && height[t[2]] < kOff) return false;
    return std::min({distanceToSegment(flat[t[0]], flat[t[1]]), distanceToSegment(flat[t[1]], flat[t[2]]),
                     distanceToSegment(flat[t[2]], flat[t[0]])}) < 1;
  });
}

TriangleMesh collapsedAroundParts(TriangleMesh mesh, std::size_t budget, const std::vector<FlatPart>& flat) {
  flatten(mesh, flat);
  return withTriangles(mesh, collapseEdges(mesh, budget, ringsAround(mesh, flat)).triangles);
}

/// First level: the bulk is taken away quickly, the rest with the flat parts kept whole. Where the quick step has
/// already bitten into a part, everything is done the careful way.
TriangleMesh finestLevel(const TriangleMesh& fine, std::size_t budget, const std::vector<FlatPart>& flat) {
  if (flat.empty()) return simplified(fine, budget);
  const TriangleMesh quick = collapsedAroundParts(simplified(fine, 3 * budget), budget, flat);
  const bool whole =
      std::none_of(flat.begin(), flat.end(), [&](const FlatPart& part) { return intruded(quick, part); });
  return whole ? quick : collapsedAroundParts(fine, budget, flat);
}

/// How far a place looks round for what takes its light, m.
double reachOfShade(const Shape& shape) {
  const Eigen::Vector3d size = shape.bounds().diagonal();
  std::array<double, 3> extents{size.x(), size.y(), size.z()};
  std::sort(extents.begin(), extents.end());
  return 0.25 * extents[1];
}

}  // namespace

BoneMesh meshLikeness(const Shape& shape) {
  constexpr double kVoxels = 44;  // along the diagonal
  BoneMesh bone;
  if (shape.bounds().isEmpty()) return bone;
  TriangleMesh mesh = meshSurface(shape, shape.bounds().diagonal().norm() / kVoxels);
  if (mesh.empty()) return bone;
  shade(shape, mesh, reachOfShade(shape));
  bone.levels.push_back(std::move(mesh));
  return bone;
}

BoneMesh meshLevels(const Shape& shape, std::size_t triangleBudget, const std::vector<FlatPart>& flat) {
  BoneMesh bone;
  // Vertebrae, which have thin sheets and sharp pads, start from a finer surface.
  const std::size_t fineness = flat.empty() ? 4 : 6;
  const TriangleMesh fine = meshSurface(shape, voxelFor(shape, fineness * triangleBudget));
  if (fine.empty()) return bone;
  bone.levels.push_back(finestLevel(fine, triangleBudget, flat));
  shade(shape, bone.levels[0], reachOfShade(shape));
  flatten(bone.levels[0], flat);
  for (const std::size_t share : {4, 16}) bone.levels.push_back(simplified(bone.levels.back(), triangleBudget / share));
  return bone;
}

}  // namespace zyga::solid
