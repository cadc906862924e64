#include "core/range/scenario.h"

#include <algorithm>
#include <array>
#include <mutex>
#include <utility>

#include "core/kinematics/following.h"
#include "core/range/contact/contact.h"
#include "core/range/neutral.h"

namespace zyga::range {

using kinematics::Articulation;
using kinematics::JointIndex;
using kinematics::Placement;
using kinematics::Pose;

/// A pose and what follows from it under the scenario's assumptions, each found once.
struct Scenario::Posed {
  Pose pose;
  std::mutex mutex;  ///< of what follows
  std::optional<Placement> placement;
  std::optional<Assessment> assessment;
  std::vector<std::array<std::unique_ptr<const MotionRange>, 3>>
      bands;  ///< by joint and motion; references to them stay
};

namespace {

/// `before`, of assumptions a, with the joints articulated anew that b rests otherwise.
Articulation rearticulated(const anatomy::Specimen& specimen, const Articulation& before, const Assumptions& a,
                           const Assumptions& b) {
  Articulation after = before;
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    const anatomy::Joint& joint = specimen.joints[j];
    const bool rests = a.neutralBy == b.neutralBy && a.cartilageOf(joint.region) == b.cartilageOf(joint.region);
    if (rests && a.settling == b.settling) continue;
    after.rests[j] = articulate(specimen, JointIndex{j}, b);
  }
  return after;
}

}  // namespace

bool movesNeutral(const Assumptions& a, const Assumptions& b) {
  return a.neutralBy != b.neutralBy || a.neck != b.neck || a.trunk != b.trunk || a.tail != b.tail;
}

Scenario::Scenario(std::shared_ptr<const anatomy::Specimen> specimen, const Assumptions& assumptions, const Pose& pose,
                   std::shared_ptr<const ContactModel> contact)
    : specimen_(std::move(specimen)),
      assumptions_(std::make_shared<const Assumptions>(assumptions)),
      articulation_(std::make_shared<const Articulation>(articulate(*specimen_, assumptions))),
      contact_(std::move(contact)) {
  turnTo(pose, nullptr);
}

Scenario::Scenario(std::shared_ptr<const anatomy::Specimen> specimen, const Assumptions& assumptions,
                   Articulation articulation, const Pose& pose, std::shared_ptr<const ContactModel> contact)
    : specimen_(std::move(specimen)),
      assumptions_(std::make_shared<const Assumptions>(assumptions)),
      articulation_(std::make_shared<const Articulation>(std::move(articulation))),
      contact_(std::move(contact)) {
  turnTo(pose, nullptr);
}

/// Where axial rotations stay when joints are bent is the pose's to say.
void Scenario::fixAxialOf(const Pose& pose) {
  if (!kinematics::hasAxialOf(*articulation_, pose))
    articulation_ = std::make_shared<const Articulation>(kinematics::withAxialOf(*articulation_, pose));
}

/// Takes over from `before`, of the same assumptions and shapes, the verdicts of joints that have not moved: a verdict
/// hangs on its own joint's angles alone.
void Scenario::turnTo(const Pose& pose, Posed* before) {
  fixAxialOf(pose);
  posed_ = std::make_shared<Posed>();
  posed_->pose = pose;
  posed_->bands.resize(specimen_->joints.size());
  if (!before || before->pose.angles.size() != pose.angles.size()) return;
  Posed& earlier = *before;
  const std::lock_guard lock(earlier.mutex);
  for (std::size_t j = 0; j < pose.angles.size(); ++j) {
    if (pose.angles[j] != earlier.pose.angles[j] || pose.isAxialTyped({j}) != earlier.pose.isAxialTyped({j})) continue;
    for (std::size_t motion = 0; motion < 3; ++motion)
      if (earlier.bands[j][motion])
        posed_->bands[j][motion] = std::make_unique<const MotionRange>(*earlier.bands[j][motion]);
  }
  if (!earlier.assessment) return;
  Assessment assessment = *earlier.assessment;
  for (JointVerdict& verdict : assessment.joints) {
    const JointIndex joint = verdict.joint;
    if (pose[joint] != earlier.pose[joint])
      verdict = assessJoint(*specimen_, *articulation_, *assumptions_, joint, pose[joint]);
  }
  assessment.setContacts(false, {});
  Placement X_WB = kinematics::forwardKinematics(*specimen_, *articulation_, pose);
  if (contact_) judgeContact(*contact_, X_WB, *assumptions_, assessment);
  posed_->placement = std::move(X_WB);
  posed_->assessment = std::move(assessment);
}

const Pose& Scenario::pose() const { return posed_->pose; }

const Placement& Scenario::placement() const {
  const std::lock_guard lock(posed_->mutex);
  if (!posed_->placement) posed_->placement = kinematics::forwardKinematics(*specimen_, *articulation_, posed_->pose);
  return *posed_->placement;
}

const Assessment& Scenario::assessment() const {
  const Placement& X_WB = placement();
  const std::lock_guard lock(posed_->mutex);
  if (!posed_->assessment) {
    Assessment assessment = assess(*specimen_, *articulation_, *assumptions_, posed_->pose);
    if (contact_) judgeContact(*contact_, X_WB, *assumptions_, assessment);
    posed_->assessment = std::move(assessment);
  }
  return *posed_->assessment;
}

const MotionRange& Scenario::motionRange(JointIndex joint, int motion) const {
  const auto k = static_cast<std::size_t>(motion);
  const std::lock_guard lock(posed_->mutex);
  std::unique_ptr<const MotionRange>& kept = posed_->bands.at(joint.value).at(k);
  if (!kept)
    kept = std::make_unique<const MotionRange>(range::motionRange(*specimen_, *articulation_, *assumptions_, joint,
                                                                  posed_->pose[joint], motion, contact_.get()));
  return *kept;
}

JointLimits Scenario::limits(JointIndex joint) const {
  return range::limits(*specimen_, *articulation_, *assumptions_, joint, posed_->pose[joint], contact_.get());
}

Explanation Scenario::explain(const JointVerdict& verdict) const {
  const KnownRanges known = [&](int motion) -> const MotionRange& { return motionRange(verdict.joint, motion); };
  return range::explain(*specimen_, *articulation_, *assumptions_, verdict, posed_->pose[verdict.joint], contact_.get(),
                        known);
}

Scenario Scenario::withPose(const Pose& pose) const {
  Scenario other = *this;
  other.turnTo(pose, posed_.get());
  return other;
}

Scenario Scenario::withAssumptions(const Assumptions& assumptions) const {
  return withAssumptions(assumptions, posed_->pose);
}

Scenario Scenario::withAssumptions(const Assumptions& assumptions, const Pose& pose) const {
  Scenario other = *this;
  other.assumptions_ = std::make_shared<const Assumptions>(assumptions);
  if (movesNeutral(*assumptions_, assumptions) || assumptions_->settling != assumptions.settling)
    other.articulation_ =
        std::make_shared<const Articulation>(rearticulated(*specimen_, *articulation_, *assumptions_, assumptions));
  other.turnTo(pose, nullptr);
  return other;
}

Scenario Scenario::withContact(std::shared_ptr<const ContactModel> contact) const {
  Scenario other = *this;
  other.contact_ = std::move(contact);
  other.turnTo(posed_->pose, nullptr);
  return other;
}

Scenario Scenario::withRecords(std::shared_ptr<const anatomy::Specimen> specimen) const {
  Scenario other = *this;
  other.specimen_ = std::move(specimen);
  return other;
}

}  // namespace zyga::range
