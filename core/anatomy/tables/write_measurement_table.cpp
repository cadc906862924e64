#include <algorithm>
#include <cstdio>
#include <numbers>

#include "core/anatomy/plan/region_ranges.h"
#include "core/anatomy/tables/csv.h"
#include "core/anatomy/tables/measurement_table.h"

namespace zyga::anatomy {
namespace {

std::string numberText(double value) {
  char text[32];
  std::snprintf(text, sizeof text, "%.6g", value);
  return text;
}

std::vector<Measure> usedMeasures(const MeasurementTable& table) {
  std::vector<Measure> used;
  for (int i = 0; i < kMeasureCount; ++i) {
    const auto measure = static_cast<Measure>(i);
    const bool any = std::any_of(table.rows.begin(), table.rows.end(),
                                 [measure](const TableRow& r) { return r.measures[measure].measured(); });
    if (any || measure == Measure::Length) used.push_back(measure);
  }
  return used;
}

}  // namespace

std::string writeMeasurementTable(const MeasurementTable& table) {
  const std::vector<Measure> used = usedMeasures(table);
  std::string text = "# specimen: " + table.name + "\n# plan: " + std::string(toText(table.plan)) + "\n";
  for (const CountRange& range : kCounts) {
    text += "# " + std::string(range.word) + ": " + std::to_string(table.counts.*range.count) + "\n";
  }
  text += "bone";
  for (const Measure m : used) text += "," + std::string(title(m)) + (isAngle(m) ? " (deg)" : " (mm)");
  text += ",evidence,source\n";
  for (const auto& [region, total] : table.regionTotals) {
    text += region + "," + numberText(total * 1e3) + std::string(used.size() + 1, ',') + "\n";
  }
  for (const TableRow& row : table.rows) {
    if (!row.measures.anyMeasured()) continue;
    text += toId(row.name);
    for (const Measure m : used) {
      const Cell& cell = row.measures[m];
      const double scale = isAngle(m) ? 180 / std::numbers::pi : 1e3;
      text += "," + (cell.measured() ? numberText(cell.value * scale) : std::string());
    }
    text += "," + quotedCsv(std::string(toText(row.evidence))) + "," + quotedCsv(row.source) + "\n";
  }
  return text;
}

}  // namespace zyga::anatomy
