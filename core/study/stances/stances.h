#pragma once

#include <array>
#include <string_view>
#include <vector>

#include "core/kinematics/limb_reach.h"
#include "core/range/scenario.h"
#include "core/reason/reason.h"
#include "core/study/mass/balance.h"

namespace zyga::study {

/// Ways of carrying the whole animal that one action gives. The walk is four moments of a lateral sequence: in each one
/// foot swings forward, in the order left hind, left fore, right hind, right fore.
enum class Stance { Alert, Browse, Drink, WalkLeftHind, WalkLeftFore, WalkRightHind, WalkRightFore, Rear };
inline constexpr std::array<Stance, 8> kStances{Stance::Alert,         Stance::Browse,       Stance::Drink,
                                                Stance::WalkLeftHind,  Stance::WalkLeftFore, Stance::WalkRightHind,
                                                Stance::WalkRightFore, Stance::Rear};
/// "alert", "walk-1": on the command line.
constexpr std::string_view idOf(Stance stance) {
  constexpr std::array<std::string_view, kStances.size()> kIds{"alert",  "browse", "drink",  "walk-1",
                                                               "walk-2", "walk-3", "walk-4", "rear"};
  return kIds[static_cast<std::size_t>(stance)];
}

// What gave way in a stance, and what it falls short of. Lengths in m.
inline constexpr reason::Id kForelimbsApart{"stance.forelimbs-apart", 0};
inline constexpr reason::Id kSnoutOverGround{"stance.snout-over-ground", 1};  ///< by how much
inline constexpr reason::Id kFootMisses{"stance.foot-misses", 2};             ///< which foot, by how much
inline constexpr reason::Id kFootHeldUp{"stance.foot-held-up", 1};            ///< which foot
inline constexpr reason::Id kTailOverGround{"stance.tail-over-ground", 1};    ///< by how much
inline constexpr reason::Id kTailInGround{"stance.tail-in-ground", 1};        ///< by how much
inline constexpr reason::Id kWouldFall{"stance.would-fall", 1};  ///< how far its centre of mass is off its support
inline constexpr reason::Id kNoHindFeet{"stance.no-hind-feet", 0};

/// An animal in a stance, and what could not be had.
struct StanceAnswer {
  kinematics::Pose pose;
  std::vector<kinematics::LegFit> fits;  ///< how well the feet that stand do so
  /// Joints out of their range: only where the specimen supports no angle that the stance could use.
  std::vector<kinematics::JointIndex> beyond;
  /// What the stance asks for and does not get, m: head over the water, tail over the ground; 0 when it has it.
  double shortBy = 0;
  std::vector<reason::Reason> notes;  ///< what gave way, what is short
  /// Bones deeper in each other than is tolerated that no single joint moves against each other, such as a limb and the
  /// trunk, or the feet of two limbs; worst first. Those of a single joint put it into `beyond`.
  std::vector<range::ContactFinding> contacts;
  bool contactJudged = false;  ///< false: the bones' shapes were not at hand, and contacts counts for nothing
  /// Of an animal that rears: what tail and feet carry.
  std::optional<Balance> balance = std::nullopt;

  bool complete() const { return shortBy == 0 && beyond.empty() && contacts.empty(); }
};

/// The animal in this stance at the place and heading of the scenario's pose, whose shoulder blades stay as they are
/// against the trunk; everything else is set anew. Neck, head and tail bend up and down only, each joint inside its
/// range by the scenario's assumptions, contact of its bones included where their shapes are at hand; legs stay inside
/// their typed ranges. Shapes are common practice, no source.
/// An animal that rears is weighed with `densities`.
StanceAnswer takeStance(const range::Scenario& present, Stance stance, const Densities& densities = {});

/// The animal on its feet with its limbs as they are. A foot held well over its fellow's ground does not carry; what
/// another one misses is its height over the ground.
StanceAnswer standAsPosed(const range::Scenario& present);

}  // namespace zyga::study
