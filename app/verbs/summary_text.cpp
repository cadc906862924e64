#include "app/verbs/summary_text.h"

#include <cmath>
#include <iomanip>
#include <numbers>
#include <sstream>

#include "core/files/json/json_layout.h"
#include "core/files/json/numeral.h"

namespace zyga::app {
namespace {

std::string metres(double length) { return fixed(length, 2) + " m"; }

}  // namespace

std::string fixed(double number, int decimals) {
  std::ostringstream out;
  out.imbue(std::locale::classic());
  out << std::fixed << std::setprecision(decimals) << number;
  auto text = out.str();
  const bool zero = text.find_first_not_of("-0.") == std::string::npos;
  return zero && text.starts_with('-') ? text.substr(1) : text;
}

std::string millionths(double number) {
  if (!std::isfinite(number)) return "null";
  return files::toNumeral(std::round(number * 1e6) / 1e6);
}

std::string degreesText(double angle) { return fixed(angle * 180 / std::numbers::pi, 1); }

std::string degreesJson(double angle) { return millionths(angle * 180 / std::numbers::pi); }

std::string pointJson(const Eigen::Vector3d& p) {
  return files::list({millionths(p.x()), millionths(p.y()), millionths(p.z())});
}

std::string summaryText(const anatomy::Summary& s) {
  return "  skull " + metres(s.skull) + ", neck " + metres(s.neck) + ", trunk " + metres(s.trunk) + ", sacrum " +
         metres(s.sacrum) + ", tail " + metres(s.tail) + "\n  " + metres(s.total) +
         " from snout to tail tip along the column, " + metres(s.column) + " without the skull\n  femur " +
         metres(s.femur) + ", humerus to femur " + fixed(s.humerusToFemur, 2) + "\n";
}

std::string summaryJson(const anatomy::Summary& s) {
  using files::member;
  return files::onOneLine({member("skull_m", millionths(s.skull)), member("neck_m", millionths(s.neck)),
                           member("trunk_m", millionths(s.trunk)), member("sacrum_m", millionths(s.sacrum)),
                           member("tail_m", millionths(s.tail)), member("column_m", millionths(s.column)),
                           member("total_m", millionths(s.total)), member("femur_m", millionths(s.femur)),
                           member("humerus_to_femur", millionths(s.humerusToFemur))});
}

CellCount countCells(const anatomy::MeasurementTable& table) {
  CellCount count;
  for (const auto& row : table.rows) {
    ++count.bones;
    if (row.evidence == anatomy::Evidence::Found || row.evidence == anatomy::Evidence::FoundDeformed)
      ++count.bonesFound;
    for (int i = 0; i < anatomy::kMeasureCount; ++i) {
      const auto& cell = row.measures[static_cast<anatomy::Measure>(i)];
      if (cell.measured()) ++count.measured;
      if (cell.known() && !cell.measured()) ++count.inferred;
    }
  }
  return count;
}

}  // namespace zyga::app
