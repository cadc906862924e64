#include "core/study/claims/claim_probability.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <exception>
#include <numbers>
#include <utility>

#include "core/kinematics/standing.h"
#include "core/range/joint_evaluator.h"
#include "core/range/limit_search.h"
#include "core/range/neutral.h"
#include "core/study/claims/claim_contact.h"
#include "core/study/claims/claim_trial.h"
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

/// The range of dorsiflexion of one joint of a sample, near to what range::motionRange finds and in a fraction of its
/// time: by wide steps from neutral, the first one past the end that the animal as it is has, and false position
/// (Illinois) on how far the worst criterion is past its limit, to 1e-4 rad where that is smooth. Gaps in the support
/// narrower than a step are not seen; a joint whose neutral is not supported is searched in full.
class SampleRange {
 public:
  /// `asIs`: the range of the same joint of the animal as it is.
  SampleRange(const range::Scenario& sample, JointIndex joint, const range::MotionRange& asIs)
      : sample_(sample),
        joint_(joint),
        asIs_(asIs),
        judge_(sample.specimen(), sample.articulation(), sample.assumptions(), joint),
        leans_(judge_.withMotion(Eigen::Vector3d::Zero(), 0, 0.1)[2] != 0) {}

  range::MotionRange find() const {
    if (!judge_.hasFacets() || !(violation(0) < 0))
      return range::motionRange(sample_.specimen(), sample_.articulation(), sample_.assumptions(), joint_,
                                Eigen::Vector3d::Zero(), 0);
    range::MotionRange found;
    found.min = end(-1, asIs_.min);
    found.max = end(1, asIs_.max);
    return found;
  }

 private:
  /// Past the limit by so much, as a share of the criterion's own scale; below zero inside.
  double violation(double angle) const {
    constexpr double kLeast = 1e-12;
    const Eigen::Vector3d angles =
        leans_ ? judge_.withMotion(Eigen::Vector3d::Zero(), 0, angle) : Eigen::Vector3d(angle, 0, 0);
    double worst = -1;
    for (const range::Finding& c : judge_.criteria(angles))
      worst =
          std::max(worst, c.level == range::Level::Beyond ? std::max(c.excess, kLeast) : std::min(c.excess, -kLeast));
    return worst;
  }

  double end(double sign, double asIs) const {
    constexpr double kWide = 4 * std::numbers::pi / 180, kNear = 1e-4;  // rad
    double inside = 0, outside = 0, atInside = violation(0), atOutside = 0;
    double step = std::max(kWide, 1.3 * sign * asIs);
    do {
      outside = inside + sign * std::exchange(step, kWide);
      if (std::abs(outside) > range::kSearchedFar) return sign * range::kSearchedFar;
      atOutside = violation(outside);
      if (atOutside < 0) {
        inside = outside;
        atInside = atOutside;
      }
    } while (atOutside < 0);
    constexpr int kMostSteps = 40;
    double root = inside;
    int stayed = 0;  // how often the same end was replaced: + the outer one, - the inner one
    for (int i = 0; i < kMostSteps && std::abs(outside - inside) > kNear; ++i) {
      const double next = inside + (outside - inside) * atInside / (atInside - atOutside);
      const double at = violation(next);
      root = next;
      const double moved = at < 0 ? next - inside : outside - next;
      if (at < 0) {
        inside = next;
        atInside = at;
        stayed = std::min(stayed, 0) - 1;
        if (stayed < -1) atOutside /= 2;
      } else {
        outside = next;
        atOutside = at;
        stayed = std::max(stayed, 0) + 1;
        if (stayed > 1) atInside /= 2;
      }
      if (std::abs(moved) < kNear && i > 1) break;
    }
    return root;
  }

  const range::Scenario& sample_;
  JointIndex joint_;
  const range::MotionRange& asIs_;
  range::JointEvaluator judge_;
  bool leans_;
};

enum class SampleEnd { Failed, NotAnswered, Unsupported, Supported };

/// The animals of one probability, each put to the claim.
class Sampler {
 public:
  Sampler(const range::Scenario& scenario, const Claim& claim, const ClaimSite& site, const Measures& measures,
          const ProbabilityOptions& options)
      : scenario_(scenario),
        claim_(claim),
        measures_(measures),
        options_(options),
        chain_(site.chain),
        bends_(site.joints),
        path_(scenario.specimen().chainTo(site.span.to)),
        feet_(kinematics::plantedFeet(scenario.specimen(), scenario.placement())),
        asIs_(scenario.specimen().joints.size()) {
    for (const JointIndex joint : bends_)
      asIs_[joint.value] = range::motionRange(scenario.specimen(), scenario.articulation(), scenario.assumptions(),
                                              joint, Eigen::Vector3d::Zero(), 0);
    if (!scenario.contact()) return;
    ends_ = ContactEnds(scenario, site, widestOf(scenario.assumptions(), options));
    const ClearRanges clear(scenario, site, claim, rangesWithContact(scenario));
    ends_.tighten(scenario, site, clear);
    asPosed_ = !clear.pairs().collide(scenario.pose());
  }

  bool variesMeasures() const { return options_.varyMeasures && measures_.filled && measures_.build; }

  SampleEnd operator()(std::uint32_t number) const {
    try {
      return put(made(Draw(options_.seed, number)));
    } catch (const std::exception&) {
      return SampleEnd::Failed;  // counted and told
    }
  }

 private:
  range::Scenario made(const Draw& draw) const {
    std::shared_ptr<const Specimen> specimen = scenario_.sharedSpecimen();
    if (variesMeasures())
      specimen = std::make_shared<const Specimen>(
          distorted(measures_.build(withErrors(*measures_.filled, options_.errors, draw)), options_.distortion, draw));
    const range::Assumptions assumptions = assumptionsOf(scenario_.assumptions(), options_, chain_, draw);
    Articulation articulation = articulated(*specimen, assumptions);
    Pose pose = scenario_.pose();
    if (variesMeasures() && !feet_.empty()) pose = kinematics::stand(*specimen, articulation, pose, feet_);
    return {std::move(specimen), assumptions, std::move(articulation), pose};
  }

  /// Of the column only what carries the span is articulated anew: what bends under the sample's assumptions, the
  /// trunk under the scenario's.
  Articulation articulated(const Specimen& specimen, const range::Assumptions& assumptions) const {
    Articulation articulation = scenario_.articulation();
    if (specimen.joints.size() != articulation.rests.size()) throw std::length_error("joints");
    for (std::size_t j = 0; variesMeasures() && j < specimen.joints.size(); ++j)
      if (!specimen.joints[j].hasFacets()) articulation.rests[j].rotation = specimen.joints[j].restRotation;
    for (const JointIndex joint : path_) {
      const bool bends = std::find(bends_.begin(), bends_.end(), joint) != bends_.end();
      if (!bends && !variesMeasures()) continue;
      Articulation::Rest& rest = articulation.rests[joint.value];
      const bool axialTyped = rest.axialTyped;
      rest = range::articulate(specimen, joint, bends ? assumptions : scenario_.assumptions());
      rest.axialTyped = axialTyped;
    }
    return articulation;
  }

  SampleEnd put(const range::Scenario& sample) const {
    const ClaimSite site = siteOf(sample, claim_);
    if (!site.missing.empty()) return SampleEnd::Failed;
    bool noRange = false;
    const RangeOfJoint ranges = [&](JointIndex joint) {
      const range::MotionRange whole = SampleRange(sample, joint, asIs_[joint.value]).find();
      noRange = noRange || whole.empty;
      return ends_.cut(sample.specimen(), sample.articulation(), joint, whole);
    };
    const auto trial = claimTrial(sample, site, claim_, {ranges, asPosed_});
    if (noRange) return SampleEnd::NotAnswered;
    return trial->supported() ? SampleEnd::Supported : SampleEnd::Unsupported;
  }

  const range::Scenario& scenario_;
  const Claim& claim_;
  const Measures& measures_;
  const ProbabilityOptions& options_;
  Chain chain_;
  std::vector<JointIndex> bends_, path_;
  std::vector<kinematics::Foot> feet_;
  std::vector<range::MotionRange> asIs_;  ///< by joint, of those that bend
  ContactEnds ends_;
  bool asPosed_ = true;
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

std::optional<ClaimProbability> claimProbability(const range::Scenario& scenario, const Claim& claim,
                                                 const Measures& measures, const ProbabilityOptions& options,
                                                 const task::Task& task) {
  ClaimProbability made;
  made.options = options;
  made.options.samples = std::max(kLeastSamples, options.samples);
  made.contact = scenario.contact() != nullptr;
  const ClaimSite site = siteOf(scenario, claim);
  if (!site.missing.empty() || !validate(claim).empty()) {
    made.failed = made.options.samples;
    return made;
  }
  const Sampler sampler(scenario, claim, site, measures, made.options);
  made.measures = sampler.variesMeasures();
  std::vector<SampleEnd> ends(static_cast<std::size_t>(made.options.samples));
  const auto work = [&](std::size_t i) { ends[i] = sampler(static_cast<std::uint32_t>(i)); };
  if (!task::forEach(ends.size(), task.withThreads(options.threads), work)) return std::nullopt;
  const auto count = [&](SampleEnd end) { return static_cast<int>(std::count(ends.begin(), ends.end(), end)); };
  made.supported = count(SampleEnd::Supported);
  made.failed = count(SampleEnd::Failed);
  made.notAnswered = count(SampleEnd::NotAnswered);
  // The distribution of a share after n trials of which k succeeded is Beta(k + 1, n - k + 1) where it was even before.
  const double n = made.answered(), a = made.supported + 1, b = n - made.supported + 1;
  if (n > 0) made.probability = made.supported / n;
  made.standardError = std::sqrt(a * b / (a + b + 1)) / (a + b);
  return made;
}

}  // namespace zyga::study
