#include "core/range/wording.h"

#include <charconv>
#include <cmath>
#include <numbers>

namespace zyga::range {
namespace {

using anatomy::Side;

constexpr double kDegree = std::numbers::pi / 180;

/// Rounded to `decimals` (at most 4), trailing zeros dropped. By whole numbers: a verdict on every joint is written
/// again at each step of a drag.
std::string number(double value, int decimals) {
  static constexpr std::array<long long, 5> kPowers{1, 10, 100, 1000, 10000};
  if (!std::isfinite(value) || std::abs(value) > 1e12) return "?";
  const long long power = kPowers[static_cast<std::size_t>(decimals)];
  const long long scaled = std::llround(std::abs(value) * static_cast<double>(power));
  std::array<char, 40> digits;
  const auto whole = std::to_chars(digits.data(), digits.data() + digits.size(), scaled / power);
  std::string text = value < 0 && scaled != 0 ? "\u2212" : "";
  text.append(digits.data(), whole.ptr);
  if (scaled % power == 0) return text;
  const auto fraction = std::to_chars(digits.data(), digits.data() + digits.size(), power + scaled % power);
  std::string decimalsText(digits.data() + 1, fraction.ptr);
  while (decimalsText.back() == '0') decimalsText.pop_back();
  return text + "." + decimalsText;
}

struct Unit {
  double size;  ///< in SI
  std::string_view sign;
  int decimals;

  std::string text(double value, int moreDecimals = 0) const {
    return number(value / size, decimals + moreDecimals).append(sign);
  }
  TextPair apart(double measured, double limit) const {
    TextPair pair;
    for (int more = 0; more <= 2; ++more) {
      pair = {text(measured, more), text(limit, more)};
      if (pair.measured != pair.limit) break;
    }
    return pair;
  }
};

constexpr Unit kDegrees{kDegree, "°", 1};
constexpr Unit kPercent{0.01, " %", 0};
constexpr Unit kMillimetres{0.001, " mm", 1};
constexpr Unit kMetres{1, " m", 2};

const Unit& unitOf(FindingKind kind) {
  switch (kind) {
    case FindingKind::Overlap:
      return kPercent;
    case FindingKind::TypedLimit:
      return kDegrees;
    default:
      return kMillimetres;
  }
}

}  // namespace

std::string degreesText(double radians) { return kDegrees.text(radians); }
std::string percentText(double share) { return kPercent.text(share); }
std::string millimetresText(double metres) { return kMillimetres.text(metres); }
std::string metresText(double metres) { return kMetres.text(metres); }
TextPair degreesApart(double measured, double limit) { return kDegrees.apart(measured, limit); }
TextPair textApart(const Criterion& criterion) {
  return unitOf(criterion.kind).apart(criterion.measured, criterion.limit);
}

std::string_view sideWord(Side side) { return side == Side::Left ? "left" : side == Side::Right ? "right" : ""; }

}  // namespace zyga::range
