#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/kinematics/limb_reach.h"
#include "core/range/assumptions.h"

namespace zyga::study {

/// Ways of carrying the whole animal that one action gives. The walk is four moments of a lateral sequence: in each one
/// foot swings forward, in the order left hind, left fore, right hind, right fore.
enum class Stance { Alert, Browse, Drink, WalkLeftHind, WalkLeftFore, WalkRightHind, WalkRightFore, Rear };

struct StanceWords {
  Stance stance;
  std::string_view word;   ///< "alert", "walk-1": as in the batch verb
  std::string_view title;  ///< "Standing alert"
  std::string_view tells;  ///< one sentence
};
/// All stances in the order of the enumeration.
const std::vector<StanceWords>& stanceWords();
const StanceWords& wordsOf(Stance stance);

/// An animal in a stance, and what could not be had.
struct StanceAnswer {
  kinematics::Pose pose;
  std::vector<kinematics::LegFit> fits;  ///< how well the feet that stand do so
  /// Joints past their range: only where the specimen supports no angle that the stance could use.
  std::vector<kinematics::JointIndex> beyond;
  /// What the stance asks for and does not get, m: head over the water, tail over the ground; 0 when it has it.
  double shortBy = 0;
  std::vector<std::string> notes;  ///< sentences: what gave way, what is short

  bool complete() const { return shortBy == 0 && beyond.empty(); }
};

/// The animal in this stance at the place and heading of `present`, whose shoulder blades stay as they are against the
/// trunk; everything else is set anew. Neck, head and tail bend up and down only, each joint inside its range by
/// `assumptions`; legs stay inside their typed ranges. Shapes are common practice, no source.
StanceAnswer takeStance(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                        const range::Assumptions& assumptions, const kinematics::Pose& present, Stance stance);

}  // namespace zyga::study
