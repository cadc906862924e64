#include "core/anatomy/plan/scaled_table.h"

#include <cmath>
#include <cstdio>
#include <stdexcept>

namespace zyga::anatomy {
namespace {

std::string timesInWords(double factor) {
  char text[32];
  std::snprintf(text, sizeof text, "%.4g", factor);
  return std::string("scaled by ") + text;
}

bool wasFound(Evidence evidence) { return evidence == Evidence::Found || evidence == Evidence::FoundDeformed; }

}  // namespace

MeasurementTable scaledTable(MeasurementTable table, double factor) {
  if (!(factor > 0) || !std::isfinite(factor))
    throw std::invalid_argument("an animal can only be scaled by more than 0");
  for (TableRow& row : table.rows) {
    for (int m = 0; m < kMeasureCount; ++m) {
      const auto measure = static_cast<Measure>(m);
      if (!isAngle(measure)) row.measures[measure].value *= factor;
    }
    if (!wasFound(row.evidence)) continue;
    row.evidence = Evidence::Scaled;
    row.source += (row.source.empty() ? "" : "; ") + timesInWords(factor);
  }
  for (auto& [region, total] : table.regionTotals) total *= factor;
  return table;
}

}  // namespace zyga::anatomy
