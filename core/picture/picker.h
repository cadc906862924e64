#pragma once

#include <memory>
#include <optional>

#include "core/picture/picture.h"

namespace zyga::picture {

struct Hit {
  std::size_t instance = 0;
  double distance = 0;  ///< m along the ray
  Eigen::Vector3d p_W = Eigen::Vector3d::Zero();
  Eigen::Vector3d normal_W = Eigen::Vector3d::UnitZ();
};

/// Finds the bone under the pointer exactly. Meshes are given once; moving the bones is cheap.
class Picker {
 public:
  explicit Picker(const std::vector<std::shared_ptr<const solid::TriangleMesh>>& meshes);
  ~Picker();
  Picker(Picker&&) noexcept;
  Picker& operator=(Picker&&) noexcept;

  /// Frames by instance, same order as the meshes.
  void move(const std::vector<Eigen::Isometry3d>& X_WB);
  /// Nearest hit along the ray (unit direction, world, m).
  std::optional<Hit> pick(const Eigen::Vector3d& p_WOrigin, const Eigen::Vector3d& direction_W) const;

 private:
  struct Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace zyga::picture
