#include "tests/support/fcl_bone.h"

#include <fcl/geometry/bvh/BVH_model.h>
#include <fcl/narrowphase/collision.h>
#include <fcl/narrowphase/distance.h>

namespace zyga::test {

struct FclBone::Model {
  fcl::BVHModel<fcl::OBBRSSd> mesh;
};

FclBone::FclBone(const solid::TriangleMesh& mesh) : model_(std::make_unique<Model>()) {
  std::vector<fcl::Triangle> triangles;
  triangles.reserve(mesh.triangles.size());
  for (const auto& t : mesh.triangles) triangles.emplace_back(t[0], t[1], t[2]);
  std::vector<fcl::Vector3d> positions;
  positions.reserve(mesh.positions.size());
  for (const auto& p : mesh.positions) positions.push_back(p.cast<double>());
  model_->mesh.beginModel();
  model_->mesh.addSubModel(positions, triangles);
  model_->mesh.endModel();
}

FclBone::~FclBone() = default;
FclBone::FclBone(FclBone&&) noexcept = default;

float FclBone::distance(const FclBone& other, const Eigen::Isometry3f& X_ThisOther) const {
  fcl::DistanceResultd result;
  fcl::distance(&model_->mesh, fcl::Transform3d::Identity(), &other.model_->mesh, X_ThisOther.cast<double>(),
                fcl::DistanceRequestd(true), result);
  return static_cast<float>(result.min_distance);
}

bool FclBone::collides(const FclBone& other, const Eigen::Isometry3f& X_ThisOther) const {
  fcl::CollisionResultd result;
  return fcl::collide(&model_->mesh, fcl::Transform3d::Identity(), &other.model_->mesh, X_ThisOther.cast<double>(),
                      fcl::CollisionRequestd(), result) > 0;
}

}  // namespace zyga::test
