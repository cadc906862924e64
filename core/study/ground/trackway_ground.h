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
  std::string label;    ///< "LP1"; of a print that has no row of its own "after RP2"
  Foot foot = Foot::LeftHind;
  Eigen::Vector2d p_W = Eigen::Vector2d::Zero();
  double heading = 0;
  std::optional<double> length, width;
  bool ownRow = true;  ///< false when only the distances of an earlier row tell of it
};

/// What of a trackway can be laid on the ground, and in words why the rest can't.
struct LaidTrackway {
  std::vector<PlacedPrint> prints;
  std::vector<std::string> gaps;
};

/// Lays the prints from their distances alone. Each kind of foot is a chain of triangles, pace, next pace and stride,
/// with left and right by turns; where a stride is unknown, a step of known pace and gauge goes straight on. The chain
/// is turned so that its line of travel runs along Trackway::heading. A chain of fore prints starts `ahead` of the
/// hind print of its side. What is unknown is not guessed: the chain ends there.
LaidTrackway layOut(const Trackway& trackway);

}  // namespace zyga::study
