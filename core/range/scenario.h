#pragma once

#include <memory>
#include <optional>

#include "core/kinematics/placement.h"
#include "core/range/assumptions.h"
#include "core/range/explain.h"

namespace zyga::range {

class ContactModel;

/// What every question is asked of: an animal under some assumptions, in one pose. A value that never changes; copies
/// share what they hold, so that it can be handed to other threads. What follows from it (how the bones rest against
/// each other, where they are, what the criteria say) is worked out once, when first asked for, by whichever thread.
class Scenario {
 public:
  /// Of no animal: hasSpecimen() is false and nothing else may be asked.
  Scenario() = default;
  /// `contact`, where given, was made from the shapes of this specimen's bones.
  Scenario(std::shared_ptr<const anatomy::Specimen> specimen, const Assumptions& assumptions,
           const kinematics::Pose& pose, std::shared_ptr<const ContactModel> contact = nullptr);
  /// With an articulation that is at hand: of these assumptions, at least for the joints that the question is about.
  Scenario(std::shared_ptr<const anatomy::Specimen> specimen, const Assumptions& assumptions,
           kinematics::Articulation articulation, const kinematics::Pose& pose,
           std::shared_ptr<const ContactModel> contact = nullptr);

  bool hasSpecimen() const { return specimen_ != nullptr; }
  const anatomy::Specimen& specimen() const { return *specimen_; }
  const std::shared_ptr<const anatomy::Specimen>& sharedSpecimen() const { return specimen_; }
  const Assumptions& assumptions() const { return *assumptions_; }
  const kinematics::Pose& pose() const;
  /// How the bones rest against each other under the assumptions.
  const kinematics::Articulation& articulation() const { return *articulation_; }
  /// Bone frames in the world, by bone.
  const kinematics::Placement& placement() const;
  /// Null while the bones' shapes are not at hand.
  const ContactModel* contact() const { return contact_.get(); }
  const std::shared_ptr<const ContactModel>& sharedContact() const { return contact_; }

  /// The verdict on every joint and pair of bones.
  const Assessment& assessment() const;
  /// The range of one motion of a joint with its other angles as they are; contact counts where it is at hand.
  const MotionRange& motionRange(kinematics::JointIndex joint, int motion) const;
  /// All six ends of a joint from its present angles.
  JointLimits limits(kinematics::JointIndex joint) const;
  /// What the verdict on a joint is due to; asked only for what is shown (see range::explain).
  Explanation explain(const JointVerdict& verdict) const;

  /// The same with another pose. Verdicts of joints that have not moved are taken over.
  Scenario withPose(const kinematics::Pose& pose) const;
  /// The same under other assumptions; the deflections stay. Bones are articulated anew only where that moves them.
  Scenario withAssumptions(const Assumptions& assumptions) const;
  Scenario withAssumptions(const Assumptions& assumptions, const kinematics::Pose& pose) const;
  /// The same with other shapes, or none.
  Scenario withContact(std::shared_ptr<const ContactModel> contact) const;
  /// The same with another record of the bones (evidence, source), of the same shape and joints.
  Scenario withRecords(std::shared_ptr<const anatomy::Specimen> specimen) const;

 private:
  struct Posed;
  void turnTo(const kinematics::Pose& pose, Posed* before);
  void fixAxialOf(const kinematics::Pose& pose);

  std::shared_ptr<const anatomy::Specimen> specimen_;
  std::shared_ptr<const Assumptions> assumptions_;
  std::shared_ptr<const kinematics::Articulation> articulation_;
  std::shared_ptr<const ContactModel> contact_;
  std::shared_ptr<Posed> posed_;
};

/// Whether the bones rest differently against each other under b than under a.
bool movesNeutral(const Assumptions& a, const Assumptions& b);

}  // namespace zyga::range
