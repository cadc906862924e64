#include "core/study/uncertainty/measurement_error.h"

#include <algorithm>

namespace zyga::study {
namespace {

using anatomy::BoneName;
using anatomy::Cell;
using anatomy::CellOrigin;
using anatomy::Measure;

// Program defaults, no source.
constexpr double kFarthest = 3;  // deviations
constexpr double kLeastShare = 0.2;

/// One number for what errs together. Streams below 2^16 are the caller's own.
std::uint64_t streamOf(const BoneName& name, Measure measure, CellOrigin origin) {
  const bool rule = origin == CellOrigin::BetweenNeighbours || origin == CellOrigin::ByProportion;
  const BoneName whose = rule                             ? BoneName{name.kind, 0, 0, anatomy::Side::Midline}
                         : origin == CellOrigin::Mirrored ? anatomy::mirrored(name)
                                                          : name;
  const Measure what = measure == Measure::LengthWithCondyle ? Measure::Length : measure;
  std::uint64_t stream = rule ? 2 : 1;
  for (const int part : {static_cast<int>(whose.kind), whose.number, whose.phalanx, static_cast<int>(whose.side),
                         static_cast<int>(what)}) {
    stream = stream * 256 + static_cast<std::uint64_t>(part);
  }
  return stream;
}

double erring(const BoneName& name, Measure measure, const Cell& cell, const CellErrors& errors, const Draw& draw) {
  const bool given = cell.measured() || cell.origin == CellOrigin::Mirrored;
  const double z = std::clamp(draw.normal(streamOf(name, measure, cell.origin)), -kFarthest, kFarthest);
  if (isAngle(measure)) return cell.value + z * (given ? errors.measuredAngle : errors.inferredAngle);
  return cell.value * std::max(kLeastShare, 1 + z * (given ? errors.measured : errors.inferred));
}

}  // namespace

anatomy::MeasurementTable withErrors(const anatomy::MeasurementTable& filled, const CellErrors& errors,
                                     const Draw& draw) {
  anatomy::MeasurementTable other = filled;
  for (anatomy::TableRow& row : other.rows) {
    // A length with condyle goes by the length beside it, whichever of the two was measured.
    const double length = row.measures[Measure::Length].value;
    for (int i = 0; i < anatomy::kMeasureCount; ++i) {
      const auto measure = static_cast<Measure>(i);
      Cell& cell = row.measures[measure];
      if (!cell.known() || measure == Measure::LengthWithCondyle) continue;
      cell.value = erring(row.name, measure, cell, errors, draw);
    }
    Cell& whole = row.measures[Measure::LengthWithCondyle];
    if (!whole.known()) continue;
    whole.value = row.measures[Measure::Length].known() && length > 0
                      ? whole.value * row.measures[Measure::Length].value / length
                      : erring(row.name, Measure::Length, whole, errors, draw);
  }
  return other;
}

}  // namespace zyga::study
