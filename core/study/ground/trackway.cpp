#include "core/study/ground/trackway.h"

#include <algorithm>
#include <cctype>

namespace zyga::study {
namespace {

/// The words of a name, lower case, digits left out: "S1-LP1" gives "s", "lp".
std::vector<std::string> wordsOf(std::string_view text) {
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

template <class Value>
std::optional<Spread> spreadOf(const std::vector<PrintFigures>& figures, Value value) {
  Spread spread;
  for (const auto& print : figures) {
    const std::optional<double> x = value(print);
    if (!x) continue;
    spread.least = spread.count ? std::min(spread.least, *x) : *x;
    spread.most = spread.count ? std::max(spread.most, *x) : *x;
    spread.mean += *x;
    ++spread.count;
  }
  if (spread.count == 0) return {};
  spread.mean /= spread.count;
  return spread;
}

}  // namespace

std::optional<Foot> footFromText(std::string_view text) {
  std::optional<bool> left, fore;
  for (const auto& word : wordsOf(text)) {
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

PrintFigures figuresOf(const Footprint& print, double hipMultiplier) {
  PrintFigures figures;
  const bool triangle = print.pace && print.nextPace && print.stride;
  if (triangle) figures.paceAngulation = paceAngulation(*print.pace, *print.nextPace, *print.stride);
  figures.gauge = print.gauge;
  if (!figures.gauge && triangle) figures.gauge = gaugeOf(*print.pace, *print.nextPace, *print.stride);
  if (figures.gauge && print.length) figures.gaugeToLength = *figures.gauge / *print.length;
  const auto foot = footFromText(print.foot);
  if (!print.length || (foot && isFore(*foot))) return figures;
  figures.hipHeight = hipMultiplier * *print.length;
  if (!print.stride) return figures;
  figures.relativeStride = *print.stride / *figures.hipHeight;
  figures.speed = speedOf(*print.stride, *figures.hipHeight);
  return figures;
}

TrackwaySummary summarise(const Trackway& trackway) {
  std::vector<PrintFigures> hind;
  for (const auto& print : trackway.prints) {
    const auto foot = footFromText(print.foot);
    if (!foot || !isFore(*foot)) hind.push_back(figuresOf(print, trackway.hipMultiplier));
  }
  return {spreadOf(hind, [](const PrintFigures& f) { return f.hipHeight; }),
          spreadOf(hind, [](const PrintFigures& f) { return f.paceAngulation; }),
          spreadOf(hind, [](const PrintFigures& f) { return f.gauge; }),
          spreadOf(hind, [](const PrintFigures& f) { return f.relativeStride; }),
          spreadOf(hind, [](const PrintFigures& f) { return f.speed; })};
}

}  // namespace zyga::study
