#include "core/study/mass/mass.h"

#include <cmath>

namespace zyga::study {
namespace {

MassRange within(double mass, double error) { return {mass * (1 - error), mass, mass * (1 + error)}; }

const anatomy::Cell* circumferenceOf(const anatomy::MeasurementTable& table, anatomy::BoneKind kind) {
  const anatomy::Cell* best = nullptr;
  for (const anatomy::Side side : {anatomy::Side::Left, anatomy::Side::Right}) {
    const auto* row = table.find({kind, 0, 0, side});
    if (!row) continue;
    const anatomy::Cell& cell = row->measures[anatomy::Measure::Circumference];
    if (cell.known() && (!best || (cell.measured() && !best->measured()))) best = &cell;
  }
  return best;
}

}  // namespace

MassRange massFromCircumferences(double humerus, double femur) {
  if (!(humerus > 0 && femur > 0)) {
    using reason::Quantity, reason::Unit;
    throw reason::Failure({kNoCircumference, {Quantity{humerus, Unit::Length}, Quantity{femur, Unit::Length}}});
  }
  const double grams = std::pow(10, 2.749 * std::log10((humerus + femur) * 1000) - 1.104);
  return within(grams / 1000, kCircumferenceError);
}

std::optional<CircumferenceMass> massFromCircumferences(const anatomy::MeasurementTable& table) {
  const anatomy::Cell* humerus = circumferenceOf(table, anatomy::BoneKind::Humerus);
  const anatomy::Cell* femur = circumferenceOf(table, anatomy::BoneKind::Femur);
  if (!humerus || !femur) return std::nullopt;
  return CircumferenceMass{massFromCircumferences(humerus->value, femur->value),
                           humerus->measured() && femur->measured()};
}

MassRange massFromHulls(double volume, double density, double factor) {
  return within(volume * factor * density, kHullError);
}

reason::Reason disagreement(const MassRange& byVolume, const MassRange& byCircumference) {
  using reason::Quantity, reason::Unit;
  if (byVolume.high < byCircumference.low)
    return {kVolumeBelowCircumference,
            {Quantity{byVolume.high, Unit::Mass}, Quantity{byCircumference.low, Unit::Mass}}};
  if (byVolume.low > byCircumference.high)
    return {kVolumeAboveCircumference,
            {Quantity{byVolume.low, Unit::Mass}, Quantity{byCircumference.high, Unit::Mass}}};
  return {};
}

}  // namespace zyga::study
