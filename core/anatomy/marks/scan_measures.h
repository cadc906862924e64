#pragma once

#include <span>

#include "core/anatomy/marks/scan.h"
#include "core/anatomy/tables/measurement_table.h"

namespace zyga::anatomy {

/// A measure taken between the marks of a scan, m or rad.
struct MarkedMeasure {
  Measure measure;
  double value;
};

/// What the marks of a scan measure, scaled and straightened as it is, in the order of the table's columns. Lengths
/// between two marks need those; heights, widths from one side and tilts also need that the bone lies by its landmarks.
/// A pair of facets counts with its mean. What comes out below zero though it cannot be (the top of a spine under the
/// canal) is no measure: its marks are wrong (mark_doubts.h).
std::vector<MarkedMeasure> measuresOf(const Scan& scan);

/// The table with these measures in the scan's row, as measured cells, so that what is blank around it follows. A row
/// of which nothing was known takes over the scan's evidence and source.
MeasurementTable withMeasures(MeasurementTable table, const Scan& scan, std::span<const MarkedMeasure> measures);

}  // namespace zyga::anatomy
