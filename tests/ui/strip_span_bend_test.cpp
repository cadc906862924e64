#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "ui/strip/shown_bands.h"

namespace zyga::ui {
namespace {

/// What each joint of a span of `widths` turns by.
std::vector<double> turns(const std::vector<double>& widths, int motion, std::size_t grabbed, double delta) {
  const SpanTurn span = spanTurn(widths, motion, grabbed, delta);
  std::vector<double> turns;
  for (const double weight : span.weights) turns.push_back(weight * span.turn[motion]);
  for (int other = 0; other < 3; ++other) EXPECT_TRUE(other == motion || span.turn[other] == 0) << "other motions stay";
  return turns;
}

using testing::DoubleNear;
using testing::ElementsAre;

TEST(SpanBend, TurnsInProportionToTheBands) {
  EXPECT_THAT(turns({0.2, 0.4, 0.1}, 1, 1, 0.08),
              ElementsAre(DoubleNear(0.04, 1e-12), DoubleNear(0.08, 1e-12), DoubleNear(0.02, 1e-12)))
      << "the grabbed joint follows the pointer";
}

TEST(SpanBend, LeavesJointsWithoutABandAlone) {
  EXPECT_THAT(turns({0.2, 0, 0.1}, 0, 1, 0.06), ElementsAre(DoubleNear(0.06, 1e-12), 0, DoubleNear(0.03, 1e-12)))
      << "the widest band stands in for the grabbed joint";
}

TEST(SpanBend, SharesAlikeWhereNoJointHasABand) {
  EXPECT_THAT(turns({0, 0, 0}, 2, 0, -0.05),
              ElementsAre(DoubleNear(-0.05, 1e-12), DoubleNear(-0.05, 1e-12), DoubleNear(-0.05, 1e-12)));
}

TEST(SpanBend, OfOneJointIsItsOwnTurn) {
  EXPECT_THAT(turns({0.3}, 0, 0, 0.123), ElementsAre(DoubleNear(0.123, 1e-12)));
}

TEST(SpanBend, OfNoJointsChangesNothing) { EXPECT_TRUE(turns({}, 0, 0, 1).empty()); }

}  // namespace
}  // namespace zyga::ui
