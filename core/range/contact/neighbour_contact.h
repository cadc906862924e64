#pragma once

#include <Eigen/Geometry>

#include "core/anatomy/specimen.h"
#include "core/range/assumptions.h"

namespace zyga::range {

/// What of a bone touches another. Only vertebrae are told apart; of other bones it is the bone.
enum class BonePart { Bone, Spine, Zygapophysis, TransverseProcess, Rib, Arch, Centrum };

struct PartOfBone {
  anatomy::BoneIndex bone;
  BonePart part = BonePart::Bone;
  bool operator==(const PartOfBone&) const = default;
};

/// Two parts that touch. Where one enters the other, the entering one is the first.
struct TouchingParts {
  PartOfBone first, second;
  bool operator==(const TouchingParts&) const = default;
};

/// What of a bone a place on its surface belongs to; `p_B` in the bone's frame, m.
BonePart partAt(const anatomy::Bone& bone, const Eigen::Vector3d& p_B);

/// Where bones enter each other deepest, measured by what is tolerated of them.
struct ContactPlace {
  double depth = 0;      ///< m; 0 and below: nothing touches
  TouchingParts parts;   ///< of use only where something touches
  double tolerated = 0;  ///< m, of these two bones

  /// m past what is tolerated; negative within it.
  double excess() const { return depth - tolerated; }
  bool beyond() const { return depth > tolerated; }
};

/// Knows how deep the two bones of a joint, and what has grown onto them, enter each other away from their articulating
/// surfaces. Searches ask it sparingly: a question may take a hundred times as long as the facets do. May be asked from
/// several threads at once.
class NeighbourContact {
 public:
  virtual ~NeighbourContact() = default;
  /// `X_PD`: the distal bone's frame in the proximal bone's frame. Where several pairs of bones touch, the one that is
  /// farthest past its tolerance.
  virtual ContactPlace deepest(anatomy::JointIndex joint, const Eigen::Isometry3d& X_PD,
                               const ContactTolerance& tolerance) const = 0;
  /// deepest().beyond(), by a sooner way where there is one.
  virtual bool entersBeyond(anatomy::JointIndex joint, const Eigen::Isometry3d& X_PD,
                            const ContactTolerance& tolerance) const {
    return deepest(joint, X_PD, tolerance).beyond();
  }
};

}  // namespace zyga::range
