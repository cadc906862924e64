#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/kinematics/feet.h"
#include "core/reason/reason.h"

namespace zyga::study {

using kinematics::Foot;

// What the distances between footprints tell. Lengths in m; any one unit serves where only ratios count.

/// Angle at the middle one of three successive prints, rad, by the cosine rule from the two paces and the stride
/// between them. Nothing when no such triangle exists or a length is not positive.
std::optional<double> paceAngulation(double pace, double nextPace, double stride);

/// How far the middle one of three successive prints lies from the line of its neighbours: the gauge of the trackway
/// there, m. Nothing where paceAngulation has nothing.
std::optional<double> gaugeOf(double pace, double nextPace, double stride);

/// Height of the hip as a multiple of the length of the hind print, and who gives it.
struct HipRule {
  double multiplier;
  reason::Term source;
};

/// Published ones whose source has been read; others (5.9 is recalled from Thulborn 1990) can be typed.
inline constexpr std::array<HipRule, 2> kHipRules{
    {{4, {"source.alexander-1976"}}, {4.586, {"source.gonzalez-riga-2011"}}}};
inline constexpr reason::Term kOwnHipRule{"source.own-choice"};

/// Who gives this multiplier; kOwnHipRule for one that is none of kHipRules.
reason::Term hipSource(double multiplier);

/// Speed of walking, m/s: v = 0.25 g^0.5 S^1.67 h^-1.17 with stride S and hip height h in m (Alexander 1976, Nature
/// 261:129). Tracks on soft ground give speeds that are too high (Prescott et al. 2025, Biol. Lett. 21:20250191), which
/// has to be told with every speed.
double speedOf(double stride, double hipHeight);
inline constexpr reason::Term kSpeedSource{"source.alexander-1976"};

/// Reads "L", "right", "LP1", "S1-RM2", "left fore", "R manus"; p, pes, hind: hind; m, manus, fore, hand: fore. A name
/// without either is a hind foot, as in tables of one row of prints. Nothing when it names no side.
std::optional<Foot> footFromText(std::string_view text);

/// One row of a trackway table, distances in m. What was not measured is absent; nothing is filled in.
struct Footprint {
  std::string foot;                ///< as typed: "LP1"
  std::optional<double> pace;      ///< from this print to the next one, of the other side
  std::optional<double> nextPace;  ///< from that one to the one after, of this side
  std::optional<double> stride;    ///< from this print to the next one of this side
  std::optional<double> length;    ///< of the print, claws as published
  std::optional<double> width;     ///< of the print
  std::optional<double> gauge;     ///< from left to right across the direction of travel
  std::optional<double> ahead;     ///< fore prints: centre ahead of the hind print of its side and number
  bool operator==(const Footprint&) const = default;
};

/// Footprints of one animal in the order in which they were made, hind and fore feet each among themselves, and where
/// they lie on the ground.
struct Trackway {
  std::vector<Footprint> prints;
  double hipMultiplier = kHipRules.front().multiplier;
  double x = 0, y = 0;  ///< of the first hind print's place on the line of travel, m, world
  double heading = 0;   ///< of the line of travel from world x towards y, rad
  bool operator==(const Trackway&) const = default;
};

/// What follows from one row; absent where a length it needs is absent.
struct PrintValues {
  std::optional<double> paceAngulation;  ///< rad
  std::optional<double> gauge;           ///< as typed, else from the triangle of paces and stride, m
  std::optional<double> gaugeToLength;
  std::optional<double> hipHeight;  ///< of hind prints only, m
  std::optional<double> relativeStride;
  std::optional<double> speed;  ///< m/s, to be told with its caution
};

PrintValues valuesOf(const Footprint& print, double hipMultiplier);

/// Of all hind prints that have a value.
struct MinMeanMax {
  double min = 0, mean = 0, max = 0;
  int count = 0;
};
struct TrackwaySummary {
  std::optional<MinMeanMax> hipHeight, paceAngulation, gauge, relativeStride, speed;
};
TrackwaySummary summarise(const Trackway& trackway);

}  // namespace zyga::study
