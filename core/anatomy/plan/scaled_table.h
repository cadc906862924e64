#pragma once

#include "core/anatomy/tables/measurement_table.h"

namespace zyga::anatomy {

/// The animal `factor` times as large: every length, angles kept. What was found has then been scaled from another
/// specimen, and its source says by how much. Throws std::invalid_argument unless the factor is more than 0.
MeasurementTable scaledTable(MeasurementTable table, double factor);

}  // namespace zyga::anatomy
