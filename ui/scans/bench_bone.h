#pragma once

#include "core/files/project/project_scan.h"
#include "core/picture/picker.h"
#include "core/solid/sculpt/sculpt.h"
#include "ui/viewport/camera.h"

namespace zyga::ui {

/// Where a ray meets a scan, in the scan's own axes, m.
struct ScanHit {
  Eigen::Vector3d p_S = Eigen::Vector3d::Zero();
  Eigen::Vector3d normal_S = Eigen::Vector3d::UnitZ();  ///< unit, out of the bone
};

/// A scan made ready for the bench: its levels of detail for display, and what finds its surface exactly. Made beside
/// the window.
class BenchBone {
 public:
  explicit BenchBone(std::shared_ptr<const solid::TriangleMesh> mesh);

  const solid::TriangleMesh& mesh() const { return *mesh_; }
  const solid::BoneMesh& levels() const { return levels_; }
  const Eigen::AlignedBox3d& box_S() const { return box_S_; }
  /// `ray` in the world of the bench, X_WS from the scan's axes to it.
  std::optional<ScanHit> pick(const Ray& ray, const Eigen::Affine3d& X_WS) const;

 private:
  std::shared_ptr<const solid::TriangleMesh> mesh_;
  solid::BoneMesh levels_;
  Eigen::AlignedBox3d box_S_;
  picture::Picker picker_;
};

/// The named triangles alone, to be drawn over the mesh.
solid::TriangleMesh partOf(const solid::TriangleMesh& mesh, const std::vector<std::uint32_t>& triangles);

}  // namespace zyga::ui
