#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/kinematics/feet.h"
#include "core/study/ground/pace.h"

namespace zyga::study {

using kinematics::Foot;

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
struct PrintFigures {
  std::optional<double> paceAngulation;  ///< rad
  std::optional<double> gauge;           ///< as typed, else from the triangle of paces and stride, m
  std::optional<double> gaugeToLength;
  std::optional<double> hipHeight;  ///< of hind prints only, m
  std::optional<double> relativeStride;
  std::optional<double> speed;  ///< m/s, to be shown with kSpeedCaution
};

PrintFigures figuresOf(const Footprint& print, double hipMultiplier);

/// Hip height, stride and speed from all hind prints that have them: least, mean, most.
struct Spread {
  double least = 0, mean = 0, most = 0;
  int count = 0;
};
struct TrackwaySummary {
  std::optional<Spread> hipHeight, paceAngulation, gauge, relativeStride, speed;
};
TrackwaySummary summarise(const Trackway& trackway);

}  // namespace zyga::study
