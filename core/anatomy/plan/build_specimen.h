#pragma once

#include "core/anatomy/specimen.h"
#include "core/anatomy/tables/measurement_table.h"

namespace zyga::anatomy {

/// Turns a filled table into bones with landmarks and facets, and joints. Pure and deterministic. Throws
/// std::invalid_argument naming bone and measure when the table has not been filled.
Specimen buildSpecimen(const MeasurementTable& filled);

}  // namespace zyga::anatomy
