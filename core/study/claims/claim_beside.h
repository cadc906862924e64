#pragma once

#include "core/study/claims/claim_trial.h"

namespace zyga::study {

/// What the answer to a claim on neck or head would be if the foremost three dorsals bent with the neck. The ribs and
/// the shoulder girdle that they carry are taken to stay.
struct ClaimDorsals {
  std::vector<kinematics::JointIndex> joints;  ///< those that bend in addition (foremostDorsals), root side first
  bool supported = false;
  std::optional<double> best;  ///< as ClaimAnswer::best
  /// `best` less that without them, m or rad: negative where less is claimed. None where one of the two is missing.
  std::optional<double> gain;
  /// By joint of `joints`: how far it turns from where it is posed in the pose that goes farthest in the claim's favour
  /// (of points: in the easiest way there), rad of dorsiflexion.
  std::vector<double> turned;
};

/// `without` is the verdict on the claim as it stands, whose ranges the joints of the neck keep; those of the dorsals
/// are `ranges`. Bones that several joints move against each other are looked at in `without` alone. None where no such
/// joint is judged, where the claim is on the tail, or where some joint has no supported angle.
std::optional<ClaimDorsals> withDorsals(const range::Scenario& scenario, const ClaimSite& site, const Claim& claim,
                                        const ClaimVerdict& without, const RangeOfJoint& ranges,
                                        const task::Task& task);

/// Who takes the undeflected neck for the habitual one: Stevens 2013, PLoS ONE 8(10):e78572.
inline constexpr reason::Term kUndeflectedSource{"source.stevens-2013"};
/// Who takes the neck that is extended from its base, with the head flexed, for the habitual one: Taylor, Wedel & Naish
/// 2009, Acta Palaeontol. Pol. 54:213.
inline constexpr reason::Term kExtendedSource{"source.taylor-wedel-naish-2009"};

/// What is claimed of a possible posture, in the two postures that have been published as the habitual one. Which of
/// them is right is not settled, and nothing here says so.
struct ClaimHabit {
  double undeflected = 0;         ///< the reading with neck and head neutral, m or rad
  bool undeflectedShows = false;  ///< which is as claimed
  /// The same with the neck extended from its base and the head flexed: joint by joint from the base each at its upper
  /// limit until the middle cervical stands upright, no farther than to that cervical, those beyond neutral, the head's
  /// joint at its lower limit. Program default for what the source describes as the neck maximally extended and the
  /// head maximally flexed, the middle of the neck near vertical.
  double extended = 0;
  bool extendedShows = false;
  kinematics::Pose extendedPose;
  bool extendedCollides = false;  ///< bones do in that pose; false too where their shapes are not known
  /// Where the claimed value lies on the way from neutral (0) to the best that is supported (1); below 0 it is passed
  /// by neutral already, above 1 it is not supported. None where neutral is the best.
  std::optional<double> share;
};

/// Of heights and slopes of neck and head; none for points, to which a head is brought to feed or drink and not held at
/// rest, for the tail, and where some joint has no supported angle. `verdict` gives ranges and the best.
std::optional<ClaimHabit> habitOf(const range::Scenario& scenario, const ClaimSite& site, const Claim& claim,
                                  const ClaimVerdict& verdict);

}  // namespace zyga::study
