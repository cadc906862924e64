#include "ui/scans/bench_bone.h"

#include <unordered_map>

#include "core/solid/mesh/display_levels.h"

namespace zyga::ui {

BenchBone::BenchBone(std::shared_ptr<const solid::TriangleMesh> mesh)
    : mesh_(std::move(mesh)), levels_(solid::displayLevels(*mesh_)), picker_({mesh_}) {
  for (const auto& p : mesh_->positions) box_S_.extend(p.cast<double>());
}

std::optional<ScanHit> BenchBone::pick(const Ray& ray, const Eigen::Affine3d& X_WS) const {
  const Eigen::Affine3d X_SW = X_WS.inverse();
  const Eigen::Vector3d direction = (X_SW.linear() * ray.direction_W).normalized();
  // From just before the bone, where single precision is at its best.
  const Eigen::Vector3d origin = X_SW * ray.p_WOrigin;
  const double before = (box_S_.center() - origin).dot(direction) - box_S_.diagonal().norm();
  const Eigen::Vector3d start = origin + std::max(0.0, before) * direction;
  const auto hit = picker_.pick(start, direction);
  if (!hit) return std::nullopt;
  return ScanHit{hit->p_W, hit->normal_W.normalized()};
}

solid::TriangleMesh partOf(const solid::TriangleMesh& mesh, const std::vector<std::uint32_t>& triangles) {
  solid::TriangleMesh part;
  std::unordered_map<std::uint32_t, std::uint32_t> renumbered;
  for (const std::uint32_t t : triangles) {
    auto& out = part.triangles.emplace_back(mesh.triangles[t]);
    for (std::uint32_t& v : out) {
      const auto [at, fresh] = renumbered.try_emplace(v, static_cast<std::uint32_t>(part.positions.size()));
      if (fresh) part.positions.push_back(mesh.positions[v]);
      v = at->second;
    }
  }
  solid::computeNormals(part);
  return part;
}

}  // namespace zyga::ui
