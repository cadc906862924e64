#pragma once

#include "core/kinematics/following.h"
#include "core/range/column_joint.h"
#include "core/range/facet_pair.h"
#include "core/range/findings.h"

namespace zyga::range {

/// All criteria of a joint at some angles: four for either side's facets and three typed limits at most.
struct Criteria {
  std::array<Finding, 11> items;
  int count = 0;
  bool hasCriteria = true;  ///< something judges the whole joint; false where a side lacks facets and no limit is typed

  void add(const Finding& criterion) { items[static_cast<std::size_t>(count++)] = criterion; }
  const Finding* begin() const { return items.data(); }
  const Finding* end() const { return items.data() + count; }
  Level level() const;
};

/// What stops a motion, from the criteria just past its end.
struct Stopping {
  const Finding* worst = nullptr;  ///< none when no criterion is beyond
  bool both = false;               ///< left and right facets stop it at once
};
Stopping stopping(const Criteria& justPast);

/// Judges one joint at any angles. Looks the facets up once, so that searches can ask again and again; refers to
/// everything it was made from.
class JointEvaluator {
 public:
  JointEvaluator(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                 const Assumptions& assumptions, kinematics::JointIndex joint,
                 const NeighbourContact* contact = nullptr);

  const anatomy::Joint& joint() const { return joint_; }
  const Assumptions& assumptions() const { return assumptions_; }
  /// kinematics::withMotion, toOwn and fromOwn of this joint: the axial rotation goes along when it is bent.
  Eigen::Vector3d withMotion(const Eigen::Vector3d& angles, int motion, double value) const {
    return kinematics::withMotion(joint_, rest_, angles, motion, value);
  }
  Eigen::Vector3d toOwn(const Eigen::Vector3d& angles) const { return kinematics::toOwn(joint_, rest_, angles); }
  Eigen::Vector3d fromOwn(const Eigen::Vector3d& own) const { return kinematics::fromOwn(joint_, rest_, own); }
  bool hasFacets() const { return pairs_[0] || pairs_[1]; }
  /// Facets of both sides or typed limits judge the whole joint, whatever its angles; a fixed joint needs none.
  bool hasCriteria() const { return fixed() || (!onMixedGround_ && (joint_.typed || (pairs_[0] && pairs_[1]))); }
  /// A marked scan beside inferred facets, which the assumptions do not accept: the facets still limit the joint, but
  /// nothing is said of it.
  bool onMixedGround() const { return onMixedGround_; }
  bool fixed() const { return joint_.kind == anatomy::JointKind::Fixed; }

  Criteria criteria(const Eigen::Vector3d& angles) const;
  /// criteria(angles).level(), sooner: stops at the first criterion that is beyond.
  Level level(const Eigen::Vector3d& angles) const;
  bool beyond(const Eigen::Vector3d& angles) const { return level(angles) == Level::Beyond; }
  /// Whether there is anybody to ask about contact. It is no part of criteria() and beyond(), because it costs far more
  /// than they do: searches ask it apart.
  bool asksContact() const { return contact_ && !fixed(); }
  ContactPlace contact(const Eigen::Vector3d& angles) const;
  /// The bones enter each other deeper than is tolerated.
  bool contactBeyond(const Eigen::Vector3d& angles) const;
  /// The facets of one side (0 left, 1 right) at these angles, with outlines.
  std::optional<FacetMeeting> meeting(const Eigen::Vector3d& angles, int side) const;
  /// Distance of the two centres of rotation, m: between the faces in their middle.
  double centrumGap(const Eigen::Vector3d& angles) const;

  /// The criteria that follow from one side's facets and from the typed limits.
  void addFacets(Criteria& criteria, int side, const FacetMeasures& measures) const;
  void addTyped(Criteria& criteria, const Eigen::Vector3d& angles) const;

 private:
  Eigen::Isometry3d prezygView(const Eigen::Vector3d& angles) const {
    return view_(kinematics::jointTransform(joint_, rest_, angles));
  }
  bool typedBeyond(const Eigen::Vector3d& angles) const;

  const anatomy::Joint& joint_;
  const kinematics::Articulation::Rest& rest_;
  const Assumptions& assumptions_;
  const NeighbourContact* contact_;
  kinematics::JointIndex index_;
  PrezygView view_;
  std::array<std::optional<FacetPair>, 2> pairs_;
  bool onMixedGround_;
};

/// Whether an angle lies outside typed limits, beyond rounding (1e-9 rad), or is no number.
bool outside(const anatomy::AngleLimits& limits, double angle);

}  // namespace zyga::range
