#pragma once

#include <map>

#include "core/report/report.h"

namespace zyga::report {

/// The report as one HTML page that needs no other file. `figures` holds what stands in a figure's place: an <svg> or
/// an <img>; sections whose figure is not there have none. Reads in black and white and prints on A4.
std::string html(const Report& report, const std::map<Figure, std::string>& figures);

}  // namespace zyga::report
