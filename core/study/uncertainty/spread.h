#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string_view>
#include <vector>

#include "core/range/scenario.h"
#include "core/study/uncertainty/draws.h"
#include "core/study/uncertainty/measurement_error.h"
#include "core/task/task.h"

namespace zyga::study {

/// What is measured in every sample, an animal built from varied measures.
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
/// Its id in files of numbers: "neck length", "highest snout height"...
std::string_view toText(SpreadOf what);
bool isAngle(SpreadOf what);

/// Evenly between two values.
struct Between {
  double min = 0;
  double max = 0;
  bool operator==(const Between&) const = default;
};

struct SpreadOptions {
  int draws = 400;
  std::uint64_t seed = 1;
  CellErrors errors;
  /// Assumptions that vary, evenly between the two values; equal values are not varied. Minimum overlap: a share, from
  /// half of the published rule (program default, no source) to the rule itself (Stevens & Parrish 1999).
  /// Cartilage: % of the centrum's length in neck, trunk and tail alike, from none to a turkey's (Taylor & Wedel 2013).
  /// Thicker cartilage raises the whole neck: of all that varies it changes heights most.
  Between overlap{0.25, 0.5};
  Between cartilagePercent{0, 4.56};
  bool varyAssumptions = true;  ///< false: the scenario's own hold in every draw
  unsigned threads = 0;         ///< 0: all cores; the numbers are the same
  bool operator==(const SpreadOptions&) const = default;
};

/// One sample: the numbers, and whether the neck's present angles are within its range.
struct SpreadDraw {
  std::array<double, kSpreads.size()> values{};
  bool supported = false;
  bool usable = false;  ///< false: no animal could be built from these numbers
};

struct SpreadStudy {
  SpreadOptions options;
  std::array<double, kSpreads.size()> asIs{};  ///< of the animal as it is
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

/// What the scenario's specimen was built from, and how another one is.
struct Measures {
  std::shared_ptr<const anatomy::MeasurementTable> filled;
  Builder build;
};

/// Builds the animal anew for every draw, articulates it, stands it on the feet it stands on now and measures neck and
/// head. Nothing when cancelled. Some ten milliseconds a draw and core.
std::optional<SpreadStudy> spread(const range::Scenario& scenario, const anatomy::MeasurementTable& filled,
                                  const Builder& build, const SpreadOptions& options = {}, const task::Task& task = {});

}  // namespace zyga::study
