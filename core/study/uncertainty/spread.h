#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/study/subject.h"
#include "core/study/uncertainty/measurement_error.h"
#include "core/study/uncertainty/quantiles.h"

namespace zyga::study {

/// What is asked again and again of animals that might have been.
enum class SpreadOf {
  NeckLength,    ///< m, functional lengths of the cervicals
  NeutralSnout,  ///< m over the ground, neck neutral
  HighestSnout,  ///< neck most dorsiflexed
  LowestSnout,   ///< neck most ventriflexed; below zero it would be in the ground
  PresentSnout,  ///< the present angles
  NeutralSlope,  ///< rad, of the line from the neck's base to its end
  HighestSlope,
  PresentSlope,
};
inline constexpr std::array<SpreadOf, 8> kSpreads{
    SpreadOf::NeckLength,   SpreadOf::NeutralSnout, SpreadOf::HighestSnout, SpreadOf::LowestSnout,
    SpreadOf::PresentSnout, SpreadOf::NeutralSlope, SpreadOf::HighestSlope, SpreadOf::PresentSlope};
/// "neck length", "highest snout"...
std::string_view toText(SpreadOf what);
bool isAngle(SpreadOf what);

/// Evenly between two values.
struct Between {
  double least = 0;
  double most = 0;
  bool operator==(const Between&) const = default;
};

struct SpreadOptions {
  int draws = 400;
  std::uint64_t seed = 1;
  CellErrors errors;
  /// Assumptions that vary; a least that is the most stays put. Overlap: from the share that one group of living
  /// animals keeps to the published rule (Cobley et al. 2013; Kambic et al. 2017). Cartilage: % of the centrum's
  /// length, from bare bones to a turkey's (Taylor & Wedel 2013), in neck, trunk and tail alike; it raises the whole
  /// neck, so that it moves heights more than anything else.
  Between overlap{0.25, 0.5};
  Between cartilagePercent{0, 4.56};
  bool varyAssumptions = true;  ///< false: the subject's own hold in every draw
  unsigned threads = 0;         ///< 0: all cores; the numbers are the same
  bool operator==(const SpreadOptions&) const = default;
};

/// One animal that might have been: the numbers, and whether its bones support the neck's present angles.
struct SpreadDraw {
  std::array<double, kSpreads.size()> values{};
  bool supported = false;
  bool usable = false;  ///< false: no animal could be built from these numbers
};

struct SpreadStudy {
  SpreadOptions options;
  std::array<double, kSpreads.size()> asIs{};  ///< of the subject itself
  std::array<Quantiles, kSpreads.size()> quantiles;
  std::vector<SpreadDraw> draws;  ///< usable ones only, in order of their number
  int failed = 0;                 ///< draws of which no animal could be built
  double supportedShare = 0;      ///< of the draws, in how many the neck's present angles are supported

  std::vector<double> of(SpreadOf what) const;
  /// In what share of the draws a quantity is at least this: an answer to a claim, with its uncertainty.
  double shareAtLeast(SpreadOf what, double value) const;
};

/// What an animal of other measures is made of; buildSpecimen unless there are scans.
using Builder = std::function<anatomy::Specimen(const anatomy::MeasurementTable&)>;

/// Builds the animal anew for every draw, articulates it, stands it on the feet it stands on now and measures neck and
/// head. Nothing when cancelled. Some ten milliseconds a draw and core.
std::optional<SpreadStudy> spread(const Subject& subject, const anatomy::MeasurementTable& filled, const Builder& build,
                                  const SpreadOptions& options = {}, const Watch& watch = {});

/// "Highest snout: 6.32 m, between 5.90 and 6.81 m in nine draws of ten."
std::vector<std::string> sentences(const SpreadStudy& spread);

}  // namespace zyga::study
