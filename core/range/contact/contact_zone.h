#pragma once

#include <Eigen/Geometry>
#include <vector>

namespace zyga::range {

/// A part of space around a joint, in one bone's frame, that contact leaves to the joint: a box, or the ellipsoid in
/// it.
struct ContactZone {
  Eigen::Isometry3f X_ZB = Eigen::Isometry3f::Identity();  ///< into the zone's frame, origin in its middle
  Eigen::Vector3f half = Eigen::Vector3f::Zero();          ///< half its size along its axes, m
  bool round = false;                                      ///< the ellipsoid instead of the box

  bool holds(const Eigen::Vector3f& p_B) const;
};

using ContactZones = std::vector<ContactZone>;

/// Whether any of the zones holds the point.
bool holds(const ContactZones& zones, const Eigen::Vector3f& p_B);

}  // namespace zyga::range
