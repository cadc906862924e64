#include "app/verbs/claim_options.h"

#include <cmath>
#include <numbers>

namespace zyga::app {
namespace {

using study::Claim;
using study::ClaimKind;

constexpr double kDegree = std::numbers::pi / 180;

struct KindOption {
  OptionSpec spec;
  ClaimKind kind;
};

const std::vector<KindOption>& kindOptions() {
  static const std::vector<KindOption> all{
      {{"--head-height-m", "H", "head at least H metres high"}, ClaimKind::HeadHeight},
      {{"--neck-slope-deg", "A", "line from the neck's base to its end at least A degrees to the horizontal"},
       ClaimKind::NeckSlope},
      {{"--neck-base-deg", "A", "hindmost cervical at least A degrees to the horizontal"}, ClaimKind::NeckBaseSlope},
      {{"--ground-ahead-m", "D", "snout reaches the ground D metres ahead of the forefeet"}, ClaimKind::SnoutToGround},
      {{"--head-at-m", "D,H", "head reaches H metres high, D metres ahead of the forefeet"}, ClaimKind::HeadAhead},
      {{"--tail-base-deg", "A", "base of the tail within A degrees of level"}, ClaimKind::TailBaseLevel}};
  return all;
}

/// "D,H" as distance and height.
void readPoint(const GivenOption& given, const study::ClaimKindTraits& traits, Claim& claim) {
  const std::size_t comma = given.value.find(',');
  if (comma == std::string::npos) {
    throw BadInput(given.name + ": '" + given.value +
                   "' is not a distance and a height in metres with a comma between, such as 2,3.5");
  }
  claim.ahead = numberOf({given.name, given.value.substr(0, comma)}, -traits.most, traits.most, "metres ahead");
  claim.value = numberOf({given.name, given.value.substr(comma + 1)}, traits.least, traits.most, "metres of height");
}

Claim read(const KindOption& option, const std::string& value) {
  const study::ClaimKindTraits& traits = traitsOf(option.kind);
  const GivenOption given{std::string(option.spec.name), value};
  Claim claim{option.kind};
  if (traits.ahead) {
    readPoint(given, traits, claim);
  } else if (traits.angle) {
    claim.value =
        kDegree * numberOf(given, std::round(traits.least / kDegree), std::round(traits.most / kDegree), "degrees");
  } else {
    claim.value = numberOf(given, traits.least, traits.most, "metres");
  }
  return claim;
}

}  // namespace

std::vector<OptionSpec> claimOptions() {
  std::vector<OptionSpec> options;
  for (const KindOption& option : kindOptions()) options.push_back(option.spec);
  options.push_back({"--at-most", "", "turns a slope of the neck into an upper bound"});
  options.push_back({"--source", "TEXT", "who claims it"});
  return options;
}

std::optional<Claim> claimFrom(const Arguments& arguments) {
  std::optional<Claim> claim;
  for (const KindOption& option : kindOptions()) {
    const auto value = arguments.find(option.spec.name);
    if (!value) continue;
    if (claim)
      throw BadInput(std::string(option.spec.name) + ": one claim at a time, or none for those of the project");
    claim = read(option, *value);
  }
  if (arguments.has("--at-most")) {
    if (!claim || !traitsOf(claim->kind).bounds)
      throw BadInput("--at-most goes with --neck-slope-deg or --neck-base-deg");
    claim->bound = study::Bound::AtMost;
  }
  if (const auto source = arguments.find("--source")) {
    if (!claim) throw BadInput("--source goes with a claim");
    claim->source = *source;
  }
  return claim;
}

}  // namespace zyga::app
