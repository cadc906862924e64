#include "app/verbs/assumption_options.h"

namespace zyga::app {
namespace {

/// The last one given of this name.
std::optional<GivenOption> given(const Arguments& arguments, std::string_view name) {
  const auto value = arguments.find(name);
  return value ? std::optional<GivenOption>({std::string(name), *value}) : std::nullopt;
}

}  // namespace

std::vector<OptionSpec> assumptionOptions() {
  return {{"--overlap", "SHARE", "least share of the facets that stays covered, 0 to 1; published rule 0.5"},
          {"--overlap-by", "length|area", "what that share is taken of"},
          {"--cartilage-percent", "P", "cartilage in neck, trunk and tail, % of the centrum's length"},
          {"--neutral-by", "facets|facets-and-centra", "what the neutral articulation asks for"}};
}

std::vector<OptionSpec> withAssumptionOptions(std::vector<OptionSpec> options) {
  for (const OptionSpec& option : assumptionOptions()) options.push_back(option);
  return options;
}

range::Assumptions assumptionsFrom(const Arguments& arguments, const range::Assumptions& ofProject) {
  using range::NeutralBy;
  using range::OverlapBy;
  range::Assumptions a = ofProject;
  if (const auto share = given(arguments, "--overlap")) a.leastOverlap = numberOf(*share, 0, 1, "a share");
  if (arguments.has("--overlap-by")) {
    a.overlapBy =
        choiceOf<OverlapBy>(arguments, "--overlap-by", {{"length", OverlapBy::Length}, {"area", OverlapBy::Area}});
  }
  if (const auto percent = given(arguments, "--cartilage-percent")) {
    a.neck = a.trunk = a.tail = {range::Cartilage::In::PercentOfCentrum, numberOf(*percent, 0, 100, "percent")};
  }
  if (arguments.has("--neutral-by")) {
    a.neutralBy = choiceOf<NeutralBy>(
        arguments, "--neutral-by", {{"facets", NeutralBy::Facets}, {"facets-and-centra", NeutralBy::FacetsAndCentra}});
  }
  return a;
}

}  // namespace zyga::app
