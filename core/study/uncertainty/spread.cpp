#include "core/study/uncertainty/spread.h"

#include <algorithm>
#include <cmath>
#include <exception>

#include "core/anatomy/summary.h"
#include "core/crew/crew.h"
#include "core/kinematics/standing.h"
#include "core/range/findings.h"
#include "core/range/neutral.h"
#include "core/study/figures_text.h"
#include "core/study/reach/elevation.h"

namespace zyga::study {
namespace {

using anatomy::Specimen;
using kinematics::Articulation;
using kinematics::Pose;

/// Streams of the assumptions; measurement_error.h keeps clear of them.
enum Stream : std::uint64_t { kOverlapStream = 1, kCartilageStream = 2 };

double drawn(const Between& between, double uniform) { return std::lerp(between.least, between.most, uniform); }

range::Assumptions assumptionsOf(const range::Assumptions& own, const SpreadOptions& options, const Draw& draw) {
  if (!options.varyAssumptions) return own;
  range::Assumptions other = own;
  other.leastOverlap = drawn(options.overlap, draw.uniform(kOverlapStream));
  other.neck = other.trunk = other.tail = {range::Cartilage::In::PercentOfCentrum,
                                           drawn(options.cartilagePercent, draw.uniform(kCartilageStream))};
  return other;
}

/// Only what carries the head has to be articulated.
Articulation articulationTo(const Specimen& specimen, anatomy::BoneIndex bone, const range::Assumptions& assumptions) {
  Articulation articulation = kinematics::restArticulation(specimen);
  for (const auto joint : specimen.chainTo(bone)) {
    const double cartilage = assumptions.cartilageOf(specimen[joint].region).thickness(specimen[joint]);
    articulation.rests[joint.value] = range::articulate(specimen, joint, cartilage, assumptions.neutralBy);
  }
  return articulation;
}

bool neckSupported(const Specimen& specimen, const Articulation& articulation, const range::Assumptions& assumptions,
                   const Pose& pose) {
  const auto joints = jointsOf(specimen, Chain::Neck);
  return std::none_of(joints.begin(), joints.end(), [&](const auto joint) {
    return range::levelAt(specimen, articulation, assumptions, joint, pose[joint]) == range::Level::Beyond;
  });
}

SpreadDraw measured(const Subject& subject) {
  const Elevation found = elevation(subject);
  const auto snout = [&](NeckCarriage which) { return found[which].carriage.snoutHeight; };
  const auto slope = [&](NeckCarriage which) { return found[which].slope; };
  SpreadDraw one;
  one.values = {anatomy::summarise(subject.specimen).neck,
                snout(NeckCarriage::Neutral),
                snout(NeckCarriage::Highest),
                snout(NeckCarriage::Lowest),
                snout(NeckCarriage::Present),
                slope(NeckCarriage::Neutral),
                slope(NeckCarriage::Highest),
                slope(NeckCarriage::Present)};
  one.supported = neckSupported(subject.specimen, subject.articulation, subject.assumptions, subject.pose);
  one.usable = true;
  return one;
}

/// The animals of one spread.
class Maker {
 public:
  Maker(const Subject& subject, const anatomy::MeasurementTable& filled, const Builder& build,
        const SpreadOptions& options)
      : subject_(subject), filled_(filled), build_(build), options_(options) {
    const auto X_WB = kinematics::place(subject.specimen, subject.articulation, subject.pose);
    feet_ = kinematics::plantedFeet(subject.specimen, X_WB);
  }

  SpreadDraw operator()(std::uint32_t number) const {
    const Draw draw(options_.seed, number);
    try {
      const Specimen specimen = build_(withErrors(filled_, options_.errors, draw));
      const auto skull = specimen.findBone("skull");
      if (!skull || specimen.joints.size() != subject_.pose.angles.size()) return {};
      const range::Assumptions assumptions = assumptionsOf(subject_.assumptions, options_, draw);
      const Articulation articulation = articulationTo(specimen, *skull, assumptions);
      const Pose pose = feet_.empty() ? subject_.pose : kinematics::stand(specimen, articulation, subject_.pose, feet_);
      return measured({specimen, articulation, assumptions, pose});
    } catch (const std::exception&) {
      return {};  // counted and told
    }
  }

 private:
  const Subject& subject_;
  const anatomy::MeasurementTable& filled_;
  const Builder& build_;
  const SpreadOptions& options_;
  std::vector<kinematics::Foot> feet_;
};

void summariseDraws(SpreadStudy& spread) {
  for (const SpreadOf what : kSpreads) {
    spread.quantiles[static_cast<std::size_t>(what)] = quantilesOf(spread.of(what));
  }
  const auto supported =
      std::count_if(spread.draws.begin(), spread.draws.end(), [](const auto& draw) { return draw.supported; });
  if (!spread.draws.empty()) {
    spread.supportedShare = static_cast<double>(supported) / static_cast<double>(spread.draws.size());
  }
}

std::string sentence(const SpreadStudy& spread, SpreadOf what) {
  const auto i = static_cast<std::size_t>(what);
  const Quantiles& q = spread.quantiles[i];
  const auto word = [&](double value) { return isAngle(what) ? degreesWord(value) : metresWord(value); };
  return capitalised(toText(what)) + ": " + word(q.q50) + ", between " + word(q.q05) + " and " + word(q.q95) +
         " in nine draws of ten; the table as it is gives " + word(spread.asIs[i]) + ".";
}

}  // namespace

std::string_view toText(SpreadOf what) {
  static constexpr std::array<std::string_view, kSpreads.size()> kWords{"neck length",
                                                                        "neutral snout height",
                                                                        "highest snout height",
                                                                        "lowest snout height",
                                                                        "present snout height",
                                                                        "neutral neck slope",
                                                                        "neck slope with the snout highest",
                                                                        "present neck slope"};
  return kWords[static_cast<std::size_t>(what)];
}

bool isAngle(SpreadOf what) { return what >= SpreadOf::NeutralSlope; }

std::vector<double> SpreadStudy::of(SpreadOf what) const {
  std::vector<double> values;
  values.reserve(draws.size());
  for (const SpreadDraw& draw : draws) values.push_back(draw.values[static_cast<std::size_t>(what)]);
  return values;
}

double SpreadStudy::shareAtLeast(SpreadOf what, double value) const {
  if (draws.empty()) return 0;
  const auto many = std::count_if(draws.begin(), draws.end(), [&](const SpreadDraw& draw) {
    return draw.values[static_cast<std::size_t>(what)] >= value;
  });
  return static_cast<double>(many) / static_cast<double>(draws.size());
}

std::optional<SpreadStudy> spread(const Subject& subject, const anatomy::MeasurementTable& filled, const Builder& build,
                                  const SpreadOptions& options, const Watch& watch) {
  SpreadStudy made;
  made.options = options;
  made.asIs = measured(subject).values;
  const Maker maker(subject, filled, build, options);
  std::vector<SpreadDraw> all(static_cast<std::size_t>(std::max(0, options.draws)));
  const auto work = [&](std::size_t i) { all[i] = maker(static_cast<std::uint32_t>(i)); };
  if (!crew::forEach(all.size(), watch.orders(options.threads), work)) return std::nullopt;
  for (const SpreadDraw& draw : all) {
    if (draw.usable) made.draws.push_back(draw);
  }
  made.failed = static_cast<int>(all.size() - made.draws.size());
  summariseDraws(made);
  return made;
}

std::vector<std::string> sentences(const SpreadStudy& spread) {
  std::vector<std::string> all;
  if (spread.draws.empty()) return {"No animal could be built from any of the draws."};
  for (const SpreadOf what : kSpreads) all.push_back(sentence(spread, what));
  all.push_back("The bones support the neck's present angles in " + figure(100 * spread.supportedShare, 0) + " % of " +
                std::to_string(spread.draws.size()) + " draws (seed " + std::to_string(spread.options.seed) + ").");
  if (spread.failed > 0) {
    all.push_back(std::to_string(spread.failed) + " draws gave no animal that could be built and were left out.");
  }
  return all;
}

}  // namespace zyga::study
