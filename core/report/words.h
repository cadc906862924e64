#pragma once

#include <string>

/// Numbers as the report prints them, unit included, with a true minus sign. Private to the report.
namespace zyga::report {

std::string fixed(double value, int decimals);
/// "4.99 m"
std::string metres(double length);
/// "7.1°"
std::string degrees(double angle);
/// "+7.1", "−3.2", "0.0": an angle (rad) in degrees for tables whose heads say the unit.
std::string signedDegrees(double angle);
/// "38 %"
std::string percent(double share, int decimals = 0);
/// "1 bone", "12 bones"
std::string counted(std::size_t count, const std::string& one, const std::string& many);

}  // namespace zyga::report
