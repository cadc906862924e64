#include "core/solid/sdf/levels.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <map>

#include "core/solid/mesh/simplify.h"
#include "core/solid/sdf/mesher.h"
#include "core/solid/sdf/node.h"

namespace zyga::solid {

namespace {

using Key = std::array<int, 3>;

/// Vertices by place, so that each group can use a field pruned to its surroundings.
std::map<Key, std::vector<std::uint32_t>> byPlace(const TriangleMesh& mesh, double side) {
  std::map<Key, std::vector<std::uint32_t>> groups;
  for (std::size_t i = 0; i < mesh.positions.size(); ++i) {
    const Eigen::Vector3d q = (mesh.positions[i].cast<double>() / side).array().floor();
    groups[{static_cast<int>(q.x()), static_cast<int>(q.y()), static_cast<int>(q.z())}].push_back(
        static_cast<std::uint32_t>(i));
  }
  return groups;
}

struct Group {
  std::vector<std::uint32_t> vertices;
  std::vector<Point> points;
  std::vector<float> slope;
  Point middle = Point::Zero();
  double radius = 0;
};

Group makeGroup(const TriangleMesh& mesh, const std::vector<std::uint32_t>& vertices) {
  Group group{vertices, {}, {}, Point::Zero(), 0};
  Box box;
  for (const std::uint32_t v : vertices) {
    group.points.push_back(mesh.positions[v].cast<double>());
    box.extend(group.points.back());
  }
  group.middle = box.center();
  group.radius = box.diagonal().norm() / 2;
  return group;
}

/// Hollows are where the surface is nearer than one has gone out along the normal; near samples lie closer together.
void setOcclusion(const FieldNode& node, const Group& group, double reach, TriangleMesh& mesh) {
  constexpr int kSteps = 5;
  std::vector<float> open(group.points.size(), 0);
  for (int s = 0; s < kSteps; ++s) {
    const double out = reach * std::pow(0.55, kSteps - 1 - s);
    std::vector<Point> moved;
    for (std::size_t i = 0; i < group.points.size(); ++i)
      moved.push_back(group.points[i] + out * mesh.normals[group.vertices[i]].cast<double>());
    const std::vector<float> values = sampleValues(node, moved);
    for (std::size_t i = 0; i < values.size(); ++i)
      open[i] += std::clamp(values[i] / (0.9f * group.slope[i] * static_cast<float>(out)), 0.0f, 1.0f);
  }
  for (std::size_t i = 0; i < open.size(); ++i) mesh.occlusion[group.vertices[i]] = open[i] / kSteps;
}

void settle(const FieldNode& node, Group& group, double step, TriangleMesh& mesh) {
  for (int i = 0; i < 2; ++i) projectOnSurface(node, group.points, step, 2 * step);
  for (std::size_t i = 0; i < group.points.size(); ++i)
    mesh.positions[group.vertices[i]] = group.points[i].cast<float>();
}

/// Also keeps how steep the field is at each vertex: distances along the normal are measured by it.
void setNormals(const FieldNode& node, Group& group, double step, TriangleMesh& mesh) {
  const FieldSamples samples = sampleField(node, group.points, step);
  for (std::size_t i = 0; i < group.points.size(); ++i) {
    group.slope.push_back(std::clamp(samples.gradient[i].norm(), 0.3f, 1.0f));
    if (samples.gradient[i].norm() > 0.05f) mesh.normals[group.vertices[i]] = samples.gradient[i].normalized();
  }
}

}  // namespace

void shade(const Shape& shape, TriangleMesh& mesh, double reach) {
  computeNormals(mesh);
  mesh.occlusion.assign(mesh.positions.size(), 1.0f);
  if (shape.empty() || !(reach > 0)) return;
  const double step = std::clamp(0.02 * reach, 1e-4, 1e-3);
  for (const auto& [key, vertices] : byPlace(mesh, 0.5 * reach)) {
    Group group = makeGroup(mesh, vertices);
    const Shape close = shape.near(group.middle, group.radius + 4 * step, 8 * step);
    settle(*close.node(), group, step, mesh);
    setNormals(*close.node(), group, step, mesh);
    const Shape around = shape.near(group.middle, group.radius + reach, reach);
    setOcclusion(*around.node(), group, reach, mesh);
  }
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

/// The finest level. The quick simplifier takes the mesh down to three times the budget; it knows nothing of flat
/// parts. The careful one does the rest with the vertices around the parts held fast. Where the quick one has already
/// moved a part's border, the careful one does it all.
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

BoneMesh previewMesh(const Shape& shape) {
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
