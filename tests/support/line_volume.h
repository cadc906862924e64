#pragma once

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <map>
#include <vector>

#include "core/solid/watertight/watertight.h"

namespace zyga::test {

/// Volume (m^3) of the union of posed closed meshes, counted along upright lines `step` (m) apart: where a line is
/// inside any of the bones. No fields, no grid cells, no surface of the union: meant to disagree with whoever errs.
class LineVolume {
 public:
  explicit LineVolume(double step) : step_(step) {}

  void add(const solid::TriangleMesh& mesh, const Eigen::Isometry3d& X_WB) {
    const int bone = bones_++;
    for (const auto& t : mesh.triangles) {
      std::array<Eigen::Vector3d, 3> p;
      for (std::size_t k = 0; k < 3; ++k) p[k] = X_WB * mesh.positions[t[k]].cast<double>();
      cross(p, bone);
    }
  }

  double volume() {
    double length = 0;
    for (auto& [line, hits] : hits_) length += inside(hits);
    return length * step_ * step_;
  }

 private:
  struct Hit {
    double z;
    int bone;
    int sign;  ///< 1 into the bone, going up
  };

  /// Lines stand at odd places, so that none runs through an edge.
  double place(long i) const { return (static_cast<double>(i) + 0.31830988) * step_; }
  long first(double x) const { return static_cast<long>(std::ceil(x / step_ - 0.31830988)); }

  void cross(const std::array<Eigen::Vector3d, 3>& p, int bone) {
    const Eigen::Vector2d a = p[0].head<2>(), u = p[1].head<2>() - a, v = p[2].head<2>() - a;
    const double twice = u.x() * v.y() - u.y() * v.x();
    if (std::abs(twice) < 1e-14) return;
    const auto [x0, x1] = std::minmax({p[0].x(), p[1].x(), p[2].x()});
    const auto [y0, y1] = std::minmax({p[0].y(), p[1].y(), p[2].y()});
    for (long i = first(x0); place(i) <= x1; ++i)
      for (long j = first(y0); place(j) <= y1; ++j) {
        const Eigen::Vector2d q(place(i) - a.x(), place(j) - a.y());
        const double s = (q.x() * v.y() - q.y() * v.x()) / twice, t = (u.x() * q.y() - u.y() * q.x()) / twice;
        if (s < 0 || t < 0 || s + t > 1) continue;
        // Counter-clockwise from above faces up: the line leaves there.
        hits_[{i, j}].push_back(
            {p[0].z() + s * (p[1].z() - p[0].z()) + t * (p[2].z() - p[0].z()), bone, twice > 0 ? -1 : 1});
      }
  }

  static double inside(std::vector<Hit>& hits) {
    std::sort(hits.begin(), hits.end(), [](const Hit& a, const Hit& b) { return a.z < b.z; });
    std::map<int, int> winding;
    int within = 0;
    double length = 0;
    for (std::size_t i = 0; i < hits.size(); ++i) {
      if (within > 0) length += hits[i].z - hits[i - 1].z;
      int& w = winding[hits[i].bone];
      const bool before = w > 0;
      w += hits[i].sign;
      within += static_cast<int>(w > 0) - static_cast<int>(before);
    }
    return length;
  }

  double step_;
  int bones_ = 0;
  std::map<std::pair<long, long>, std::vector<Hit>> hits_;
};

}  // namespace zyga::test
