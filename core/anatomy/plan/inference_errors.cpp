#include "core/anatomy/plan/inference_errors.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <numbers>
#include <optional>
#include <span>
#include <vector>

namespace zyga::anatomy {
namespace {

constexpr double kOneDegree = std::numbers::pi / 180;
/// How far the offsets of two facets that meet differ, share of the centrum's length. Program default, no source.
constexpr double kOffsetOfMates = 0.02;

/// One vertebra of a landmark set: its place in the column, facet height and half-separation over centrum length, and
/// pitch in degrees.
struct MarkedFacet {
  double number, height, separation, pitch;
};
constexpr MarkedFacet kOstrich[] = {
    {5, 0.19, 0.22, 7}, {9, 0.20, 0.18, 21}, {15, 0.30, 0.29, 22}, {19, 0.64, 0.30, 42}};
constexpr MarkedFacet kAlligator[] = {
    {5, 1.12, 0.43, 33}, {9, 1.26, 0.54, 41}, {15, 0.93, 0.61, 24}, {21, 0.67, 0.60, 19}};
constexpr MarkedFacet kPlateosaurus[] = {{5, 0.29, 0.15, 11}, {9, 0.60, 0.17, 33}, {13, 0.86, 0.17, 37}};
constexpr std::array<std::span<const MarkedFacet>, 3> kColumns{kOstrich, kAlligator, kPlateosaurus};
constexpr double kApatosaurusHeight = 0.48;  // mean of C4 to C12, 0.47 to 0.49
/// Vertebra and tilt in degrees, half of what is missing to 180 between left and right: 96, 92.5, 147.5.
constexpr std::array<std::pair<double, double>, 3> kAlligatorTilt{{{5, 42}, {9, 43.75}, {18, 16.25}}};
/// Least and greatest offset of the dog's C3 to C7 over their length: as if even between them.
constexpr double kDogOffset[] = {-0.13, -0.01};

double averageOf(const std::vector<double>& values) {
  double sum = 0;
  for (const double v : values) sum += v;
  return sum / static_cast<double>(values.size());
}

double standardDeviationOf(const std::vector<double>& values) {
  const double mean = averageOf(values);
  double squares = 0;
  for (const double v : values) squares += (v - mean) * (v - mean);
  return std::sqrt(squares / static_cast<double>(values.size() - 1));
}

/// About each column's own mean.
template <class Of>
double withinColumns(Of of) {
  double squares = 0, freedom = 0;
  for (const auto& column : kColumns) {
    std::vector<double> values;
    for (const MarkedFacet& facet : column) values.push_back(of(facet));
    const auto n = static_cast<double>(values.size() - 1);
    squares += n * standardDeviationOf(values) * standardDeviationOf(values);
    freedom += n;
  }
  return std::sqrt(squares / freedom);
}

/// Root of the mean square of what one bone's step changes.
template <class Of>
double stepOf(Of of) {
  double squares = 0, steps = 0;
  for (const auto& column : kColumns) {
    for (std::size_t i = 1; i < column.size(); ++i) {
      const double change = of(column[i]) - of(column[i - 1]);
      squares += change * change / (column[i].number - column[i - 1].number);
      ++steps;
    }
  }
  return std::sqrt(squares / steps);
}

template <class Of>
double meanOfColumn(std::span<const MarkedFacet> column, Of of) {
  std::vector<double> values;
  for (const MarkedFacet& facet : column) values.push_back(of(facet));
  return averageOf(values);
}

FacetSpreads workedOut() {
  const auto height = [](const MarkedFacet& f) { return std::log(f.height); };
  const auto separation = [](const MarkedFacet& f) { return std::log(f.separation); };
  const auto pitch = [](const MarkedFacet& f) { return f.pitch * kOneDegree; };
  FacetSpreads s;
  // The alligator has a short neck: its facets stand higher and wider than those of any long one.
  s.height = standardDeviationOf(
      {meanOfColumn(kOstrich, height), meanOfColumn(kPlateosaurus, height), std::log(kApatosaurusHeight)});
  s.separation = standardDeviationOf({meanOfColumn(kOstrich, separation), meanOfColumn(kPlateosaurus, separation)});
  s.pitch = withinColumns(pitch);
  s.heightStep = stepOf(height);
  s.separationStep = stepOf(separation);
  s.pitchStep = stepOf(pitch);
  std::vector<double> tilts;
  double squares = 0;
  for (std::size_t i = 0; i < kAlligatorTilt.size(); ++i) {
    tilts.push_back(kAlligatorTilt[i].second * kOneDegree);
    if (i == 0) continue;
    squares += std::pow(tilts[i] - tilts[i - 1], 2) / (kAlligatorTilt[i].first - kAlligatorTilt[i - 1].first);
  }
  s.tilt = standardDeviationOf(tilts);
  s.tiltStep = std::sqrt(squares / static_cast<double>(tilts.size() - 1));
  // Mean square of an even distribution about zero.
  const auto [least, most] = kDogOffset;
  s.offset = std::sqrt((least * least + least * most + most * most) / 3);
  return s;
}

/// By how many steps of one bone the variance of what was carried along the column counts; none when it was not.
std::optional<double> stepsOf(const FillRule& rule, int number) {
  const double a = std::abs(number - rule.from.number);
  if (rule.by == FillBy::Nearest) return a;
  const double b = std::abs(number - rule.to.number);
  if (rule.by == FillBy::Between) return a + b > 0 ? a * b / (a + b) : 0;
  return std::nullopt;
}

}  // namespace

const FacetSpreads& facetSpreads() {
  static const FacetSpreads spreads = workedOut();
  return spreads;
}

double facetStandardError(Measure prezyg, const Cell& cell, double length, int number) {
  const FacetSpreads& s = facetSpreads();
  double byPlan = kInferredShare * std::abs(cell.value), step = byPlan;
  switch (prezyg) {
    case Measure::FacetHeight:
      byPlan = s.height * cell.value;
      step = s.heightStep * cell.value;
      break;
    case Measure::FacetSpread:
      byPlan = s.separation * cell.value;
      step = s.separationStep * cell.value;
      break;
    case Measure::FacetTilt:
      byPlan = s.tilt;
      step = s.tiltStep;
      break;
    case Measure::FacetPitch:
      byPlan = s.pitch;
      step = s.pitchStep;
      break;
    case Measure::FacetOffset:
      byPlan = step = s.offset * length;
      break;
    default:
      break;
  }
  const auto steps = stepsOf(cell.rule, number);
  return steps ? std::min(byPlan, std::sqrt(*steps) * step) : byPlan;
}

double standardErrorOfMate(Measure measure, const Cell& source, double length) {
  const bool offset = measure == Measure::FacetOffset || measure == Measure::PostzygOffset;
  const double value = std::abs(source.value);
  if (isAngle(measure))
    return std::hypot(source.standardError > 0 ? source.standardError : kMeasuredAngle, kInferredAngle);
  return std::hypot(source.standardError > 0 ? source.standardError : kMeasuredShare * value,
                    offset ? kOffsetOfMates * length : kInferredShare * value);
}

double roundedError(double error) {
  if (!(error > 0) || !std::isfinite(error)) return 0;
  const double unit = std::pow(10, std::floor(std::log10(error)) - 1);
  // Through whole numbers, so that the digits end: 12 * 1e-3 is 0.012.
  return unit < 1 ? std::round(error / unit) / std::round(1 / unit) : std::round(error / unit) * unit;
}

}  // namespace zyga::anatomy
