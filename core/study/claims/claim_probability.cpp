#include "core/study/claims/claim_probability.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <exception>
#include <utility>
#include <vector>

#include "core/kinematics/standing.h"
#include "core/range/limit_search.h"
#include "core/range/neutral.h"
#include "core/study/claims/claim_contact.h"
#include "core/study/claims/claim_trial.h"
#include "core/study/claims/sample_range.h"
#include "core/task/parallel.h"

namespace zyga::study {
namespace {

using anatomy::Specimen;
using kinematics::Articulation;
using kinematics::JointIndex;
using kinematics::Pose;

/// Streams of the assumptions; withErrors and distorted keep clear of them.
enum SampleStream : std::uint64_t {
  kSampleOverlap = 16,
  kSampleCartilage,
  kSampleFacetContact,
  kSampleFacetGap,
  kSampleNeutral
};

double evenly(const Between& between, double uniform) { return std::lerp(between.min, between.max, uniform); }

double cartilageFrom(const CartilageSpread& spread, double uniform) {
  const double grown = 1 - spread.shareOfTail;
  if (uniform < grown) return evenly(spread.grown, uniform / grown);
  return evenly({spread.grown.max, spread.most}, (uniform - grown) / spread.shareOfTail);
}

range::Assumptions assumptionsOf(const range::Assumptions& own, const ProbabilityOptions& options, Chain bends,
                                 const Draw& draw) {
  range::Assumptions other = own;
  if (options.varyAssumptions) {
    const auto factor = [&](SampleStream stream) {
      return std::pow(options.toleranceFactor, 2 * draw.uniform(stream) - 1);
    };
    other.minOverlap = evenly(options.overlap, draw.uniform(kSampleOverlap));
    (bends == Chain::Neck ? other.neck : other.tail) = {
        range::Cartilage::In::PercentOfCentrum, cartilageFrom(options.cartilage, draw.uniform(kSampleCartilage))};
    other.facetContactTolerated *= factor(kSampleFacetContact);
    other.facetGapTolerated *= factor(kSampleFacetGap);
  }
  if (options.varyDefinitions)
    other.neutralBy = draw.uniform(kSampleNeutral) < 0.5 ? range::NeutralBy::Facets : range::NeutralBy::FacetsAndCentra;
  return other;
}

/// The most that any sample grants facets.
range::Assumptions widestOf(const range::Assumptions& own, const ProbabilityOptions& options) {
  range::Assumptions widest = own;
  if (!options.varyAssumptions) return widest;
  widest.minOverlap = std::min(own.minOverlap, options.overlap.min);
  widest.facetContactTolerated *= options.toleranceFactor;
  widest.facetGapTolerated *= options.toleranceFactor;
  return widest;
}

enum class SampleEnd { Failed, NotAnswered, Unsupported, Supported };

/// A claim that samples are put to.
struct AskedClaim {
  std::size_t index = 0;  ///< among all that are asked
  const Claim* claim = nullptr;
  std::optional<Pose> near;  ///< how the animal as it is comes nearest to a claim's point
  ContactEnds ends;
  bool asPosed = true;
};

/// What bends in some of the claims, and those claims.
struct BendingPart {
  Chain chain = Chain::Neck;
  std::vector<JointIndex> bends, path;   ///< of the path all that carries what one of the claims is measured on
  std::vector<range::MotionRange> asIs;  ///< by joint, of those that bend
  std::vector<AskedClaim> claims;
};

/// The animals of one or more probabilities, each made once and put to every claim.
class Sampler {
 public:
  Sampler(const range::Scenario& scenario, const Measures& measures, const ProbabilityOptions& options)
      : scenario_(scenario),
        measures_(measures),
        options_(options),
        feet_(kinematics::plantedFeet(scenario.specimen(), scenario.placement())) {}

  void ask(std::size_t index, const Claim& claim, const ClaimSite& site) {
    BendingPart& part = partOf(site);
    const std::vector<JointIndex> path = scenario_.specimen().chainTo(site.span.to);
    if (path.size() > part.path.size()) part.path = path;
    AskedClaim& asked = part.claims.emplace_back();
    asked.index = index;
    asked.claim = &claim;
    if (isPoint(claim.kind)) asked.near = claimTrial(scenario_, site, claim, {})->farthest();
    if (!scenario_.contact()) return;
    asked.ends = ContactEnds(scenario_, site, widestOf(scenario_.assumptions(), options_));
    const ClearRanges clear(scenario_, site, claim, rangesWithContact(scenario_));
    asked.ends.tighten(scenario_, site, clear);
    asked.asPosed = !clear.pairs().collide(scenario_.pose());
  }

  bool variesMeasures() const { return options_.varyMeasures && measures_.filled && measures_.build; }

  /// Of the animal of this number, for each claim by its index. What fails is counted and told.
  void operator()(std::uint32_t number, std::vector<SampleEnd>& ends) const {
    const Draw draw(options_.seed, number);
    try {
      const std::shared_ptr<const Specimen> specimen = animal(draw);
      for (const BendingPart& part : parts_) put(specimen, part, draw, ends);
    } catch (const std::exception&) {
    }
  }

 private:
  BendingPart& partOf(const ClaimSite& site) {
    for (BendingPart& part : parts_)
      if (part.bends == site.joints && part.chain == site.chain) return part;
    BendingPart& part = parts_.emplace_back();
    part.chain = site.chain;
    part.bends = site.joints;
    part.asIs.resize(scenario_.specimen().joints.size());
    for (const JointIndex joint : part.bends)
      part.asIs[joint.value] = range::motionRange(scenario_.specimen(), scenario_.articulation(),
                                                  scenario_.assumptions(), joint, Eigen::Vector3d::Zero(), 0);
    return part;
  }

  std::shared_ptr<const Specimen> animal(const Draw& draw) const {
    if (!variesMeasures()) return scenario_.sharedSpecimen();
    return std::make_shared<const Specimen>(
        distorted(measures_.build(withErrors(*measures_.filled, options_.errors, draw)), options_.distortion, draw));
  }

  range::Scenario made(const std::shared_ptr<const Specimen>& specimen, const BendingPart& part,
                       const Draw& draw) const {
    const range::Assumptions assumptions = assumptionsOf(scenario_.assumptions(), options_, part.chain, draw);
    Articulation articulation = articulated(*specimen, assumptions, part);
    Pose pose = scenario_.pose();
    if (variesMeasures() && !feet_.empty()) pose = kinematics::stand(*specimen, articulation, pose, feet_);
    return {specimen, assumptions, std::move(articulation), pose};
  }

  /// Of the column only what carries the span is articulated anew: what bends under the sample's assumptions, the
  /// trunk under the scenario's.
  Articulation articulated(const Specimen& specimen, const range::Assumptions& assumptions,
                           const BendingPart& part) const {
    Articulation articulation = scenario_.articulation();
    if (specimen.joints.size() != articulation.rests.size()) throw std::length_error("joints");
    for (std::size_t j = 0; variesMeasures() && j < specimen.joints.size(); ++j)
      if (!specimen.joints[j].hasFacets()) articulation.rests[j].rotation = specimen.joints[j].restRotation;
    for (const JointIndex joint : part.path) {
      const bool bends = std::find(part.bends.begin(), part.bends.end(), joint) != part.bends.end();
      if (!bends && !variesMeasures()) continue;
      Articulation::Rest& rest = articulation.rests[joint.value];
      const bool axialTyped = rest.axialTyped;
      rest = range::articulate(specimen, joint, bends ? assumptions : scenario_.assumptions());
      rest.axialTyped = axialTyped;
    }
    return articulation;
  }

  void put(const std::shared_ptr<const Specimen>& specimen, const BendingPart& part, const Draw& draw,
           std::vector<SampleEnd>& ends) const {
    const range::Scenario sample = made(specimen, part, draw);
    std::vector<std::optional<range::MotionRange>> found(part.asIs.size());  // once for all claims
    const RangeOfJoint ranges = [&](JointIndex joint) {
      auto& range = found[joint.value];
      if (!range) range = SampleRange(sample, joint, part.asIs[joint.value]).find();
      return *range;
    };
    for (const AskedClaim& asked : part.claims) {
      try {
        ends[asked.index] = put(sample, asked, ranges);
      } catch (const std::exception&) {
      }
    }
  }

  SampleEnd put(const range::Scenario& sample, const AskedClaim& asked, const RangeOfJoint& ranges) const {
    const ClaimSite site = siteOf(sample, *asked.claim);
    if (!site.missing.empty()) return SampleEnd::Failed;
    bool noRange = false;
    const RangeOfJoint cut = [&](JointIndex joint) {
      const range::MotionRange whole = ranges(joint);
      noRange = noRange || whole.empty;
      return asked.ends.cut(sample.specimen(), sample.articulation(), joint, whole);
    };
    const auto trial = claimTrial(
        sample, site, *asked.claim,
        {.ranges = cut, .asPosed = asked.asPosed, .rangesAlone = true, .near = asked.near ? &*asked.near : nullptr});
    if (noRange) return SampleEnd::NotAnswered;
    return trial->supported() ? SampleEnd::Supported : SampleEnd::Unsupported;
  }

  const range::Scenario& scenario_;
  const Measures& measures_;
  const ProbabilityOptions& options_;
  std::vector<kinematics::Foot> feet_;
  std::vector<BendingPart> parts_;
};

}  // namespace

Likelihood likelihoodOf(double probability) {
  if (probability >= 0.99) return Likelihood::VirtuallyCertain;
  if (probability >= 0.90) return Likelihood::VeryLikely;
  if (probability >= 0.66) return Likelihood::Likely;
  if (probability > 0.33) return Likelihood::AboutAsLikelyAsNot;
  if (probability > 0.10) return Likelihood::Unlikely;
  if (probability > 0.01) return Likelihood::VeryUnlikely;
  return Likelihood::ExceptionallyUnlikely;
}

std::string_view toText(Likelihood likelihood) {
  static constexpr std::array<std::string_view, 7> kLikelihoodIds{
      "virtually-certain", "very-likely",           "likely", "about-as-likely-as-not", "unlikely",
      "very-unlikely",     "exceptionally-unlikely"};
  return kLikelihoodIds[static_cast<std::size_t>(likelihood)];
}

bool ProbabilityOptions::sameNumbers(const ProbabilityOptions& other) const {
  return samples == other.samples && seed == other.seed && errors == other.errors && distortion == other.distortion &&
         overlap == other.overlap && cartilage == other.cartilage && toleranceFactor == other.toleranceFactor &&
         varyMeasures == other.varyMeasures && varyAssumptions == other.varyAssumptions &&
         varyDefinitions == other.varyDefinitions;
}

std::optional<std::vector<ClaimProbability>> claimProbabilities(const range::Scenario& scenario,
                                                                const std::vector<Claim>& claims,
                                                                const Measures& measures,
                                                                const ProbabilityOptions& options,
                                                                const task::Task& task) {
  ProbabilityOptions used = options;
  used.samples = std::max(kLeastSamples, options.samples);
  Sampler sampler(scenario, measures, used);
  std::vector<ClaimProbability> made(claims.size());
  bool any = false;
  for (std::size_t i = 0; i < claims.size(); ++i) {
    made[i].options = used;
    made[i].contact = scenario.contact() != nullptr;
    const ClaimSite site = siteOf(scenario, claims[i]);
    if (!site.missing.empty() || !validate(claims[i]).empty()) continue;
    made[i].measures = sampler.variesMeasures();
    sampler.ask(i, claims[i], site);
    any = true;
  }
  std::vector<std::vector<SampleEnd>> ends(static_cast<std::size_t>(used.samples),
                                           std::vector<SampleEnd>(claims.size(), SampleEnd::Failed));
  const auto work = [&](std::size_t i) { sampler(static_cast<std::uint32_t>(i), ends[i]); };
  if (any && !task::forEach(ends.size(), task.withThreads(options.threads), work)) return std::nullopt;
  for (std::size_t i = 0; i < claims.size(); ++i) {
    ClaimProbability& one = made[i];
    const auto count = [&](SampleEnd end) {
      return static_cast<int>(
          std::count_if(ends.begin(), ends.end(), [&](const std::vector<SampleEnd>& of) { return of[i] == end; }));
    };
    one.supported = count(SampleEnd::Supported);
    one.failed = count(SampleEnd::Failed);
    one.notAnswered = count(SampleEnd::NotAnswered);
    // The distribution of a share after n trials of which k succeeded is Beta(k + 1, n - k + 1) where it was even
    // before.
    const double n = one.answered(), a = one.supported + 1, b = n - one.supported + 1;
    if (n > 0) one.probability = one.supported / n;
    if (n > 0) one.standardError = std::sqrt(a * b / (a + b + 1)) / (a + b);
  }
  return made;
}

std::optional<ClaimProbability> claimProbability(const range::Scenario& scenario, const Claim& claim,
                                                 const Measures& measures, const ProbabilityOptions& options,
                                                 const task::Task& task) {
  auto made = claimProbabilities(scenario, {claim}, measures, options, task);
  return made ? std::optional(std::move(made->front())) : std::nullopt;
}

}  // namespace zyga::study
