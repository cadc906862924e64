#pragma once

#include <Eigen/Geometry>
#include <memory>

#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::test {

/// One bone as FCL sees it (Pan, Chitta & Manocha 2012, "FCL: a general purpose library for collision and proximity
/// queries", ICRA): its surface alone, so that a bone wholly inside another does not collide with it.
class FclBone {
 public:
  explicit FclBone(const solid::TriangleMesh& mesh);
  ~FclBone();
  FclBone(FclBone&&) noexcept;

  /// Least distance of the surfaces, m; nothing useful where they collide.
  float distance(const FclBone& other, const Eigen::Isometry3f& X_ThisOther) const;
  bool collides(const FclBone& other, const Eigen::Isometry3f& X_ThisOther) const;

 private:
  struct Model;
  std::unique_ptr<Model> model_;
};

}  // namespace zyga::test
