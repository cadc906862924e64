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

/// kg/m3 by part. The whole is an assumption: 800 for the trunk with its lungs and air sacs (the value used with the
/// hulls by Sellers et al. 2012), less for a neck full of air spaces, 1000 for flesh and bone (program default, no
/// source).
struct Densities {
  std::array<double, kBodyParts> byPart{900, 600, 800, 950, 1000, 1000};
  double& operator[](BodyPart part) { return byPart[static_cast<std::size_t>(part)]; }
  double operator[](BodyPart part) const { return byPart[static_cast<std::size_t>(part)]; }
  bool operator==(const Densities&) const = default;
};
/// A body is lighter than bone and heavier than feathers, kg/m3.
inline constexpr double kLeastDensity = 100, kMostDensity = 2000;

}  // namespace zyga::study
