#pragma once

#include <Eigen/Core>
#include <optional>
#include <string>
#include <vector>

#include "core/study/ground/trackway.h"

namespace zyga::study {

/// A footprint where it lies, in the world, m and rad.
struct PlacedPrint {
  std::size_t row = 0;  ///< into Trackway::prints: its own row, or the one whose distances lead to it
  std::string label;    ///< the foot as that row names it, "LP1"
  Foot foot = Foot::LeftHind;
  Eigen::Vector2d p_W = Eigen::Vector2d::Zero();
  double heading = 0;
  std::optional<double> length, width;
  bool ownRow = true;  ///< false when only the distances of an earlier row tell of it
};

// Why prints stay out. The first three give the foot of the last print that is laid, as its row names it.
inline constexpr reason::Id kPaceUnknown{"track.pace-unknown", 1};
inline constexpr reason::Id kNextPaceUnknown{"track.next-pace-unknown", 1};  ///< and there is no gauge
inline constexpr reason::Id kStrideUnknown{"track.stride-unknown", 1};       ///< likewise
inline constexpr reason::Id kPrintWithoutName{"track.print-without-name", 0};
inline constexpr reason::Id kPrintWithoutSide{"track.print-without-side", 1};  ///< its name
inline constexpr reason::Id kForePrintsAdrift{"track.fore-prints-adrift", 0};  ///< nothing ties them to the hind ones

/// What of a trackway can be laid on the ground, and why the rest can't.
struct LaidTrackway {
  std::vector<PlacedPrint> prints;
  std::vector<reason::Reason> gaps;
};

/// Lays the prints from their distances alone. Each kind of foot is a chain of triangles, pace, next pace and stride,
/// with left and right by turns; where a stride is unknown, a step of known pace and gauge goes straight on. The chain
/// is turned so that its line of travel runs along Trackway::heading. A chain of fore prints starts `ahead` of the
/// hind print of its side. What is unknown is not guessed: the chain ends there.
LaidTrackway layOut(const Trackway& trackway);

}  // namespace zyga::study
