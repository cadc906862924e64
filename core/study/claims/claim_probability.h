#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/study/claims/claim_answer.h"
#include "core/study/uncertainty/distortion.h"
#include "core/study/uncertainty/spread.h"

namespace zyga::study {

/// Calibrated words for a probability (Mastrandrea et al. 2010, Guidance note for lead authors of the IPCC fifth
/// assessment report on consistent treatment of uncertainties, table 1): 99-100, 90-100, 66-100, 33-66, 0-33, 0-10,
/// 0-1 %. Of those that hold the narrowest is said.
enum class Likelihood {
  VirtuallyCertain,
  VeryLikely,
  Likely,
  AboutAsLikelyAsNot,
  Unlikely,
  VeryUnlikely,
  ExceptionallyUnlikely
};
Likelihood likelihoodOf(double probability);
/// Its id in files and for machines: "virtually-certain", "about-as-likely-as-not"...
std::string_view toText(Likelihood likelihood);

/// Cartilage in the part that bends, % of the centrum's length, of a neck that nobody has seen with its cartilage: most
/// of it evenly between the thinnest and the thickest published of grown animals, the rest evenly from there to the
/// thickest of all, a young one's.
struct CartilageSpread {
  /// Grown: rhea 2.59, turkey 4.56, one sauropod 4.5 (Taylor & Wedel 2013, PLoS ONE 8(10):e78214); ostrich 6.3,
  /// horse 6.9 (second hand).
  Between grown{2.59, 6.9};
  /// Alligator 14.9 (second hand), juvenile sauropods 15 and 20, juvenile giraffe 24 (Taylor & Wedel 2013).
  double most = 24;
  double shareOfTail = 0.1;  ///< how much lies beyond the grown ones; program default, no source
  bool operator==(const CartilageSpread&) const = default;
};

struct ProbabilityOptions {
  int samples = 1000;  ///< at least kLeastSamples
  std::uint64_t seed = 1;

  CellErrors errors;
  DistortionErrors distortion;
  /// Evenly between what living necks keep, almost nothing (Kambic, Biewener & Pierce 2017, Front. Zool. 14:37), and
  /// the rule in use (Stevens & Parrish 1999, Science 284:798).
  Between overlap{0, 0.5};
  CartilageSpread cartilage;
  /// What facets may press into each other and gape is multiplied or divided by up to this, evenly in its logarithm,
  /// each by itself; program default, no source, as the tolerances are.
  double toleranceFactor = 2;

  bool varyMeasures = true;     ///< errors and distortion; needs the measures
  bool varyAssumptions = true;  ///< overlap, cartilage, tolerances; false: the scenario's own hold in every sample
  bool varyDefinitions = true;  ///< neutral by facets, or by facets and centra, in half of the samples each

  unsigned threads = 0;  ///< 0: all cores; the numbers are the same
  /// All but the threads, which change nothing.
  bool sameNumbers(const ProbabilityOptions& other) const;
};
inline constexpr int kLeastSamples = 1000;

struct ClaimProbability {
  ProbabilityOptions options;  ///< samples are at least kLeastSamples here
  int supported = 0;           ///< samples in which the claim is
  int failed = 0;              ///< of which no animal could be built, or none that the claim can be put to
  int notAnswered = 0;         ///< in which a joint that bends has no supported angle at all
  bool measures = false;       ///< the measures were varied
  bool contact = false;        ///< contact of the bones as they are ends the ranges in every sample
  /// Supported ones as a share of those that gave an answer; 0 where none did.
  double probability = 0;
  /// Of that share, from the number of samples alone: the standard deviation of what it may be before any sample was
  /// seen evenly between 0 and 1, so that it is never 0.
  double standardError = 0;

  int answered() const { return options.samples - failed - notAnswered; }
};

/// In what share of the animals that may have lived, for all that is known, a claim is supported. Every sample is built
/// from measures with errors (withErrors, distorted), articulated and judged under assumptions that are drawn as well
/// and stood on the feet that carry the scenario's; trunk, limbs and feet keep their angles, and only the part that
/// bends gets other cartilage. Which definition of a horizontal vertebra is in use is no chance and is not varied.
/// Where the scenario has its contact model, contact ends the ranges of neighbouring bones on the nominal shapes
/// (ContactEnds); bones that several joints move against each other are looked at in the answer alone. `measures` may
/// be empty: then only assumptions and definitions vary.
///
/// The same options give the same numbers on any number of threads. None when the task was cancelled. About two
/// seconds on two cores for heights and slopes, five for points.
std::optional<ClaimProbability> claimProbability(const range::Scenario& scenario, const Claim& claim,
                                                 const Measures& measures, const ProbabilityOptions& options = {},
                                                 const task::Task& task = {});

/// The same of several claims at once, in their order: each animal is made once and put to all of them, so that the
/// second claim of a neck costs a third of the first.
std::optional<std::vector<ClaimProbability>> claimProbabilities(const range::Scenario& scenario,
                                                                const std::vector<Claim>& claims,
                                                                const Measures& measures,
                                                                const ProbabilityOptions& options = {},
                                                                const task::Task& task = {});

}  // namespace zyga::study
