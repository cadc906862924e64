#pragma once

#include <string>

#include "core/anatomy/summary.h"
#include "core/anatomy/tables/measurement_table.h"
#include "core/files/json/json_write.h"

namespace zyga::app {

/// The sizes of the animal as lines for people, m.
std::string summaryText(const anatomy::Summary& summary);
/// {"skull_m": 0.52, ...}
files::json::Value summaryJson(const anatomy::Summary& summary);

/// How much of a filled table was measured.
struct CellCount {
  std::size_t measured = 0, inferred = 0;
  std::size_t bonesFound = 0, bones = 0;
};
CellCount countCells(const anatomy::MeasurementTable& table);

}  // namespace zyga::app
