#pragma once

#include <string>

#include "core/study/reach/envelope.h"
#include "core/study/reach/range_chart.h"
#include "core/study/stress/pressure.h"
#include "core/study/uncertainty/spread.h"

/// Studies as JSON, for the batch verb and for reports: m, m2, m3, degrees, mmHg, rounded to a millionth, keys in fixed
/// order. Each is one object; what it was asked of (specimen, assumptions) the caller puts around it.
namespace zyga::files {

std::string studyJson(const study::Elevation& elevation);
std::string studyJson(const study::Envelope& envelope);
std::string studyJson(const study::RangeChart& chart);
std::string studyJson(const study::SpreadStudy& spread);
std::string studyJson(const study::Pressure& pressure);

}  // namespace zyga::files
