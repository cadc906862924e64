#pragma once

#include <memory>

#include "core/kinematics/placement.h"
#include "core/range/contact/contact_pairs.h"
#include "core/range/contact/contact_search.h"
#include "core/range/findings.h"

namespace zyga::range {

/// How one pair meets in the world.
struct PairMeeting {
  double distance = 0;  ///< m: minus the depth of contact, or the clearance; infinite where a bone has no shape
  Eigen::Vector3d p_W = Eigen::Vector3d::Zero();
  bool onA = false;  ///< the place is on the surface of the pair's first bone
};

/// The shapes of a specimen's bones, made ready for asking which of them enter each other. Immutable, so that threads
/// may share it.
class ContactModel : public NeighbourContact {
 public:
  /// `fields` by bone; pairs with a bone that has none are not judged.
  ContactModel(anatomy::Specimen specimen, std::vector<std::shared_ptr<const anatomy::SignedDistance>> fields);

  /// The pairs that have both shapes.
  const std::vector<ContactPair>& pairs() const { return pairs_; }

  /// Depth or clearance and place of every pair, beside `pairs`. Pairs at `within` (m) or farther from each other are
  /// not looked into; `slack` as in contactDepth().
  std::vector<PairMeeting> meetings(const kinematics::Placement& X_WB,
                                    double within = std::numeric_limits<double>::infinity(), float slack = 0.5F) const;

  /// How deep the bones of a pair may enter each other, m.
  double tolerated(std::size_t pair, const ContactTolerance& tolerance) const;

  /// Contacts beyond what is tolerated, or in the last nearMargin of the way there; worst first.
  std::vector<ContactFinding> contacts(const kinematics::Placement& X_WB, const Assumptions& assumptions) const;

  /// Of all pairs that this joint alone moves against each other.
  ContactPlace deepest(anatomy::JointIndex joint, const Eigen::Isometry3d& X_PD,
                       const ContactTolerance& tolerance) const override;
  /// Bones that enter each other no deeper than is tolerated are not looked into.
  bool entersBeyond(anatomy::JointIndex joint, const Eigen::Isometry3d& X_PD,
                    const ContactTolerance& tolerance) const override;

  /// The joints that move a pair's bones against each other, in no order: one, which deepest() answers for, or several.
  const std::vector<anatomy::JointIndex>& movers(std::size_t pair) const { return movers_[pair]; }
  /// Whether a pair's bones enter each other deeper than is tolerated, and where they are deepest in each other.
  bool entersBeyond(std::size_t pair, const kinematics::Placement& X_WB, const ContactTolerance& tolerance) const;
  ContactPlace place(std::size_t pair, const kinematics::Placement& X_WB, const ContactTolerance& tolerance) const;

 private:
  /// A pair whose bones this joint alone moves against each other, and how they are fixed to the joint's two bones.
  struct Moved {
    std::size_t pair;
    Eigen::Isometry3d X_PA, X_DB;
    bool turned;  ///< the pair's second bone goes with the proximal bone: X_PA is of it, X_DB of the first
  };

  PairMeeting meeting(std::size_t pair, const Eigen::Isometry3d& X_WA, const Eigen::Isometry3d& X_WB, double within,
                      float slack) const;
  ContactFinding finding(std::size_t pair, const PairMeeting& meeting, const kinematics::Placement& X_WB,
                         double tolerated) const;
  PartOfBone partOf(anatomy::BoneIndex bone, const Eigen::Vector3d& p_B) const {
    return {bone, partAt(specimen_[bone], p_B)};
  }

  anatomy::Specimen specimen_;
  std::vector<ContactPair> pairs_;
  std::vector<std::pair<ContactShape, ContactShape>> shapes_;
  std::vector<double> extents_;                           ///< by bone, m: meanExtent; 0 without a shape
  std::vector<std::vector<Moved>> moved_;                 ///< by joint
  std::vector<std::vector<anatomy::JointIndex>> movers_;  ///< by pair
};

/// Which bones of a specimen occur in pairs: only they need a shape.
std::vector<bool> bonesInContactPairs(const anatomy::Specimen& specimen);

/// Puts the contacts of a placement into an assessment and its joints, in place of those it had, and levels them anew.
void judgeContact(const ContactModel& model, const kinematics::Placement& X_WB, const Assumptions& assumptions,
                  Assessment& assessment);

}  // namespace zyga::range
