#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/report/report.h"

namespace zyga::report {

/// A number that stands somewhere in the report, for machines: "stand.hip_height", 3.02, "m".
struct Number {
  std::string key;
  double value = 0;
  std::string_view unit;  ///< "m", "m2", "deg", "%", "kg", "mmHg"; empty for counts and for yes (1) or no (0)
};

/// All numbers of a report in its order. Slopes and angles are in degrees.
std::vector<Number> numbersOf(const ReportData& data);

/// "key,value,unit" a line (RFC 4180), a header first; numbers in as few digits as bring them back.
std::string numbersCsv(const ReportData& data);
/// {"title": ..., "subtitle": ..., "numbers": {"stand.hip_height": {"value": 3.02, "unit": "m"}, ...}}; the title is
/// the specimen's name, the subtitle what is said of the report as a whole.
std::string numbersJson(const ReportData& data, std::string_view subtitle);

}  // namespace zyga::report
