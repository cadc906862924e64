#pragma once

#include <array>
#include <string>
#include <string_view>

#include "core/range/scenario.h"
#include "core/study/reach/extremes.h"
#include "core/study/reach/sagittal_plane.h"

namespace zyga::study {

/// The ways of carrying the neck that a study of its elevation compares. Dorsal and ventral take every joint of the
/// neck to its own limit, which can bend it past the vertical; highest and lowest bring the snout as high and as low as
/// neck and head inside their ranges can, the neck straight to the side. But for those two the head keeps its present
/// angles on the neck.
enum class NeckCarriage { Neutral, Dorsal, Ventral, Highest, Lowest, Present };
inline constexpr std::array<NeckCarriage, 6> kNeckCarriages{NeckCarriage::Neutral, NeckCarriage::Dorsal,
                                                            NeckCarriage::Ventral, NeckCarriage::Highest,
                                                            NeckCarriage::Lowest,  NeckCarriage::Present};
/// Its id in files of numbers: "neutral", "most dorsiflexed", "most ventriflexed", "highest", "lowest", "present pose".
std::string_view toText(NeckCarriage carriage);

struct ElevationCase {
  NeckCarriage which = NeckCarriage::Neutral;
  kinematics::Pose pose;
  Carriage carriage;
  double slope =
      0;  ///< rad over the horizontal, of the line from the neck's base to its end; past the vertical over 90°
  double baseSlope = 0;  ///< rad over the horizontal, of the neural canal of the hindmost cervical
  double headSlope = 0;  ///< rad, of the skull's long axis, positive with the snout up
  Line line;             ///< neckLine in this pose
};

/// Head height and slope of the neck in neutral, at the ends of its range and in the present pose.
struct Elevation {
  std::array<ElevationCase, kNeckCarriages.size()> cases;
  SagittalPlane plane;
  std::vector<Line> body;             ///< bodyLines of the present pose
  std::optional<double> foreFeet;     ///< foreFeetAhead
  std::vector<std::string> unjudged;  ///< joints of the neck that nothing vouches for; they stay neutral
  bool contactJudged = false;         ///< bones that enter each other ended ranges too

  const ElevationCase& operator[](NeckCarriage which) const { return cases[static_cast<std::size_t>(which)]; }
};

/// Throws reason::Failure (kNoNeck) for a specimen without a neck. A few milliseconds.
Elevation elevation(const range::Scenario& scenario);

}  // namespace zyga::study
