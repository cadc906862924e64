#pragma once

#include <string>
#include <vector>

#include "core/anatomy/tables/measurement_table.h"

namespace zyga::anatomy {

/// A table to be filled in: every bone of an animal of these counts with all cells blank, under a column for every
/// measure that one of them can have, in mm and degrees. Each of `remarks` becomes a line that starts with #; none may
/// be one that the reader takes for a setting ("plan: ..."). readMeasurementTable takes it as it is.
std::string blankMeasurementTable(BodyPlan plan, const RegionCounts& counts, const std::vector<std::string>& remarks);

/// The measures of a table in the order in which they are shown and written: those of one facet together.
const std::vector<Measure>& measuresInOrder();
/// Whether a bone of this kind can have a measure.
bool takesMeasure(BoneKind kind, Measure measure);

}  // namespace zyga::anatomy
