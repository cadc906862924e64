#pragma once

#include <Eigen/Geometry>
#include <array>
#include <cstdint>
#include <limits>
#include <memory>
#include <vector>

#include "core/anatomy/signed_distance.h"

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

/// Points of a surface in a tree of bounding spheres, so that the one deepest inside another bone is found without
/// asking for all of them.
class ContactTree {
 public:
  struct Node {
    Eigen::Vector3f centre = Eigen::Vector3f::Zero();
    float radius = 0;
    std::uint32_t first = 0;  ///< first point of a leaf, or the first child; the second follows it
    std::uint32_t count = 0;  ///< points of a leaf, 0 for a fork
  };

  explicit ContactTree(std::vector<Eigen::Vector3f> points);

  bool empty() const { return points_.empty(); }
  const std::vector<Node>& nodes() const { return nodes_; }
  const std::vector<Eigen::Vector3f>& points() const { return points_; }

 private:
  void build(std::size_t node, std::uint32_t first, std::uint32_t end);

  std::vector<Eigen::Vector3f> points_;  ///< in tree order
  std::vector<Node> nodes_;
};

/// What contact needs to know of a bone's surface: distances around it, points on it, and where it is left to its
/// joints, all in the bone's frame. Immutable and cheap to copy.
struct ContactShape {
  ContactShape() = default;
  explicit ContactShape(std::shared_ptr<const anatomy::SignedDistance> bone, ContactZones leftOut = {});

  explicit operator bool() const { return field != nullptr; }

  std::shared_ptr<const anatomy::SignedDistance> field;
  ContactZones zones;                       ///< what lies in one of them does not count
  std::shared_ptr<const ContactTree> tree;  ///< the surface's points outside the zones
};

/// Cube root of the volume of the box about the surface's points outside the zones, m; see ContactTolerance.
double meanExtent(const ContactShape& shape);

/// How two bones meet: `distance` is minus the deepest entry of either's surface into the other, or the least clearance
/// (m).
struct ContactMeeting {
  float distance = std::numeric_limits<float>::infinity();
  Eigen::Vector3f p_A = Eigen::Vector3f::Zero();  ///< the place, in the first bone's frame
  bool onA = false;                               ///< the place is on the first bone's surface, else on the second's
};

/// Nearest or deepest place of two bones, both surfaces against the other's field, true to the coarser field's
/// resolution. Meetings at `within` (m) or farther are not looked for; the distance then stays infinite. Points deeper
/// than the deepest by less than `slack` voxels may be passed over.
ContactMeeting contactDepth(const ContactShape& a, const ContactShape& b, const Eigen::Isometry3f& X_AB,
                            float within = std::numeric_limits<float>::infinity(), float slack = 0.5F);

/// Whether any point of either surface lies inside the other bone: contactDepth().distance < 0, sooner.
bool touch(const ContactShape& a, const ContactShape& b, const Eigen::Isometry3f& X_AB);

}  // namespace zyga::range
