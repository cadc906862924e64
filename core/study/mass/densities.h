#pragma once

#include <array>
#include <cstddef>
#include <string_view>

namespace zyga::study {

enum class BodyPart { Head, Neck, Trunk, Tail, ForeLimbs, HindLimbs };
inline constexpr std::size_t kBodyParts = 6;
inline constexpr std::array<BodyPart, kBodyParts> kAllBodyParts{
    BodyPart::Head, BodyPart::Neck, BodyPart::Trunk, BodyPart::Tail, BodyPart::ForeLimbs, BodyPart::HindLimbs};
/// "fore limbs": in files and on the command line.
constexpr std::string_view idOf(BodyPart part) {
  constexpr std::array<std::string_view, kBodyParts> kIds{"head", "neck", "trunk", "tail", "fore limbs", "hind limbs"};
  return kIds.at(static_cast<std::size_t>(part));
}

/// Living volume over that of the convex hulls around the bones, of whole bodies (Sellers et al. 2012, Biol. Lett.
/// 8:842).
inline constexpr double kHullFactor = 1.21;

/// What the parts of a body are made of: kg/m3, and how much volume lies outside the hull of the bones. The densities
/// are an assumption: 800 for the trunk with its lungs and air sacs (the value used with the hulls by Sellers et al.
/// 2012), less for a neck full of air spaces, 1000 for flesh and bone (program default, no source).
struct Densities {
  std::array<double, kBodyParts> byPart{900, 600, 800, 950, 1000, 1000};
  /// Living volume over that of the hulls. No factor by part is published that the program knows of: that of whole
  /// bodies stands for each, the muscles of the tail among them.
  std::array<double, kBodyParts> hullFactors{kHullFactor, kHullFactor, kHullFactor,
                                             kHullFactor, kHullFactor, kHullFactor};
  double& operator[](BodyPart part) { return byPart[static_cast<std::size_t>(part)]; }
  double operator[](BodyPart part) const { return byPart[static_cast<std::size_t>(part)]; }
  bool operator==(const Densities&) const = default;
};
/// A body is lighter than bone and heavier than feathers, kg/m3.
inline constexpr double kLeastDensity = 100, kMostDensity = 2000;
/// Flesh lies around bones and does not end within their hull; more than this is no animal.
inline constexpr double kLeastHullFactor = 1, kMostHullFactor = 3;

/// How far the density and the hull factor of a part may be off either way, as shares, in the order of kAllBodyParts.
/// Program defaults, no source: air spaces make a neck's density the least sure; muscles that run along the tail to the
/// thigh lie outside its bones and were large (Persons & Currie 2011, Anat. Rec. 294:119, on theropods), so that the
/// tail's factor is.
inline constexpr std::array<double, kBodyParts> kDensityErrors{0.10, 0.25, 0.15, 0.10, 0.05, 0.05};
inline constexpr std::array<double, kBodyParts> kHullFactorErrors{0.15, 0.20, 0.15, 0.30, 0.20, 0.25};

}  // namespace zyga::study
