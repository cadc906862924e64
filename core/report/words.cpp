#include "core/report/words.h"

#include <cmath>
#include <cstdio>
#include <numbers>

namespace zyga::report {
namespace {

constexpr double kDegree = std::numbers::pi / 180;
constexpr const char* kMinus = "\u2212";

}  // namespace

std::string fixed(double value, int decimals) {
  char text[64];
  std::snprintf(text, sizeof text, "%.*f", decimals, std::abs(value));
  // What rounds to nothing has no sign.
  const bool zero = std::string(text).find_first_not_of("0.") == std::string::npos;
  return (value < 0 && !zero ? kMinus : "") + std::string(text);
}

std::string metres(double length) { return fixed(length, 2) + " m"; }

std::string degrees(double angle) { return fixed(angle / kDegree, 1) + "\u00b0"; }

std::string signedDegrees(double angle) {
  const std::string text = fixed(angle / kDegree, 1);
  return (angle > 0 && text != "0.0" ? "+" : "") + text;
}

std::string percent(double share, int decimals) { return fixed(100 * share, decimals) + " %"; }

std::string counted(std::size_t count, const std::string& one, const std::string& many) {
  return std::to_string(count) + " " + (count == 1 ? one : many);
}

}  // namespace zyga::report
