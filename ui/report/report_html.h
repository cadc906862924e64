#pragma once

#include <map>
#include <string>

#include "ui/report/report_text.h"

namespace zyga::ui {

/// The report as one HTML page, UTF-8, that needs no other file. `figures` holds what stands in a figure's place: an
/// <svg> or an <img>; sections whose figure is not there have none. Reads in black and white and prints on A4.
std::string reportHtml(const ReportText& report, const std::map<Figure, std::string>& figures);

}  // namespace zyga::ui
