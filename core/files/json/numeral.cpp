#include "core/files/json/numeral.h"

#include <array>
#include <charconv>
#include <limits>
#include <numbers>

namespace zyga::files {
namespace {

constexpr int kTypedDigits = 15;     // every decimal of so many digits is some double's own
constexpr int kExtendedDigits = 21;  // tells any two 80-bit numbers apart
constexpr int kMostZeros = 6;        // before or after the digits; beyond them an exponent is easier to read

/// 0.d1d2d3... x 10^point.
struct Decimal {
  bool negative = false;
  std::string digits;
  int point = 0;
};

/// Takes "-d.ddde+xx" apart.
Decimal takeApart(std::string_view scientific) {
  Decimal out;
  out.negative = scientific.front() == '-';
  if (out.negative) scientific.remove_prefix(1);
  const auto e = scientific.find('e');
  for (const char c : scientific.substr(0, e)) {
    if (c != '.') out.digits += c;
  }
  auto exponent = scientific.substr(e + 1);
  if (exponent.front() == '+') exponent.remove_prefix(1);
  std::from_chars(exponent.data(), exponent.data() + exponent.size(), out.point);
  ++out.point;
  out.digits.erase(out.digits.find_last_not_of('0') + 1);
  return out;
}

std::string layOut(const Decimal& d) {
  if (d.digits.empty()) return "0";
  const std::string sign = d.negative ? "-" : "";
  const int count = static_cast<int>(d.digits.size());
  if (d.point > count + kMostZeros || d.point < -kMostZeros) {
    const std::string fraction = count > 1 ? "." + d.digits.substr(1) : "";
    return sign + d.digits.front() + fraction + "e" + std::to_string(d.point - 1);
  }
  if (d.point <= 0) return sign + "0." + std::string(static_cast<std::size_t>(-d.point), '0') + d.digits;
  if (d.point >= count) return sign + d.digits + std::string(static_cast<std::size_t>(d.point - count), '0');
  const auto whole = static_cast<std::size_t>(d.point);
  return sign + d.digits.substr(0, whole) + "." + d.digits.substr(whole);
}

int significantDigits(std::string_view numeral) {
  int digits = 0;
  for (const char c : numeral.substr(0, numeral.find_first_of("eE"))) {
    if (c >= '0' && c <= '9' && (digits > 0 || c != '0')) ++digits;
  }
  return digits;
}

template <class Real>
Real parse(std::string_view numeral) {
  Real value = 0;
  const auto result = std::from_chars(numeral.data(), numeral.data() + numeral.size(), value);
  if (result.ec != std::errc::result_out_of_range) return value;
  // Too large or too small: the sign of the exponent tells which.
  const auto e = numeral.find_first_of("eE");
  const bool tiny = e != std::string_view::npos && numeral.find('-', e) != std::string_view::npos;
  return tiny ? Real(0) : std::numeric_limits<Real>::infinity();
}

}  // namespace

std::string toNumeral(double value, int places) {
  std::array<char, 64> buffer{};
  const auto end = std::to_chars(buffer.begin(), buffer.end(), value, std::chars_format::scientific).ptr;
  Decimal decimal = takeApart({buffer.data(), static_cast<std::size_t>(end - buffer.data())});
  decimal.point += places;
  return layOut(decimal);
}

double fromNumeral(std::string_view numeral, int places) {
  if (places == 0) return parse<double>(numeral);
  const auto e = numeral.find_first_of("eE");
  long exponent = 0;
  if (e != std::string_view::npos) {
    auto text = numeral.substr(e + 1);
    if (text.starts_with('+')) text.remove_prefix(1);
    if (std::from_chars(text.data(), text.data() + text.size(), exponent).ec != std::errc()) {
      return parse<double>(numeral);  // an exponent of twenty digits: zero or infinite whatever the shift
    }
  }
  return parse<double>(std::string(numeral.substr(0, e)) + "e" + std::to_string(exponent - places));
}

std::string toDegrees(double angle) {
  const long double degrees = static_cast<long double>(angle) * 180 / std::numbers::pi_v<long double>;
  std::string text;
  for (int digits = kTypedDigits; digits <= kExtendedDigits; ++digits) {
    std::array<char, 64> buffer{};
    const auto end =
        std::to_chars(buffer.begin(), buffer.end(), degrees, std::chars_format::scientific, digits - 1).ptr;
    text = layOut(takeApart({buffer.data(), static_cast<std::size_t>(end - buffer.data())}));
    if (radians(text) == angle) break;
  }
  return text;
}

double radians(std::string_view numeral) {
  if (significantDigits(numeral) <= kTypedDigits) return parse<double>(numeral) * std::numbers::pi / 180;
  return static_cast<double>(parse<long double>(numeral) * std::numbers::pi_v<long double> / 180);
}

}  // namespace zyga::files
