#include "core/study/ground/trackway.h"

#include <algorithm>
#include <cctype>
#include <cmath>

namespace zyga::study {
namespace {

/// The words of a name, lower case, digits left out: "S1-LP1" gives "s", "lp".
std::vector<std::string> nameParts(std::string_view text) {
  std::vector<std::string> words(1);
  for (const unsigned char c : text) {
    if (std::isalpha(c)) {
      words.back() += static_cast<char>(std::tolower(c));
    } else if (!std::isdigit(c) && !words.back().empty()) {
      words.emplace_back();
    }
  }
  if (words.back().empty()) words.pop_back();
  return words;
}

/// Whether the word says left or right.
std::optional<bool> leftFrom(std::string_view word) {
  if (word == "l" || word == "left") return true;
  if (word == "r" || word == "right") return false;
  return {};
}

/// Whether the word says fore or hind.
std::optional<bool> foreFrom(std::string_view word) {
  for (const std::string_view hind : {"p", "pes", "hind", "h", "foot"}) {
    if (word == hind) return false;
  }
  for (const std::string_view fore : {"m", "manus", "fore", "f", "hand"}) {
    if (word == fore) return true;
  }
  return {};
}

std::optional<MinMeanMax> summaryOf(const std::vector<PrintValues>& prints, std::optional<double> PrintValues::*value) {
  MinMeanMax summary;
  for (const PrintValues& print : prints) {
    const std::optional<double>& x = print.*value;
    if (!x) continue;
    summary.min = summary.count ? std::min(summary.min, *x) : *x;
    summary.max = summary.count ? std::max(summary.max, *x) : *x;
    summary.mean += *x;
    ++summary.count;
  }
  if (summary.count == 0) return {};
  summary.mean /= summary.count;
  return summary;
}

}  // namespace

std::optional<double> paceAngulation(double pace, double nextPace, double stride) {
  if (!(pace > 0 && nextPace > 0 && stride > 0)) return {};
  const double cosine = (pace * pace + nextPace * nextPace - stride * stride) / (2 * pace * nextPace);
  if (!(std::abs(cosine) <= 1)) return {};
  return std::acos(cosine);
}

std::optional<double> gaugeOf(double pace, double nextPace, double stride) {
  const auto angle = paceAngulation(pace, nextPace, stride);
  if (!angle) return {};
  // Twice the triangle's area over the stride.
  return pace * nextPace * std::sin(*angle) / stride;
}

reason::Term hipSource(double multiplier) {
  const auto* rule = std::find_if(kHipRules.begin(), kHipRules.end(),
                                  [&](const HipRule& r) { return std::abs(r.multiplier - multiplier) < 1e-9; });
  return rule == kHipRules.end() ? kOwnHipRule : rule->source;
}

double speedOf(double stride, double hipHeight) {
  constexpr double kGravity = 9.81;
  return 0.25 * std::sqrt(kGravity) * std::pow(stride, 1.67) * std::pow(hipHeight, -1.17);
}

std::optional<Foot> footFromText(std::string_view text) {
  std::optional<bool> left, fore;
  for (const auto& word : nameParts(text)) {
    if (const auto found = leftFrom(word)) left = found;
    if (const auto found = foreFrom(word)) fore = found;
    if (word.size() == 2 && leftFrom(word.substr(0, 1)) && foreFrom(word.substr(1))) {
      left = leftFrom(word.substr(0, 1));
      fore = foreFrom(word.substr(1));
    }
  }
  if (!left) return {};
  if (fore.value_or(false)) return *left ? Foot::LeftFore : Foot::RightFore;
  return *left ? Foot::LeftHind : Foot::RightHind;
}

PrintValues valuesOf(const Footprint& print, double hipMultiplier) {
  PrintValues values;
  const bool triangle = print.pace && print.nextPace && print.stride;
  if (triangle) values.paceAngulation = paceAngulation(*print.pace, *print.nextPace, *print.stride);
  values.gauge = print.gauge;
  if (!values.gauge && triangle) values.gauge = gaugeOf(*print.pace, *print.nextPace, *print.stride);
  if (values.gauge && print.length) values.gaugeToLength = *values.gauge / *print.length;
  const auto foot = footFromText(print.foot);
  if (!print.length || (foot && isFore(*foot))) return values;
  values.hipHeight = hipMultiplier * *print.length;
  if (!print.stride) return values;
  values.relativeStride = *print.stride / *values.hipHeight;
  values.speed = speedOf(*print.stride, *values.hipHeight);
  return values;
}

TrackwaySummary summarise(const Trackway& trackway) {
  std::vector<PrintValues> hind;
  for (const auto& print : trackway.prints) {
    const auto foot = footFromText(print.foot);
    if (!foot || !isFore(*foot)) hind.push_back(valuesOf(print, trackway.hipMultiplier));
  }
  return {summaryOf(hind, &PrintValues::hipHeight), summaryOf(hind, &PrintValues::paceAngulation),
          summaryOf(hind, &PrintValues::gauge), summaryOf(hind, &PrintValues::relativeStride),
          summaryOf(hind, &PrintValues::speed)};
}

}  // namespace zyga::study
