#pragma once

#include <limits>
#include <memory>
#include <vector>

#include "core/range/scenario.h"
#include "core/study/claims/claim_site.h"
#include "core/study/claims/claim_trial.h"

namespace zyga::study {

/// The bones that enter each other deeper than is tolerated in this pose of the scenario, worst first: pairs of which
/// the bending joints of the site move one bone against the other. The scenario has to have its contact model.
std::vector<range::ContactFinding> collisionsOf(const range::Scenario& scenario, const ClaimSite& site,
                                                const kinematics::Pose& pose);

/// The ranges of dorsiflexion with the joint's other angles at zero, ended by contact of its bones as well; as strip
/// and joint view show them. Refers to the scenario.
RangeOfJoint rangesWithContact(const range::Scenario& scenario);

/// The pairs of bones that the bending joints of a site move against each other, in poses of one scenario that has its
/// contact model. Refers to both; as collisionsOf, sooner.
class MovedPairs {
 public:
  MovedPairs(const range::Scenario& scenario, const ClaimSite& site);

  /// Whether any of them enter each other deeper than is tolerated.
  bool collide(const kinematics::Pose& pose) const;
  /// Which of them do, as positions in ContactModel::pairs.
  std::vector<std::size_t> colliding(const kinematics::Pose& pose) const;
  bool collide(std::size_t pair, const kinematics::Pose& pose) const;
  /// The bending joints between the two bones.
  std::vector<kinematics::JointIndex> between(std::size_t pair) const;

 private:
  bool enter(std::size_t pair, const kinematics::Placement& X_WB) const;

  const range::Scenario& scenario_;
  const ClaimSite& site_;
  std::vector<std::size_t> bends_;  ///< by bone: bending joints between it and the root
  std::vector<std::size_t> pairs_;
};

/// What contact leaves of the ranges of the bending joints: where bones that several of them move against each other
/// collide in the pose that goes farthest, those joints give way by the same share of their way from neutral, until it
/// goes without. `ranges`: of each joint by itself.
class ClearRanges {
 public:
  ClearRanges(const range::Scenario& scenario, const ClaimSite& site, const Claim& claim, const RangeOfJoint& ranges);

  const MovedPairs& pairs() const { return pairs_; }
  const range::MotionRange& operator[](kinematics::JointIndex joint) const { return ranges_[joint.value]; }
  /// The claim put to these ranges.
  const ClaimTrial& trial() const { return *trial_; }

 private:
  bool giveWay(const kinematics::Pose& pose);

  const range::Scenario& scenario_;
  const ClaimSite& site_;
  MovedPairs pairs_;
  std::vector<range::MotionRange> ranges_;  ///< by joint, of those that bend
  std::unique_ptr<ClaimTrial> trial_;
};

/// Where contact ends the dorsiflexions of the bending joints, found once on the bones as they are and asked of other
/// animals of the same joints: where samples differ in facets, cartilage and rules, they keep the shapes of the nominal
/// bones. Ends are told from faces of the centra parallel (the joint's restRotation), so that they stay where they are
/// when another neutral articulation is found. Searched as far as the facets carry a joint under `widest`.
class ContactEnds {
 public:
  /// No contact anywhere.
  ContactEnds() = default;
  ContactEnds(const range::Scenario& scenario, const ClaimSite& site, const range::Assumptions& widest);

  /// Takes over the ends that contact leaves where they are nearer than those that are known.
  void tighten(const range::Scenario& scenario, const ClaimSite& site, const ClearRanges& clear);
  /// A range of one of the joints of another animal of the same skeleton, ended where contact ends it.
  range::MotionRange cut(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                         kinematics::JointIndex joint, range::MotionRange range) const;

 private:
  struct Ends {
    bool nowhere = false;  ///< the bones enter each other at every angle
    double min = -std::numeric_limits<double>::infinity(), max = std::numeric_limits<double>::infinity();
    range::Stop minStop, maxStop;
  };
  std::vector<Ends> ends_;  ///< by joint; empty: no contact anywhere
};

}  // namespace zyga::study
