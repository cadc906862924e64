#pragma once

#include <optional>

#include "core/anatomy/tables/measurement_table.h"
#include "core/reason/reason.h"

namespace zyga::study {

/// An estimate of a mass, kg: never a single number.
struct MassRange {
  double low = 0, mass = 0, high = 0;
  bool operator==(const MassRange&) const = default;
};

/// The circumferences of humerus and femur as they were given, m.
inline constexpr reason::Id kNoCircumference{"mass.circumference-not-positive", 2};

/// Mass of a quadruped from the minimum circumferences of humerus and femur, m: log10 M(g) = 2.749 log10(sum, mm) -
/// 1.104, mean error of prediction 25.63 % (Campione & Evans 2012, BMC Biol. 10:60). Throws reason::Failure for a
/// circumference that is not positive.
MassRange massFromCircumferences(double humerus, double femur);

/// The same from a table's own circumferences, of either side's bone, a measured one before an inferred one.
struct CircumferenceMass {
  MassRange mass;
  bool measured = false;  ///< both circumferences, rather than inferred
};
/// None where the table lacks one of them.
std::optional<CircumferenceMass> massFromCircumferences(const anatomy::MeasurementTable& table);

inline constexpr double kCircumferenceError = 0.2563;
inline constexpr reason::Term kCircumferenceSource{"source.campione-evans-2012"};

/// Living mass from the convex hulls of the skeleton's segments: volume (m3) x 1.21 x density (kg/m3) (Sellers et al.
/// 2012, Biol. Lett. 8:842). Low and high by 20 %, the larger of the mean errors of prediction from hulls, 11 to 20 %
/// (Brassey & Sellers 2014, PLoS ONE 9(3):e91691).
MassRange massFromHulls(double volume, double density);

inline constexpr double kHullFactor = 1.21;
inline constexpr double kHullError = 0.20;
/// Who gives the factor, and who the error.
inline constexpr reason::Term kHullSource{"source.hull-mass"};

}  // namespace zyga::study
