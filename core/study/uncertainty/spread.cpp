#include "core/study/uncertainty/spread.h"

#include <algorithm>
#include <cmath>
#include <exception>

#include "core/anatomy/summary.h"
#include "core/kinematics/standing.h"
#include "core/range/findings.h"
#include "core/range/neutral.h"
#include "core/study/reach/elevation.h"
#include "core/study/reach/reach_space.h"
#include "core/task/parallel.h"

namespace zyga::study {
namespace {

using anatomy::Specimen;
using kinematics::Articulation;
using kinematics::Pose;

/// Streams of the assumptions; measurement_error.h keeps clear of them.
enum Stream : std::uint64_t { kOverlapStream = 1, kCartilageStream = 2 };

double drawn(const Between& between, double uniform) { return std::lerp(between.min, between.max, uniform); }

range::Assumptions assumptionsOf(const range::Assumptions& own, const SpreadOptions& options, const Draw& draw) {
  if (!options.varyAssumptions) return own;
  range::Assumptions other = own;
  other.minOverlap = drawn(options.overlap, draw.uniform(kOverlapStream));
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

bool neckSupported(const range::Scenario& scenario) {
  const auto joints = jointsOf(scenario.specimen(), Chain::Neck);
  return std::none_of(joints.begin(), joints.end(), [&](const auto joint) {
    return range::levelAt(scenario.specimen(), scenario.articulation(), scenario.assumptions(), joint,
                          scenario.pose()[joint]) == range::Level::Beyond;
  });
}

SpreadDraw measured(const range::Scenario& scenario) {
  const Elevation found = elevation(scenario);
  const auto snout = [&](NeckCarriage which) { return found[which].carriage.snoutHeight; };
  const auto slope = [&](NeckCarriage which) { return found[which].slope; };
  SpreadDraw one;
  one.values = {anatomy::summarise(scenario.specimen()).neck,
                snout(NeckCarriage::Neutral),
                snout(NeckCarriage::Highest),
                snout(NeckCarriage::Lowest),
                snout(NeckCarriage::Present),
                slope(NeckCarriage::Neutral),
                slope(NeckCarriage::Highest),
                slope(NeckCarriage::Present)};
  one.supported = neckSupported(scenario);
  one.usable = true;
  return one;
}

/// The animals of one spread.
class Maker {
 public:
  Maker(const range::Scenario& scenario, const anatomy::MeasurementTable& filled, const Builder& build,
        const SpreadOptions& options)
      : scenario_(scenario), filled_(filled), build_(build), options_(options) {
    feet_ = kinematics::plantedFeet(scenario.specimen(), scenario.placement());
  }

  SpreadDraw operator()(std::uint32_t number) const {
    const Draw draw(options_.seed, number);
    try {
      const auto specimen = std::make_shared<const Specimen>(build_(withErrors(filled_, options_.errors, draw)));
      const auto skull = specimen->findBone("skull");
      const Pose& present = scenario_.pose();
      if (!skull || specimen->joints.size() != present.angles.size()) return {};
      const range::Assumptions assumptions = assumptionsOf(scenario_.assumptions(), options_, draw);
      const Articulation articulation = articulationTo(*specimen, *skull, assumptions);
      const Pose pose = feet_.empty() ? present : kinematics::stand(*specimen, articulation, present, feet_);
      return measured({specimen, assumptions, articulation, pose});
    } catch (const std::exception&) {
      return {};  // counted and told
    }
  }

 private:
  const range::Scenario& scenario_;
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

std::optional<SpreadStudy> spread(const range::Scenario& scenario, const anatomy::MeasurementTable& filled,
                                  const Builder& build, const SpreadOptions& options, const task::Task& task) {
  if (!scenario.specimen().findBone("skull")) throw reason::Failure(reason::Reason(kNoSnout));
  SpreadStudy made;
  made.options = options;
  made.asIs = measured(scenario).values;
  const Maker maker(scenario, filled, build, options);
  std::vector<SpreadDraw> all(static_cast<std::size_t>(std::max(0, options.draws)));
  const auto work = [&](std::size_t i) { all[i] = maker(static_cast<std::uint32_t>(i)); };
  if (!task::forEach(all.size(), task.withThreads(options.threads), work)) return std::nullopt;
  for (const SpreadDraw& draw : all) {
    if (draw.usable) made.draws.push_back(draw);
  }
  made.failed = static_cast<int>(all.size() - made.draws.size());
  summariseDraws(made);
  return made;
}

}  // namespace zyga::study
