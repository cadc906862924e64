#pragma once

#include <string>
#include <string_view>
#include <utility>

/// What tables of points and facets have in common: titles with units, numbers as they are written.
namespace zyga::anatomy {

/// "x (mm)" -> "x" and "mm", both in lower case and trimmed; the unit is empty where there is none.
std::pair<std::string, std::string> titleAndUnit(const std::string& header);

/// Metres in a unit of length that tables may use (mm, cm, m); 0 for any other.
double metresIn(std::string_view unit);

/// A length (m) in mm, to a nanometre: more than a scan knows.
std::string millimetresText(double length);
/// Part of a unit vector, a share: to 1e-9.
std::string shareText(double share);

/// Farther from the origin than this no point of a scan lies, m.
inline constexpr double kFarthestPoint = 1000;

}  // namespace zyga::anatomy
