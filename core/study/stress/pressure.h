#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/study/reach/elevation.h"

namespace zyga::study {

/// Pressure of a column of blood between heart and head: density against mercury times height (formula as in Mitchell
/// et al. 2006, second hand).
inline constexpr double kBloodDensity = 1.055;                    ///< kg/l
inline constexpr double kThinBlood = 1.050, kThickBlood = 1.060;  ///< kg/l, as published values scatter
inline constexpr double kMercuryDensity = 13.6;                   ///< kg/l
/// mmHg of a column `height` m high; below zero where the head is under the heart. 2 m at 1.055 give 155.1 mmHg.
double columnPressure(double height, double bloodDensity = kBloodDensity);

/// A heart has left no bone: where it is taken to lie is an assumption.
struct HeartPlace {
  /// Its height in the chest: 0 at the lower edge of the ribs, 1 at the column. Author's choice: a third.
  double share = 1.0 / 3;
  bool operator==(const HeartPlace&) const = default;
};
/// Middle of the heart, m, world: at the fourth dorsal (the third where there are fewer), as high as `place` says
/// between the ends of its ribs and its centrum. Throws std::invalid_argument without dorsals.
Eigen::Vector3d heartAt(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB, const HeartPlace& place);

struct Pressure {
  HeartPlace heart;
  double heartHeight = 0;                             ///< m over the ground, of the present pose
  Eigen::Vector2d p_Heart = Eigen::Vector2d::Zero();  ///< in the elevation's plane, m
  struct Row {
    NeckCarriage which = NeckCarriage::Neutral;
    double headHeight = 0;     ///< m over the ground, of the hole through which the spinal cord leaves the skull
    double column = 0;         ///< m, from the heart up to there
    double pressure = 0;       ///< mmHg
    double low = 0, high = 0;  ///< mmHg, for thin and thick blood
  };
  std::array<Row, kNeckCarriages.size()> rows;
  Elevation elevation;  ///< what the rows stand on
};

/// Throws as elevation and heartAt do, and std::invalid_argument without a skull.
Pressure pressure(const Subject& subject, const HeartPlace& heart = {});

std::vector<std::string> sentences(const Pressure& pressure);

/// Both views of what the column asks of the heart, with their sources; to be shown with every result.
inline constexpr std::string_view kPressureViews[] = {
    "One view: the heart has to lift the whole column, on top of what the head itself needs; about 700 mmHg at the "
    "heart "
    "of an upright sauropod (Seymour & Lillywhite 2000, Proc. R. Soc. B 267:1883).",
    "The other view: blood that falls back through the veins helps to lift the rest as in a siphon, so that the heart "
    "has to overcome friction alone; disputed (discussed in the same paper)."};
inline constexpr std::string_view kPressureCaution =
    "Bones tell heights, not pressures: the heart's place is assumed, and which view holds is not settled.";

}  // namespace zyga::study
