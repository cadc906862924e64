#pragma once

#include <Eigen/Core>
#include <string>

#include "core/anatomy/summary.h"
#include "core/anatomy/tables/measurement_table.h"

namespace zyga::app {

/// The sizes of the animal as lines for people, m.
std::string summaryText(const anatomy::Summary& summary);
/// {"skull_m": 0.52, ...}
std::string summaryJson(const anatomy::Summary& summary);

/// How much of a filled table was measured.
struct CellCount {
  std::size_t measured = 0, inferred = 0;
  std::size_t bonesFound = 0, bones = 0;
};
CellCount countCells(const anatomy::MeasurementTable& table);

/// With `decimals` places: "4.99".
std::string fixed(double number, int decimals);
/// An angle (rad) as degrees with one decimal: "12.3".
std::string degreesText(double angle);
/// For machines, to a millionth; null when it is no finite number.
std::string millionths(double number);
/// An angle (rad) as degrees for machines.
std::string degreesJson(double angle);
/// [x, y, z] for machines.
std::string pointJson(const Eigen::Vector3d& p);

}  // namespace zyga::app
