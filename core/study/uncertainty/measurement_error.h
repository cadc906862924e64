#pragma once

#include "core/anatomy/tables/measurement_table.h"
#include "core/study/uncertainty/draws.h"

namespace zyga::study {

/// How far the cells of a measurement table may be off: standard deviations of normal errors, lengths as a share of
/// themselves, angles in rad. Program defaults, no source. A cell that states its own standard error has that one
/// instead, times the ratio of the value here to its default.
struct CellErrors {
  double measured = 0.02;
  double inferred = 0.10;
  double measuredAngle = 0.017453292519943295;  ///< one degree
  double inferredAngle = 0.026179938779914943;  ///< one and a half, which adds up along a neck
  bool operator==(const CellErrors&) const = default;
};

/// A filled table as it might be instead. Measured cells err each by itself. What a rule has filled errs together: one
/// error for all such cells of a kind of bone and measure, because it is the rule that is off; what was mirrored errs
/// with its other side, and a facet that was inferred from the one it meets with that one. Facets whose pitch was not
/// measured are turned about their centres, off the arc on which they slide, those that meet alike. Length with condyle
/// errs with the length of its bone, or condyles would come and go. Errors
/// beyond three deviations are cut off there, lengths never fall below a fifth.
anatomy::MeasurementTable withErrors(const anatomy::MeasurementTable& filled, const CellErrors& errors,
                                     const Draw& draw);

}  // namespace zyga::study
