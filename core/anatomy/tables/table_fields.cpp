#include "core/anatomy/tables/table_fields.h"

#include <array>
#include <charconv>
#include <cmath>

#include "core/anatomy/tables/csv.h"

namespace zyga::anatomy {
namespace {

std::string inLowerCase(std::string text) {
  for (char& c : text)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c + 32);
  return text;
}

/// Without -0.
std::string fewestDigits(double value) {
  std::array<char, 64> digits{};
  return {digits.data(), std::to_chars(digits.data(), digits.data() + digits.size(), value == 0 ? 0.0 : value).ptr};
}

}  // namespace

std::pair<std::string, std::string> titleAndUnit(const std::string& header) {
  const auto open = header.find('('), close = header.rfind(')');
  if (open == std::string::npos || close == std::string::npos || close < open)
    return {inLowerCase(trimmed(header)), ""};
  return {inLowerCase(trimmed(header.substr(0, open))),
          inLowerCase(trimmed(header.substr(open + 1, close - open - 1)))};
}

double metresIn(std::string_view unit) {
  if (unit == "mm") return 1e-3;
  if (unit == "cm") return 1e-2;
  return unit == "m" ? 1 : 0;
}

std::string millimetresText(double length) { return fewestDigits(std::round(length * 1e9) / 1e6); }

std::string shareText(double share) { return fewestDigits(std::round(share * 1e9) / 1e9); }

}  // namespace zyga::anatomy
