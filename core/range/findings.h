#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <vector>

#include "core/kinematics/placement.h"
#include "core/range/assumptions.h"
#include "core/range/contact/neighbour_contact.h"
#include "core/range/neutral.h"
#include "core/range/overlap.h"
#include "core/reason/reason.h"

namespace zyga::range {

/// Worst last, so that the larger one wins. Near is, for facets, the last nearMargin of the way from full cover to the
/// minimum overlap, or of a tolerated depth or gap; for typed limits, of the way from zero to the end of the range.
enum class Level { Supported, NotJudged, Near, Beyond };

/// The level's id in files and for machines: "supported", "not judged", "near", "beyond".
std::string_view toText(Level level);

enum class FindingKind {
  Overlap,        ///< of the facets: along the direction of sliding, or by area
  OverlapAcross,  ///< of the facets, across that direction; asked where overlap is by length
  FacetContact,
  FacetGap,
  TypedLimit,
  BoneContact
};

/// The unit of a kind's measured value and limit.
reason::Unit unitOf(FindingKind kind);

/// How bad something is. The one order "worst first" in the whole program: by level, then by excess.
struct Severity {
  Level level = Level::Supported;
  /// How far past the limit, as a share of the criterion's own scale (the facet, a tolerated depth of bone, a radian);
  /// negative inside it.
  double excess = -1;
};
constexpr bool worse(const Severity& a, const Severity& b) {
  return a.level != b.level ? a.level > b.level : a.excess > b.excess;
}

/// What one criterion says at one joint.
struct Finding {
  FindingKind kind = FindingKind::Overlap;
  anatomy::Side side = anatomy::Side::Midline;  ///< of the facets
  int motion = 0;                               ///< for typed limits: index into the joint's angles
  double measured = 0;                          ///< share, m or rad, see unitOf
  double limit = 0;                             ///< same unit
  Level level = Level::Supported;
  double excess = 0;                   ///< as in Severity
  std::optional<TouchingParts> parts;  ///< for contact of bones: what touches
  Severity severity() const { return {level, excess}; }
};

/// Verdict on one joint at its present angles.
struct JointVerdict {
  kinematics::JointIndex joint;
  /// The worst of its findings. Contacts count once they have been judged: those of the two bones of the joint, and
  /// of what has grown onto them.
  Level level = Level::Supported;
  bool judged = true;  ///< something judges the whole joint; see Criteria::hasCriteria
  std::optional<FacetMeeting> left, right;
  double centrumGap = 0;          ///< m, between the faces along the joint's long axis
  std::vector<Finding> findings;  ///< near and beyond only, worst first
  ArticulationNote articulation;  ///< how the joint came to its neutral articulation

  Severity severity() const { return {level, findings.empty() ? -1 : findings.front().excess}; }
  /// Its facets and typed limits support it, but its bones enter each other deeper than is tolerated.
  bool onlyCollides() const;
  /// Takes `found` (contacts of this joint's bones) in place of the contacts it has, and levels itself by them.
  void setContacts(const std::vector<Finding>& found);
};

/// Two bones that enter each other away from their joint.
struct ContactFinding {
  anatomy::BoneIndex bone;                        ///< whose surface reaches deepest into the other
  anatomy::BoneIndex other;                       ///< the bone it enters
  TouchingParts parts;                            ///< of `bone`, then of `other`
  double depth = 0;                               ///< m
  double tolerated = 0;                           ///< m
  Eigen::Vector3d p_W = Eigen::Vector3d::Zero();  ///< the deepest place, m
  Level level = Level::Beyond;                    ///< near: in the last nearMargin of what is tolerated
  /// The joint that alone moves the two bones against each other; none where there are several.
  std::optional<kinematics::JointIndex> joint;

  /// As a share of what is tolerated, at least a millimetre.
  double excess() const;
  Severity severity() const { return {level, excess()}; }
  /// As a finding of its joint.
  Finding finding() const;
};

struct Assessment {
  Level level = Level::Supported;        ///< the worst of joints and contacts
  std::vector<JointVerdict> joints;      ///< every joint that can move, in joint order
  bool contactJudged = false;            ///< false: the bones' shapes were not at hand, and contacts is empty
  std::vector<ContactFinding> contacts;  ///< near and beyond only, worst first
  const JointVerdict* find(kinematics::JointIndex joint) const;
  /// Takes other contacts, gives each joint its own and levels everything anew.
  void setContacts(bool judged, std::vector<ContactFinding> found);
};

/// The joints near a limit or past it, worst first; alike ones in joint order.
std::vector<const JointVerdict*> worstFirst(const Assessment& assessment);

/// What the criteria say about one joint at these angles: cheap, for searches and drags.
Level levelAt(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
              const Assumptions& assumptions, kinematics::JointIndex joint, const Eigen::Vector3d& angles);

JointVerdict assessJoint(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                         const Assumptions& assumptions, kinematics::JointIndex joint, const Eigen::Vector3d& angles);

/// All joints of a pose. Searches nothing: where the ranges end is left to explain().
Assessment assess(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                  const Assumptions& assumptions, const kinematics::Pose& pose);

/// A direction of a motion as the trade calls it.
enum class Motion {
  Dorsiflexion,
  Ventriflexion,
  LeftLateralFlexion,
  RightLateralFlexion,
  AxialRotationLeftUp,
  AxialRotationRightUp,
  Closing,
  Opening,
  LeftSwing,
  RightSwing,
  Flexion,
  Extension,
  Abduction,
  Adduction,
  InwardRotation,
  OutwardRotation
};

/// What turning a joint in `motion` (index into its angles) by an angle of this sign is called: in the column, of the
/// jaw, in the limbs.
Motion motionName(const anatomy::Joint& joint, int motion, double sign);

}  // namespace zyga::range
