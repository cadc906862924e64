#include "core/solid/levelset/level_set_triangle.h"

namespace zyga::solid {

using Eigen::Vector3f;

DistanceTriangle::DistanceTriangle(const std::array<Vector3f, 3>& corners) : corner(corners) {
  float longest = 0;
  for (std::size_t k = 0; k < 3; ++k) {
    edge[k] = corner[(k + 1) % 3] - corner[k];
    const float squared = edge[k].squaredNorm();
    edgeScale[k] = squared > 0 ? 1 / squared : 0;
    longest = std::max(longest, squared);
  }
  const Vector3f cross = edge[0].cross(edge[1]);
  const float doubled = cross.norm();
  if (doubled <= 1e-5F * longest) {
    inward.fill(Vector3f::Zero());
    return;
  }
  area = doubled;
  normal = cross / doubled;
  for (std::size_t k = 0; k < 3; ++k) inward[k] = normal.cross(edge[k]);
}

Eigen::AlignedBox3f DistanceTriangle::box() const {
  Eigen::AlignedBox3f box;
  for (const Vector3f& c : corner) box.extend(c);
  return box;
}

}  // namespace zyga::solid
