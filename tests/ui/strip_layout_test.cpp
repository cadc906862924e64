#include "ui/strip/strip_layout.h"

#include <gtest/gtest.h>

#include <QtMath>

#include "tests/ui/document_sample.h"

namespace zyga::ui {
namespace {

class StripLayoutTest : public testing::Test {
 protected:
  StripLayout layout(double width, std::optional<std::size_t> zoom = std::nullopt) const {
    return StripLayout(strip_, QRectF(0, 0, width, 200), 14, 60, zoom, qDegreesToRadians(20.0));
  }
  const files::Project project_ = sampleProject();
  const StripColumns strip_ = stripColumns(project_.specimen());
};

TEST_F(StripLayoutTest, AnglesAndPixelsAreInverse) {
  const StripLayout l = layout(1000);
  EXPECT_DOUBLE_EQ(l.yOf(0), l.plot().center().y());
  EXPECT_LT(l.yOf(0.1), l.yOf(0)) << "dorsal is up";
  for (double angle : {-0.3, 0.05, 0.2}) EXPECT_NEAR(l.angleBetween(l.yOf(angle) - l.yOf(0)), angle, 1e-12);
}

TEST_F(StripLayoutTest, MarksStayInsideThePlot) {
  const StripLayout l = layout(1000);
  EXPECT_DOUBLE_EQ(l.yWithin(3.0, 5), l.plot().top() + 5);
  EXPECT_DOUBLE_EQ(l.yWithin(-3.0, 5), l.plot().bottom() - 5);
  EXPECT_DOUBLE_EQ(l.yWithin(0.1, 5), l.yOf(0.1));
}

TEST_F(StripLayoutTest, EveryColumnIsFoundUnderItsMark) {
  for (double width : {560.0, 1280.0, 3840.0}) {
    const StripLayout l = layout(width);
    for (std::size_t i = 0; i < strip_.columns.size(); ++i) {
      const QPointF place(l.xOfColumn(i), l.plot().center().y());
      EXPECT_EQ(l.columnAt(place), i) << width;
      EXPECT_TRUE(l.laneRect(i).contains(place));
    }
  }
}

TEST_F(StripLayoutTest, NoColumnInTheMiddleOfTheSacrum) {
  const StripLayout l = layout(1280);
  const StripRegion& sacrum = strip_.regions[2];
  EXPECT_EQ(l.columnAt({l.xOf((sacrum.start + sacrum.end) / 2), l.plot().center().y()}), std::nullopt);
  EXPECT_EQ(l.columnAt({l.plot().left() - 20, l.plot().center().y()}), std::nullopt);
}

TEST_F(StripLayoutTest, LabelsAreFoundAboveThePlotOnly) {
  const StripLayout l = layout(1280);
  for (std::size_t region : {0u, 1u, 3u}) {
    const QPointF middle = l.regionRect(strip_.regions[region]).center();
    EXPECT_EQ(l.labelAt({middle.x(), l.labels().center().y()}), region);
    EXPECT_EQ(l.labelAt({middle.x(), l.plot().center().y()}), std::nullopt);
  }
  const QPointF sacrum = l.regionRect(strip_.regions[2]).center();
  EXPECT_EQ(l.labelAt({sacrum.x(), l.labels().center().y()}), std::nullopt) << "nothing bends there";
}

TEST_F(StripLayoutTest, ZoomSpreadsOneRegionOverTheWidth) {
  const StripLayout whole = layout(1280), neck = layout(1280, 0);
  EXPECT_GT(neck.slotWidth(), 3 * whole.slotWidth());
  EXPECT_EQ(neck.visible(), (ColumnSpan{0, 13}));
  EXPECT_EQ(whole.visible(), (ColumnSpan{0, strip_.columns.size() - 1}));
  EXPECT_GT(neck.xOfColumn(0), neck.plot().left());
  EXPECT_LT(neck.xOfColumn(13), neck.plot().right());
}

TEST(Scale, ShowsMostBandsWholeAndIsRound) {
  const auto degrees = [](double scale) { return std::round(qRadiansToDegrees(scale) * 1e6) / 1e6; };
  const std::vector<double> necks(14, qDegreesToRadians(12.3));
  EXPECT_EQ(degrees(scaleFor(necks, 0)), 15);
  std::vector<double> withSkull = necks;
  withSkull.push_back(qDegreesToRadians(60));
  EXPECT_EQ(degrees(scaleFor(withSkull, 0)), 15) << "one wide band must not flatten the others";
  EXPECT_EQ(degrees(scaleFor(necks, qDegreesToRadians(19))), 20) << "but a mark is worth showing";
  EXPECT_EQ(degrees(scaleFor(necks, qDegreesToRadians(170))), 45) << "within reason";
  EXPECT_GT(scaleFor({}, 0), 0);
}

TEST(Scale, TicksAreSymmetricRoundAndWithinReach) {
  for (double reach : {2.2, 5.5, 16.5, 22.0, 99.0}) {
    const auto ticks = axisTicks(qDegreesToRadians(reach));
    ASSERT_EQ(ticks.size(), 5u);
    EXPECT_EQ(ticks[2], 0);
    EXPECT_DOUBLE_EQ(ticks[0], -ticks[4]);
    EXPECT_DOUBLE_EQ(ticks[1], -ticks[3]);
    EXPECT_LE(qRadiansToDegrees(ticks[4]), reach);
    EXPECT_GE(qRadiansToDegrees(ticks[4]), 0.6 * reach);
  }
}

}  // namespace
}  // namespace zyga::ui
