#pragma once

#include <QStringList>
#include <string>

#include "core/anatomy/summary.h"
#include "core/anatomy/tables/measurement_table.h"
#include "core/files/json/json_write.h"
#include "core/reason/reason.h"

namespace zyga::app {

/// The sizes of the animal as lines for people, m.
std::string summaryText(const anatomy::Summary& summary);
/// "wrote rex.zyga"
std::string wroteText(const std::string& file);
/// {"skull_m": 0.52, ...}
files::json::Value summaryJson(const anatomy::Summary& summary);

/// How much of a filled table was measured.
struct CellCount {
  std::size_t measured = 0, inferred = 0;
  std::size_t bonesFound = 0, bones = 0;
};
CellCount countCells(const anatomy::MeasurementTable& table);

/// A sentence for people in the language chosen, its places filled with what is said already.
std::string said(const char* english, const QStringList& parts = {});
std::string said(reason::Term term);

/// With `decimals` places: "4.99".
std::string fixed(double number, int decimals);
/// An angle (rad) as degrees with one decimal: "12.3".
std::string degreesText(double angle);
/// To a millionth.
std::string millionths(double number);

}  // namespace zyga::app
