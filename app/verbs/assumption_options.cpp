#include "app/verbs/assumption_options.h"

#include <QCoreApplication>

#include "app/verbs/verb_words.h"

namespace zyga::app {
namespace {

/// The last one given of this name.
std::optional<GivenOption> given(const Arguments& arguments, std::string_view name) {
  const auto value = arguments.find(name);
  return value ? std::optional<GivenOption>({std::string(name), *value}) : std::nullopt;
}

}  // namespace

std::vector<OptionSpec> assumptionOptions() {
  return {
      {"--overlap", "SHARE",
       QT_TRANSLATE_NOOP("words", "minimum zygapophyseal overlap, a share from 0 to 1; published rule 0.5")},
      {"--overlap-by", "length|area", QT_TRANSLATE_NOOP("words", "what that share is taken of")},
      {"--cartilage-percent", "P",
       QT_TRANSLATE_NOOP("words", "cartilage in neck, trunk and tail, % of the centrum's length")},
      {"--settling-percent", "P",
       QT_TRANSLATE_NOOP("words", "how far bones settle when they turn, % of the cartilage's thickness")},
      {"--contact-percent", "P",
       QT_TRANSLATE_NOOP("words", "how deep bones may interpenetrate, % of the smaller bone's mean extent; else 1.3")},
      {"--contact-mm", "MM", QT_TRANSLATE_NOOP("words", "the same in millimetres, for every bone")},
      {"--inferred-neighbours", "",
       QT_TRANSLATE_NOOP("words", "a scan is assessed against a neighbour whose facets are inferred")},
      {"--neutral-by", "facets|facets-and-centra",
       QT_TRANSLATE_NOOP("words", "what the neutral articulation asks for")},
      {"--horizontal-by", "canal|centrum|faces|articulation",
       QT_TRANSLATE_NOOP("words", "what the slope of a vertebra is measured by")}};
}

std::vector<OptionSpec> withAssumptionOptions(std::vector<OptionSpec> options) {
  for (const OptionSpec& option : assumptionOptions()) options.push_back(option);
  return options;
}

range::Assumptions assumptionsFrom(const Arguments& arguments, const range::Assumptions& ofProject) {
  using range::NeutralBy;
  using range::OverlapBy;
  range::Assumptions a = ofProject;
  if (const auto share = given(arguments, "--overlap"))
    a.minOverlap = numberOf(*share, 0, 1, QT_TRANSLATE_NOOP("words", "a share"));
  if (arguments.has("--overlap-by")) {
    a.overlapBy =
        choiceOf<OverlapBy>(arguments, "--overlap-by", {{"length", OverlapBy::Length}, {"area", OverlapBy::Area}});
  }
  if (const auto percent = given(arguments, "--cartilage-percent")) {
    a.neck = a.trunk = a.tail = {range::Cartilage::In::PercentOfCentrum,
                                 numberOf(*percent, 0, 100, QT_TRANSLATE_NOOP("words", "percent"))};
  }
  if (const auto share = given(arguments, "--settling-percent"))
    a.settling = 0.01 * numberOf(*share, 0, 100, QT_TRANSLATE_NOOP("words", "percent"));
  using range::ContactTolerance;
  if (const auto depth = given(arguments, "--contact-percent"))
    a.contactTolerated = {ContactTolerance::In::PercentOfBone,
                          numberOf(*depth, 0, 100, QT_TRANSLATE_NOOP("words", "percent"))};
  if (const auto depth = given(arguments, "--contact-mm")) {
    if (arguments.has("--contact-percent"))
      refuse(QT_TRANSLATE_NOOP("words", "--contact-mm: it says the same as --contact-percent; give one of the two"));
    a.contactTolerated = {ContactTolerance::In::Millimetres, numberOf(*depth, 0, 1000, "mm")};
  }
  if (arguments.has("--inferred-neighbours")) a.inferredNeighbours = true;
  if (arguments.has("--neutral-by")) {
    a.neutralBy = choiceOf<NeutralBy>(
        arguments, "--neutral-by", {{"facets", NeutralBy::Facets}, {"facets-and-centra", NeutralBy::FacetsAndCentra}});
  }
  if (arguments.has("--horizontal-by")) {
    using anatomy::HorizontalBy;
    a.horizontalBy = choiceOf<HorizontalBy>(arguments, "--horizontal-by",
                                            {{"canal", HorizontalBy::CanalFloor},
                                             {"centrum", HorizontalBy::CentrumAxis},
                                             {"faces", HorizontalBy::CentrumFaces},
                                             {"articulation", HorizontalBy::Articulation}});
  }
  return a;
}

}  // namespace zyga::app
