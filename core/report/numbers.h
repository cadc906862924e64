#pragma once

#include "core/report/report.h"

namespace zyga::report {

/// "key,value,unit" a line (RFC 4180), a header first; numbers in as few digits as bring them back.
std::string numbersCsv(const Report& report);
/// {"title": ..., "subtitle": ..., "numbers": {"stand.hip_height": {"value": 3.02, "unit": "m"}, ...}}
std::string numbersJson(const Report& report);

}  // namespace zyga::report
