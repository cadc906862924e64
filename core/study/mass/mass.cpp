#include "core/study/mass/mass.h"

#include <cmath>
#include <stdexcept>
#include <string>

namespace zyga::study {
namespace {

MassRange within(double mass, double error) { return {mass * (1 - error), mass, mass * (1 + error)}; }

}  // namespace

MassRange massFromCircumferences(double humerus, double femur) {
  if (!(humerus > 0 && femur > 0)) {
    throw std::invalid_argument("circumferences must be above zero: humerus " + std::to_string(humerus * 1000) +
                                " mm, femur " + std::to_string(femur * 1000) + " mm");
  }
  const double grams = std::pow(10, 2.749 * std::log10((humerus + femur) * 1000) - 1.104);
  return within(grams / 1000, kCircumferenceError);
}

MassRange massFromHulls(double volume, double density) { return within(volume * kHullFactor * density, kHullError); }

}  // namespace zyga::study
