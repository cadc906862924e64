#pragma once

#include <Eigen/Geometry>
#include <algorithm>
#include <array>

namespace zyga::solid {

/// A triangle made ready for being asked how far points are from it.
struct DistanceTriangle {
  explicit DistanceTriangle(const std::array<Eigen::Vector3f, 3>& corners);

  /// Squared distance. The nearest point lies on an edge, or on the face where p projects into it; slivers too thin for
  /// a normal are their edges.
  float squaredDistance(float x, float y, float z) const {
    float least = 1e30F;
    bool within = area > 0;
    for (std::size_t k = 0; k < 3; ++k) {
      const float px = x - corner[k].x(), py = y - corner[k].y(), pz = z - corner[k].z();
      const float along = px * edge[k].x() + py * edge[k].y() + pz * edge[k].z();
      const float t = std::min(std::max(along * edgeScale[k], 0.0F), 1.0F);
      const float dx = px - t * edge[k].x(), dy = py - t * edge[k].y(), dz = pz - t * edge[k].z();
      least = std::min(least, dx * dx + dy * dy + dz * dz);
      within = within & (px * inward[k].x() + py * inward[k].y() + pz * inward[k].z() >= 0);
    }
    const float height =
        (x - corner[0].x()) * normal.x() + (y - corner[0].y()) * normal.y() + (z - corner[0].z()) * normal.z();
    return within ? height * height : least;
  }
  float squaredDistance(const Eigen::Vector3f& p) const { return squaredDistance(p.x(), p.y(), p.z()); }
  Eigen::AlignedBox3f box() const;

  std::array<Eigen::Vector3f, 3> corner, edge, inward;  ///< edge k runs from corner k to the next
  std::array<float, 3> edgeScale{};                     ///< 1 / squared length, 0 for no length
  Eigen::Vector3f normal = Eigen::Vector3f::Zero();     ///< unit
  float area = 0;                                       ///< twice the area, 0 for a sliver
};

}  // namespace zyga::solid
