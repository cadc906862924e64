#include "core/picture/picker.h"

#include "core/picture/bone_scene.h"

namespace zyga::picture {

struct Picker::Impl {
  BoneScene scene;
};

namespace {

/// The mesh's triangle at the hit, met again in double precision: where the ray crosses its plane.
Hit refine(const BoneScene& scene, const SurfaceHit& found, const Eigen::Vector3d& p_WOrigin,
           const Eigen::Vector3d& direction_W) {
  const solid::TriangleMesh& mesh = *scene.meshes()[found.instance];
  const Eigen::Isometry3d& X_WB = scene.frames()[found.instance];
  const auto corner = [&](int i) -> Eigen::Vector3d {
    return X_WB * mesh.positions[mesh.triangles[found.triangle][static_cast<std::size_t>(i)]].cast<double>();
  };
  const Eigen::Vector3d a = corner(0);
  const Eigen::Vector3d normal = (corner(1) - a).cross(corner(2) - a);
  const double closing = normal.dot(direction_W);
  Hit hit;
  hit.instance = found.instance;
  // Seen edge-on the plane tells nothing better than the first answer.
  hit.distance = std::abs(closing) > 1e-3 * normal.norm() ? normal.dot(a - p_WOrigin) / closing
                                                          : static_cast<double>(found.distance);
  hit.p_W = p_WOrigin + hit.distance * direction_W;
  hit.normal_W = found.normal_W.cast<double>().normalized();
  return hit;
}

}  // namespace

Picker::Picker(const std::vector<std::shared_ptr<const solid::TriangleMesh>>& meshes)
    : impl_(new Impl{BoneScene(meshes, std::vector<Eigen::Isometry3d>(meshes.size(), Eigen::Isometry3d::Identity()),
                               BoneScene::Build::Fast)}) {}

Picker::~Picker() = default;
Picker::Picker(Picker&&) noexcept = default;
Picker& Picker::operator=(Picker&&) noexcept = default;

void Picker::move(const std::vector<Eigen::Isometry3d>& X_WB) { impl_->scene.move(X_WB); }

std::optional<Hit> Picker::pick(const Eigen::Vector3d& p_WOrigin, const Eigen::Vector3d& direction_W) const {
  const auto found = impl_->scene.nearest({p_WOrigin.cast<float>(), direction_W.cast<float>()});
  if (!found) return std::nullopt;
  return refine(impl_->scene, *found, p_WOrigin, direction_W);
}

}  // namespace zyga::picture
