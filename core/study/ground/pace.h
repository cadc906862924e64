#pragma once

#include <array>
#include <optional>
#include <string_view>

/// What the distances between footprints tell. Lengths in m; any one unit serves where only ratios count.
namespace zyga::study {

/// Angle at the middle one of three successive prints, rad, by the cosine rule from the two paces and the stride
/// between them. Nothing when no such triangle exists or a length is not positive.
std::optional<double> paceAngulation(double pace, double nextPace, double stride);

/// How far the middle one of three successive prints lies from the line of its neighbours: the gauge of the trackway
/// there, m. Nothing where paceAngulation has nothing.
std::optional<double> gaugeOf(double pace, double nextPace, double stride);

/// Height of the hip as a multiple of the length of the hind print.
struct HipRule {
  double multiplier;
  std::string_view source;
};

inline constexpr std::array<HipRule, 3> kHipRules{
    {{4, "Alexander 1976, Nature 261:129"},
     {4.586, "derived titanosaurs, González Riga 2011, An. Acad. Bras. Ciênc. 83:279"},
     {5.9, "Thulborn 1990, recalled, not verified"}}};

/// Who gives this multiplier; "own choice" for one that is none of kHipRules.
std::string_view hipSource(double multiplier);

/// Speed of walking, m/s: v = 0.25 g^0.5 S^1.67 h^-1.17 with stride S and hip height h in m (Alexander 1976, Nature
/// 261:129).
double speedOf(double stride, double hipHeight);

/// Goes with every speed.
inline constexpr std::string_view kSpeedCaution =
    "Speeds from tracks on soft ground are too high (Prescott et al. 2025, Biol. Lett. 21:20250191); take the speed as "
    "an estimate.";

}  // namespace zyga::study
