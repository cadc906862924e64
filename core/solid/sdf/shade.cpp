#include <algorithm>
#include <cmath>
#include <map>

#include "core/solid/sdf/gradient.h"
#include "core/solid/sdf/mesher.h"

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

}  // namespace zyga::solid
