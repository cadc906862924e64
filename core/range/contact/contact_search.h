#pragma once

#include <limits>
#include <memory>

#include "core/anatomy/plan/bone_field.h"
#include "core/range/contact/contact_tree.h"
#include "core/range/contact/contact_zone.h"

namespace zyga::range {

/// What contact needs to know of a bone's surface: distances around it, points on it, and where it is left to its
/// joints, all in the bone's frame. Immutable and cheap to copy.
struct ContactShape {
  ContactShape() = default;
  explicit ContactShape(std::shared_ptr<const anatomy::BoneField> bone, ContactZones leftOut = {});

  explicit operator bool() const { return field != nullptr; }

  std::shared_ptr<const anatomy::BoneField> field;
  ContactZones zones;                       ///< what lies in one of them does not count
  std::shared_ptr<const ContactTree> tree;  ///< the surface's points outside the zones
};

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
ContactMeeting meet(const ContactShape& a, const ContactShape& b, const Eigen::Isometry3f& X_AB,
                    float within = std::numeric_limits<float>::infinity(), float slack = 0.5F);

/// Whether any point of either surface lies inside the other bone: meet().distance < 0, sooner.
bool touch(const ContactShape& a, const ContactShape& b, const Eigen::Isometry3f& X_AB);

}  // namespace zyga::range
