#include "core/files/json/numeral.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <cstring>
#include <limits>
#include <numbers>
#include <random>
#include <regex>

namespace zyga::files {
namespace {

/// Doubles of every size and sign, by their bits.
std::vector<double> anyDoubles(std::size_t count) {
  std::mt19937_64 generator(20240611);
  std::vector<double> out;
  while (out.size() < count) {
    const auto bits = generator();
    double value = 0;
    std::memcpy(&value, &bits, sizeof value);
    if (std::isfinite(value)) out.push_back(value);
  }
  return out;
}

std::vector<double> lengths(std::size_t count) {
  std::mt19937_64 generator(7);
  std::uniform_real_distribution<double> metres(-30, 30);
  std::vector<double> out(count);
  for (double& value : out) value = metres(generator);
  return out;
}

// RFC 8259 section 6.
bool isJsonNumber(const std::string& text) {
  static const std::regex kNumber(R"(-?(0|[1-9][0-9]*)(\.[0-9]+)?([eE][-+]?[0-9]+)?)");
  return std::regex_match(text, kNumber);
}

TEST(Numeral, ComesBackToTheBit) {
  for (const double value : anyDoubles(20000)) {
    const auto text = toNumeral(value);
    EXPECT_EQ(fromNumeral(text), value) << text;
    EXPECT_TRUE(isJsonNumber(text)) << text;
    EXPECT_EQ(std::strtod(text.c_str(), nullptr), value) << text;  // the C library as a second reader
  }
}

TEST(Numeral, MovingThePointLosesNothing) {
  for (const double metres : lengths(20000)) {
    const auto millimetres = toNumeral(metres, 3);
    ASSERT_EQ(fromNumeral(millimetres, 3), metres) << millimetres;
    EXPECT_NEAR(std::strtod(millimetres.c_str(), nullptr), metres * 1000, std::abs(metres) * 1e-12);
  }
}

TEST(Numeral, IsAsShortAsAPersonWouldWriteIt) {
  EXPECT_EQ(toNumeral(0.46, 3), "460");
  EXPECT_EQ(toNumeral(0.4605, 3), "460.5");
  EXPECT_EQ(toNumeral(12.0, 3), "12000");
  EXPECT_EQ(toNumeral(0.0005, 3), "0.5");
  EXPECT_EQ(toNumeral(-0.1, 2), "-10");
  EXPECT_EQ(toNumeral(0.0), "0");
  EXPECT_EQ(toNumeral(-0.0), "0");
  EXPECT_EQ(toNumeral(0.1 + 0.2), "0.30000000000000004");
  EXPECT_EQ(toNumeral(1e300), "1e300");
  EXPECT_EQ(toNumeral(-2.5e-30), "-2.5e-30");
}

TEST(Numeral, TakesEveryFormOfANumber) {
  EXPECT_EQ(fromNumeral("460", 3), 0.46);
  EXPECT_EQ(fromNumeral("4.6e2", 3), 0.46);
  EXPECT_EQ(fromNumeral("46E+1", 3), 0.46);
  EXPECT_EQ(fromNumeral("46000e-2", 3), 0.46);
  EXPECT_EQ(fromNumeral("-0"), 0.0);
}

TEST(Numeral, TooLargeIsInfiniteAndTooSmallIsZero) {
  EXPECT_EQ(fromNumeral("1e999"), std::numeric_limits<double>::infinity());
  EXPECT_EQ(fromNumeral("1e-999"), 0);
  EXPECT_EQ(fromNumeral("1e99999999999999999999", 3), std::numeric_limits<double>::infinity());
}

TEST(Numeral, DegreesBringTheSameRadiansBack) {
  std::mt19937_64 generator(11);
  std::uniform_real_distribution<double> angle(-std::numbers::pi, std::numbers::pi);
  for (int i = 0; i < 20000; ++i) {
    const double radian = angle(generator);
    const auto text = toDegrees(radian);
    ASSERT_EQ(radians(text), radian) << text;
    EXPECT_TRUE(isJsonNumber(text)) << text;
    EXPECT_NEAR(std::strtod(text.c_str(), nullptr), radian * 180 / std::numbers::pi, 1e-11);
  }
}

TEST(Numeral, TypedDegreesStayAsTyped) {
  for (int tenths = -1800; tenths <= 1800; ++tenths) {
    const double degrees = tenths / 10.0;
    const auto text = toDegrees(degrees * std::numbers::pi / 180);
    EXPECT_EQ(text, toNumeral(degrees));
  }
}

TEST(Numeral, TinyAndHugeAnglesComeBack) {
  for (const double angle : {5e-324, 1e-300, 1e-9, 0.0, 1e6, 1e300}) EXPECT_EQ(radians(toDegrees(angle)), angle);
}

}  // namespace
}  // namespace zyga::files
