#pragma once

#include <optional>

#include "core/anatomy/tables/measurement_table.h"
#include "core/reason/reason.h"
#include "core/study/mass/densities.h"

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

/// A mean over the animals that the equation rests on, not a bound: single ones lie farther off.
inline constexpr double kCircumferenceError = 0.2563;
inline constexpr reason::Term kCircumferenceSource{"source.campione-evans-2012"};

/// Living mass from the convex hulls of the skeleton's segments: volume (m3) x factor x density (kg/m3), with the
/// factor 1.21 of Sellers et al. 2012, Biol. Lett. 8:842. Low and high by 20 %, the larger of the mean errors of
/// prediction from hulls, 11 to 20 % (Brassey & Sellers 2014, PLoS ONE 9(3):e91691): means as well, not bounds.
MassRange massFromHulls(double volume, double density, double factor = kHullFactor);

// Two estimates of one animal whose ranges do not overlap.
/// The high by volume lies below the low by circumference; both, kg.
inline constexpr reason::Id kVolumeBelowCircumference{"mass.volume-below-circumference", 2};
/// The low by volume lies above the high by circumference; both, kg.
inline constexpr reason::Id kVolumeAboveCircumference{"mass.volume-above-circumference", 2};
/// Empty where the ranges overlap.
reason::Reason disagreement(const MassRange& byVolume, const MassRange& byCircumference);

inline constexpr double kHullError = 0.20;
/// Who gives the factor, and who the error.
inline constexpr reason::Term kHullSource{"source.hull-mass"};

}  // namespace zyga::study
