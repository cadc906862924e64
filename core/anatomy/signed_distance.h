#pragma once

#include <Eigen/Geometry>
#include <vector>

namespace zyga::anatomy {

/// The space around one bone's surface, in the bone's frame, m; negative inside the bone. Immutable, so that threads
/// may share it.
class SignedDistance {
 public:
  struct Estimate {
    float distance = 0;
    float min = 0;  ///< the signed distance is not below this
  };

  virtual ~SignedDistance() = default;

  /// Quick, and coarse away from the surface: for telling what is worth a closer look. Beyond reach() the
  /// distance to the box.
  virtual Estimate estimate(const Eigen::Vector3f& p_B) const = 0;
  /// Signed distance from the surface, true to resolution() as far as reach() around the surface's box; farther out the
  /// distance to the box.
  virtual float distance(const Eigen::Vector3f& p_B) const = 0;
  virtual float reach() const = 0;
  virtual float resolution() const = 0;
  /// Of the surface.
  virtual const Eigen::AlignedBox3f& box() const = 0;
  /// Points of the surface, gaps between them about two resolution() wide.
  virtual const std::vector<Eigen::Vector3f>& surfacePoints() const = 0;
};

}  // namespace zyga::anatomy
