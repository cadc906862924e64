#pragma once

#include <string_view>

namespace zyga::study {

/// An estimate of a mass, kg: never a single number.
struct MassRange {
  double low = 0, mass = 0, high = 0;
  bool operator==(const MassRange&) const = default;
};

/// Mass of a quadruped from the least circumferences of humerus and femur, m: log10 M(g) = 2.749 log10(sum, mm) -
/// 1.104, mean error of prediction 25.63 % (Campione & Evans 2012, BMC Biol. 10:60). Throws std::invalid_argument for a
/// circumference that is not positive.
MassRange massFromCircumferences(double humerus, double femur);

inline constexpr double kCircumferenceError = 0.2563;
inline constexpr std::string_view kCircumferenceSource = "Campione & Evans 2012, BMC Biol. 10:60";

/// Living mass from the convex hulls of the skeleton's segments: volume (m3) x 1.21 x density (kg/m3) (Sellers et al.
/// 2012, Biol. Lett. 8:842). Low and high by 20 %, the larger of the mean errors of prediction from hulls, 11 to 20 %
/// (Brassey & Sellers 2014, PLoS ONE 9(3):e91691).
MassRange massFromHulls(double volume, double density);

inline constexpr double kHullFactor = 1.21;
inline constexpr double kHullError = 0.20;
inline constexpr std::string_view kHullSource =
    "factor 1.21: Sellers et al. 2012, Biol. Lett. 8:842; error 20 %: Brassey & Sellers 2014, PLoS ONE 9(3):e91691";

}  // namespace zyga::study
