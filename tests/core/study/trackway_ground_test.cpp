#include "core/study/ground/trackway_ground.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numbers>

namespace zyga::study {
namespace {

using Eigen::Vector2d;

/// Rows that tell all distances of prints at these places, left first.
Trackway measured(const std::vector<Vector2d>& places, bool leftFirst = true) {
  Trackway trackway;
  const auto between = [&](std::size_t a, std::size_t b) -> std::optional<double> {
    if (b >= places.size()) return {};
    return (places[a] - places[b]).norm();
  };
  for (std::size_t i = 0; i < places.size(); ++i) {
    Footprint print;
    print.foot = (i % 2 == 0) == leftFirst ? "LP" : "RP";
    print.foot += std::to_string(i / 2 + 1);
    print.pace = between(i, i + 1);
    print.nextPace = i + 1 < places.size() ? between(i + 1, i + 2) : std::nullopt;
    print.stride = between(i, i + 2);
    print.length = 0.4;
    trackway.prints.push_back(print);
  }
  return trackway;
}

std::vector<Vector2d> zigzag(std::size_t count, double advance, double gauge) {
  std::vector<Vector2d> places;
  for (std::size_t i = 0; i < count; ++i) {
    places.emplace_back(advance * static_cast<double>(i), i % 2 == 0 ? gauge / 2 : -gauge / 2);
  }
  return places;
}

TEST(LayOut, PutsAStraightTrackwayWhereItWasMeasured) {
  const auto places = zigzag(7, 0.6, 0.5);
  const auto laid = layOut(measured(places));
  EXPECT_TRUE(laid.gaps.empty());
  ASSERT_EQ(laid.prints.size(), places.size());
  for (std::size_t i = 0; i < places.size(); ++i) {
    EXPECT_NEAR((laid.prints[i].p_W - places[i]).norm(), 0, 1e-9) << i;
    EXPECT_NEAR(laid.prints[i].heading, 0, 1e-9);
    EXPECT_EQ(laid.prints[i].foot, i % 2 == 0 ? Foot::LeftHind : Foot::RightHind);
    EXPECT_TRUE(laid.prints[i].ownRow);
  }
}

TEST(LayOut, KeepsEveryDistanceOfAnUnevenOne) {
  const std::vector<Vector2d> places{{0, -0.3}, {0.7, 0.25}, {1.2, -0.35}, {2.0, 0.3}, {2.5, -0.1}, {3.3, 0.6}};
  const auto laid = layOut(measured(places, false));
  ASSERT_EQ(laid.prints.size(), places.size());
  for (std::size_t i = 0; i < places.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      EXPECT_NEAR((laid.prints[i].p_W - laid.prints[j].p_W).norm(), (places[i] - places[j]).norm(), 1e-9);
    }
  }
  // Right feet on the right.
  EXPECT_LT(laid.prints[0].p_W.y(), laid.prints[1].p_W.y());
}

TEST(LayOut, TurnsWithTheHeadingAndStartsWhereItIsPut) {
  auto trackway = measured(zigzag(5, 0.6, 0.5));
  trackway.x = 3;
  trackway.y = -2;
  trackway.heading = std::numbers::pi / 2;
  const auto laid = layOut(trackway);
  EXPECT_NEAR((laid.prints[0].p_W - Vector2d(3 - 0.25, -2)).norm(), 0, 1e-9);
  EXPECT_NEAR((laid.prints[1].p_W - Vector2d(3 + 0.25, -2 + 0.6)).norm(), 0, 1e-9);
  EXPECT_NEAR(laid.prints[2].heading, std::numbers::pi / 2, 1e-9);
}

TEST(LayOut, TheLastRowTellsOfTwoMorePrints) {
  auto trackway = measured(zigzag(5, 0.6, 0.5));
  trackway.prints.resize(3);
  const auto laid = layOut(trackway);
  ASSERT_EQ(laid.prints.size(), 5u);
  EXPECT_EQ(laid.prints[4].label, "LP2") << "the row that leads to it";
  EXPECT_FALSE(laid.prints[4].ownRow || laid.prints[4].length);
  EXPECT_EQ(laid.prints[4].foot, Foot::LeftHind);
  EXPECT_NEAR((laid.prints[4].p_W - Vector2d(2.4, 0.25)).norm(), 0, 1e-9);
}

TEST(LayOut, PaceAndGaugeAloneLeadStraightOn) {
  Trackway trackway;
  for (const char* foot : {"L", "R", "L", "R"}) {
    Footprint print;
    print.foot = foot;
    print.pace = 0.5;
    print.gauge = 0.3;
    trackway.prints.push_back(print);
  }
  const auto laid = layOut(trackway);
  EXPECT_TRUE(laid.gaps.empty());
  ASSERT_EQ(laid.prints.size(), 5u);
  for (std::size_t i = 0; i < 5; ++i) {
    EXPECT_NEAR((laid.prints[i].p_W - zigzag(5, 0.4, 0.3)[i]).norm(), 0, 1e-9) << i;
  }
}

TEST(LayOut, EndsWhereADistanceIsUnknownAndSaysSo) {
  auto trackway = measured(zigzag(6, 0.6, 0.5));
  trackway.prints[2].nextPace.reset();
  trackway.prints[3].pace.reset();
  const auto laid = layOut(trackway);
  EXPECT_EQ(laid.prints.size(), 4u);
  ASSERT_EQ(laid.gaps.size(), 1u);
  EXPECT_EQ(laid.gaps[0], reason::Reason(kPaceUnknown, {reason::text("RP2")}));
  // With the pace and without a stride, a gauge would do.
  trackway.prints[3].pace = 0.7;
  trackway.prints[2].stride.reset();
  EXPECT_THAT(layOut(trackway).gaps, testing::ElementsAre(reason::Reason(kStrideUnknown, {reason::text("RP2")})));
}

TEST(LayOut, WithoutAnyDistanceThereIsOnePrint) {
  Trackway trackway;
  trackway.prints.emplace_back().foot = "left";
  trackway.prints.emplace_back().foot = "nobody";
  const auto laid = layOut(trackway);
  EXPECT_EQ(laid.prints.size(), 1u);
  ASSERT_EQ(laid.gaps.size(), 1u);
  EXPECT_EQ(laid.gaps[0], reason::Reason(kPrintWithoutSide, {reason::text("nobody")}));
  trackway.prints.emplace_back().foot = "right";
  EXPECT_EQ(layOut(trackway).gaps[0], reason::Reason(kPaceUnknown, {reason::text("left")}));
  trackway.prints[0].pace = 0.7;
  EXPECT_EQ(layOut(trackway).gaps[0], reason::Reason(kNextPaceUnknown, {reason::text("left")}));
  trackway.prints[1].foot.clear();
  EXPECT_EQ(layOut(trackway).gaps[1], reason::Reason(kPrintWithoutName));
  EXPECT_TRUE(layOut({}).prints.empty());
}

TEST(LayOut, ForePrintsStartAheadOfTheHindOnes) {
  auto trackway = measured(zigzag(4, 0.6, 0.5));
  auto fore = measured(zigzag(4, 0.6, 0.3)).prints;
  for (auto& print : fore) print.foot[1] = 'M';
  fore[1].ahead = 0.35;
  trackway.prints.insert(trackway.prints.end(), fore.begin(), fore.end());
  const auto laid = layOut(trackway);
  EXPECT_TRUE(laid.gaps.empty());
  ASSERT_EQ(laid.prints.size(), 8u);
  EXPECT_EQ(laid.prints[5].foot, Foot::RightFore);
  EXPECT_NEAR((laid.prints[5].p_W - Vector2d(0.6 + 0.35, -0.15)).norm(), 0, 1e-9);
}

TEST(LayOut, ForePrintsWithoutThatStayOut) {
  auto trackway = measured(zigzag(4, 0.6, 0.5));
  trackway.prints.emplace_back().foot = "LM1";
  const auto laid = layOut(trackway);
  EXPECT_EQ(laid.prints.size(), 4u);
  EXPECT_EQ(laid.gaps.back(), reason::Reason(kForePrintsAdrift));
}

}  // namespace
}  // namespace zyga::study
