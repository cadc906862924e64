#pragma once

#include <string>

#include "core/range/joint_judge.h"

namespace zyga::range {

/// A number and its unit as people read them: "9.4°", "38 %", "4.2 mm", "8.5 m". Trailing zeros are dropped.
std::string degreesText(double radians);
std::string percentText(double share);
std::string millimetresText(double metres);
std::string metresText(double metres);

/// Two values to be compared, with as many decimals as it takes to tell them apart: "49.8 %" against "50 %".
struct TextPair {
  std::string measured, limit;
};
TextPair degreesApart(double measured, double limit);
/// Measured value and limit of a criterion, in its unit.
TextPair textApart(const Criterion& criterion);

/// "left", "right", "" for the midline.
std::string_view sideWord(anatomy::Side side);

}  // namespace zyga::range
