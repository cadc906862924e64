#include "core/anatomy/measure.h"

#include <charconv>
#include <stdexcept>
#include <vector>

namespace zyga::anatomy {
namespace {

struct MeasureWords {
  std::string_view text;
  reason::Term term;
};

constexpr std::array<MeasureWords, kMeasureCount> kMeasures{{{"length", {"measure.length"}},
                                                             {"length with condyle", {"measure.length-with-condyle"}},
                                                             {"cotyle height", {"measure.cotyle-height"}},
                                                             {"cotyle width", {"measure.cotyle-width"}},
                                                             {"spine height", {"measure.spine-height"}},
                                                             {"spine fork", {"measure.spine-fork"}},
                                                             {"diapophysis width", {"measure.diapophysis-width"}},
                                                             {"facet length", {"measure.facet-length"}},
                                                             {"facet width", {"measure.facet-width"}},
                                                             {"facet height", {"measure.facet-height"}},
                                                             {"facet spread", {"measure.facet-spread"}},
                                                             {"facet tilt", {"measure.facet-tilt"}},
                                                             {"postzyg length", {"measure.postzyg-length"}},
                                                             {"facet turn", {"measure.facet-turn"}},
                                                             {"wedge", {"measure.wedge"}},
                                                             {"height", {"measure.height"}},
                                                             {"width", {"measure.width"}},
                                                             {"proximal width", {"measure.proximal-width"}},
                                                             {"shaft width", {"measure.shaft-width"}},
                                                             {"distal width", {"measure.distal-width"}},
                                                             {"circumference", {"measure.circumference"}},
                                                             {"facet offset", {"measure.facet-offset"}},
                                                             {"facet pitch", {"measure.facet-pitch"}},
                                                             {"facet radius", {"measure.facet-radius"}},
                                                             {"postzyg width", {"measure.postzyg-width"}},
                                                             {"postzyg height", {"measure.postzyg-height"}},
                                                             {"postzyg spread", {"measure.postzyg-spread"}},
                                                             {"postzyg tilt", {"measure.postzyg-tilt"}},
                                                             {"postzyg offset", {"measure.postzyg-offset"}},
                                                             {"postzyg pitch", {"measure.postzyg-pitch"}},
                                                             {"postzyg radius", {"measure.postzyg-radius"}}}};

/// A rule as project files write it, and as files did that were made before rules had ids: "%1", "%2" stand for bones
/// or a number. Younger rules have no old sentence.
struct RuleWords {
  FillBy by;
  std::string_view id;
  std::string_view old;
};

constexpr std::array<RuleWords, 14> kRules{
    {{FillBy::Mirrored, "mirrored", "mirrored from %1"},
     {FillBy::Between, "between", "between %1 and %2 along the column"},
     {FillBy::MeasuredBones, "measured-bones", "by proportion to the measured bones (median of %1)"},
     {FillBy::PlanSize, "plan-size", "by the body plan's own size"},
     {FillBy::LessCondyle, "less-condyle", "length with condyle less a condyle by proportion"},
     {FillBy::OwnLength, "own-length", "by proportion to the length"},
     {FillBy::PlanAngle, "plan-angle", "by the body plan's angle"},
     {FillBy::SameLimb, "same-limb", "by proportion to the measured bones of the limb"},
     {FillBy::OtherLimb, "other-limb", "by proportion to the other limb"},
     {FillBy::NoFacet, "no-facet", "no facet"},
     {FillBy::MatesWith, "mates-with", ""},
     {FillBy::FacetTurn, "facet-turn", ""},
     {FillBy::OnArc, "on-arc", ""},
     // Last: its old sentence fits the others of its kind as well.
     {FillBy::Nearest, "nearest", "by proportion to %1"}}};

/// How a rule goes on whose value was then fitted to the measured length of a region.
constexpr std::string_view kFitted = ", fitted-to ", kFittedOld = ", fitted to the measured ";
constexpr std::array<std::pair<std::string_view, Region>, 4> kTotals{
    {{"neck", Region::Cervical}, {"trunk", Region::Dorsal}, {"sacrum", Region::Sacral}, {"tail", Region::Caudal}}};

std::vector<std::string_view> split(std::string_view text, char at) {
  std::vector<std::string_view> parts;
  for (std::size_t end = text.find(at); end != std::string_view::npos; end = text.find(at)) {
    parts.push_back(text.substr(0, end));
    text.remove_prefix(end + 1);
  }
  parts.push_back(text);
  return parts;
}

bool namesOneBone(FillBy by) { return by == FillBy::Mirrored || by == FillBy::Nearest || by == FillBy::MatesWith; }

/// What stands in a text where the form has its "%1" and "%2"; none where it is another sentence.
std::optional<std::vector<std::string_view>> partsOf(std::string_view form, std::string_view text) {
  std::vector<std::string_view> parts;
  while (!form.empty()) {
    if (form.front() == '%') {
      form.remove_prefix(2);
      const std::size_t end = form.empty() ? text.size() : text.find(form.substr(0, form.find('%')));
      if (end == std::string_view::npos) return std::nullopt;
      parts.push_back(text.substr(0, end));
      text.remove_prefix(end);
    } else if (!text.empty() && text.front() == form.front()) {
      form.remove_prefix(1);
      text.remove_prefix(1);
    } else {
      return std::nullopt;
    }
  }
  return text.empty() ? std::optional(parts) : std::nullopt;
}

/// The rule with these values; none where they are not those it takes.
std::optional<FillRule> ruleOf(FillBy by, const std::vector<std::string_view>& values) {
  FillRule rule;
  rule.by = by;
  const std::size_t bones = by == FillBy::Between ? 2 : namesOneBone(by) ? 1 : 0;
  const bool counts = by == FillBy::MeasuredBones;
  if (values.size() != bones + (counts ? 1 : 0)) return std::nullopt;
  for (std::size_t i = 0; i < bones; ++i) {
    const auto bone = parseBoneId(values[i]);
    if (!bone) return std::nullopt;
    (i == 0 ? rule.from : rule.to) = *bone;
  }
  if (!counts) return rule;
  const auto [end, error] = std::from_chars(values[0].data(), values[0].data() + values[0].size(), rule.count);
  const bool whole = error == std::errc() && end == values[0].data() + values[0].size();
  return whole && rule.count > 0 ? std::optional(rule) : std::nullopt;
}

std::optional<FillRule> ruleIn(std::string_view text) {
  std::vector<std::string_view> words = split(text, ' ');
  const std::string_view id = words.front();
  words.erase(words.begin());
  for (const RuleWords& known : kRules) {
    if (known.id == id)
      if (const auto rule = ruleOf(known.by, words)) return rule;
    if (known.old.empty()) continue;
    if (const auto parts = partsOf(known.old, text))
      if (const auto rule = ruleOf(known.by, *parts)) return rule;
  }
  return std::nullopt;
}

}  // namespace

bool isAngle(Measure measure) {
  return measure == Measure::FacetTilt || measure == Measure::FacetTurn || measure == Measure::Wedge ||
         measure == Measure::FacetPitch || measure == Measure::PostzygTilt || measure == Measure::PostzygPitch;
}

bool isSigned(Measure measure) {
  return isAngle(measure) || measure == Measure::FacetOffset || measure == Measure::FacetRadius ||
         measure == Measure::PostzygOffset || measure == Measure::PostzygRadius;
}

std::optional<Measure> mateOf(Measure measure) {
  for (const auto& [prezyg, postzyg] : kFacetMates) {
    if (measure == prezyg) return postzyg;
    if (measure == postzyg) return prezyg;
  }
  return std::nullopt;
}

std::string_view toText(Measure measure) { return kMeasures[static_cast<std::size_t>(measure)].text; }

std::optional<Measure> measureFromText(std::string_view text) {
  for (std::size_t i = 0; i < kMeasures.size(); ++i) {
    if (kMeasures[i].text == text) return static_cast<Measure>(i);
  }
  return std::nullopt;
}

reason::Term termOf(Measure measure) { return kMeasures[static_cast<std::size_t>(measure)].term; }

std::string toText(const FillRule& rule) {
  if (rule.by == FillBy::Other) return rule.words;
  std::string text;
  for (const RuleWords& known : kRules)
    if (known.by == rule.by) text = known.id;
  if (namesOneBone(rule.by)) text += ' ' + toId(rule.from);
  if (rule.by == FillBy::Between) text += ' ' + toId(rule.from) + ' ' + toId(rule.to);
  if (rule.by == FillBy::MeasuredBones) text += ' ' + std::to_string(rule.count);
  for (const auto& [word, region] : kTotals)
    if (rule.fittedTo == region) text.append(kFitted).append(word);
  return text;
}

FillRule fillRuleFromText(std::string_view text) {
  if (text.empty()) return {};
  for (const std::string_view fitted : {kFitted, kFittedOld}) {
    for (const auto& [word, region] : kTotals) {
      const std::string ending = std::string(fitted) + std::string(word);
      if (!text.ends_with(ending)) continue;
      auto rule = ruleIn(text.substr(0, text.size() - ending.size()));
      if (!rule) continue;
      rule->fittedTo = region;
      return *rule;
    }
  }
  if (const auto rule = ruleIn(text)) return *rule;
  FillRule other;
  other.by = FillBy::Other;
  other.words = text;
  return other;
}

double Measures::valueOr(Measure measure, double fallback) const {
  const Cell& cell = (*this)[measure];
  return cell.known() ? cell.value : fallback;
}

double Measures::value(Measure measure) const {
  const Cell& cell = (*this)[measure];
  if (!cell.known()) throw std::out_of_range("measure '" + std::string(toText(measure)) + "' is unknown");
  return cell.value;
}

double turnOfFacets(const Measures& cranial, const Measures& caudal) {
  return caudal.value(Measure::FacetTurn) + 0.5 * (caudal.value(Measure::Wedge) + cranial.value(Measure::Wedge));
}

bool Measures::anyMeasured() const {
  for (const Cell& cell : cells_) {
    if (cell.measured()) return true;
  }
  return false;
}

}  // namespace zyga::anatomy
