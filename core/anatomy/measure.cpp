#include "core/anatomy/measure.h"

#include <stdexcept>

namespace zyga::anatomy {
namespace {

constexpr std::array<std::string_view, kMeasureCount> kTitles{"length",
                                                              "length with condyle",
                                                              "cotyle height",
                                                              "cotyle width",
                                                              "spine height",
                                                              "spine fork",
                                                              "diapophysis width",
                                                              "facet length",
                                                              "facet width",
                                                              "facet height",
                                                              "facet spread",
                                                              "facet tilt",
                                                              "postzyg length",
                                                              "facet turn",
                                                              "wedge",
                                                              "height",
                                                              "width",
                                                              "proximal width",
                                                              "shaft width",
                                                              "distal width",
                                                              "circumference"};

}  // namespace

bool isAngle(Measure measure) {
  return measure == Measure::FacetTilt || measure == Measure::FacetTurn || measure == Measure::Wedge;
}

std::string_view title(Measure measure) { return kTitles[static_cast<std::size_t>(measure)]; }

std::optional<Measure> measureFromTitle(std::string_view text) {
  for (std::size_t i = 0; i < kTitles.size(); ++i) {
    if (kTitles[i] == text) return static_cast<Measure>(i);
  }
  return std::nullopt;
}

double Measures::valueOr(Measure measure, double fallback) const {
  const Cell& cell = (*this)[measure];
  return cell.known() ? cell.value : fallback;
}

double Measures::value(Measure measure) const {
  const Cell& cell = (*this)[measure];
  if (!cell.known()) throw std::out_of_range("measure '" + std::string(title(measure)) + "' is unknown");
  return cell.value;
}

bool Measures::anyMeasured() const {
  for (const Cell& cell : cells_) {
    if (cell.measured()) return true;
  }
  return false;
}

}  // namespace zyga::anatomy
