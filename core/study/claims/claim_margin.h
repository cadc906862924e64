#pragma once

#include <functional>
#include <optional>

#include "core/range/limits.h"

namespace zyga::study {

/// Margins are looked for up to this, rad: twice the 5 degrees a joint by which ranges of bare bones may be off
/// (Kuznetsov & Tereschenko 2010).
inline constexpr double kMostMargin = 0.174532925199432957;
/// They are told in steps of this, rad: half a degree.
inline constexpr double kMarginStep = kMostMargin / 20;

/// How much the ranges of all joints that bend may differ from those of bare bones before a claim's answer turns. Soft
/// tissue is likely to end ranges sooner than bones do (Cobley, Rayfield & Barrett 2013, PLoS ONE 8(8):e72187, on
/// ostriches); bones without cartilage may also tell too little (Kuznetsov & Tereschenko 2010).
struct ClaimMargin {
  /// Of a claim that is supported: every joint's range may be narrowed by so much at both ends, rad, in whole steps
  /// rounded down; kMostMargin where it stays supported so far. None where ranges as they are show it only with a neck
  /// bent aside, as posed.
  std::optional<double> narrowing;
  /// Of a claim that is not: every joint's range has to be widened by so much at both ends, rad, in whole steps rounded
  /// up; none where kMostMargin does not do.
  std::optional<double> widening;
};

/// A range with both ends moved by so much, rad: outwards where positive, inwards where negative. An end moves inwards
/// no farther than neutral, or than the value of the range that is nearest to it, so that a narrower range always lies
/// within a wider one. A range without any value stays so.
range::MotionRange widened(range::MotionRange range, double by);

/// By bisection, as wider ranges never take support away. `holds` tells whether the claim is supported with ranges
/// widened by so much, rad.
ClaimMargin marginOf(bool supported, const std::function<bool(double)>& holds);

}  // namespace zyga::study
