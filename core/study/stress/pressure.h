#pragma once

#include <optional>

#include "core/study/reach/elevation.h"

namespace zyga::study {

inline constexpr reason::Id kNoSkull{"study.no-skull", 0};      ///< to carry blood to
inline constexpr reason::Id kNoDorsals{"study.no-dorsals", 0};  ///< to place a heart under

/// Pressure of a column of blood between heart and head: density against mercury times height (formula as in Mitchell
/// et al. 2006, second hand).
inline constexpr double kBloodDensity = 1.055;                    ///< kg/l
inline constexpr double kThinBlood = 1.050, kThickBlood = 1.060;  ///< kg/l, as published values scatter
inline constexpr double kMercuryDensity = 13.6;                   ///< kg/l
/// What the head's own vessels need on top of the column, mmHg: a cerebral perfusion pressure "on the order of 100 mm
/// Hg" in giraffes (Aalkjær & Wang 2021, Annu. Rev. Physiol. 83:1, abstract read). A sauropod's is not known.
inline constexpr double kPerfusionPressure = 100;
/// mmHg of a column `height` m high; below zero where the head is under the heart. 2 m at 1.055 give 155.1 mmHg.
double columnPressure(double height, double bloodDensity = kBloodDensity);

/// Of the blood where it leaves the heart, mmHg, in the view that the heart lifts the column: column and perfusion of
/// the head. A head under the heart asks for no less than its perfusion.
double heartPressure(double columnPressure);

/// A heart has left no bone: where it is taken to lie is an assumption.
struct HeartPlace {
  /// Its height in the chest: 0 at the lower edge of the ribs, 1 at the column. Program default, no source: a third.
  double share = 1.0 / 3;
  bool operator==(const HeartPlace&) const = default;
};
/// Middle of the heart, m, world: at the fourth dorsal (the third where there are fewer), as high as `place` says
/// between the ends of its ribs and its centrum. Throws reason::Failure
/// (kNoDorsals) without dorsals.
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
    double atHeart = 0;        ///< mmHg, heartPressure of `pressure`
  };
  std::array<Row, kNeckCarriages.size()> rows;
  Elevation elevation;  ///< what the rows stand on
};

/// Throws as elevation and heartAt do, and reason::Failure (kNoSkull) without a skull.
Pressure pressure(const range::Scenario& scenario, const HeartPlace& heart = {});

}  // namespace zyga::study
