#include <QHelpEvent>
#include <QToolTip>

#include "tests/ui/strip_fixture.h"

namespace zyga::ui {
namespace {

TEST_F(StripTest, EveryJointHasAMarkInTheColourOfItsVerdict) {
  const QImage seen = picture();
  for (std::size_t i = 0; i < strip_.columns().columns.size(); ++i) {
    const auto* verdict = document_.assessment().find(strip_.columns().columns[i].joint);
    ASSERT_TRUE(verdict);
    EXPECT_GT(pixelsOf(seen, around(strip_.markPlace(i), 4), theme().verdict(verdict->level)), 8) << i;
  }
}

TEST_F(StripTest, BandsReachAsFarAsTheBonesAllow) {
  const range::MotionRange& band = document_.motionRange(joint("C6-C7"), 0);
  const QImage seen = picture();
  const StripLayout& l = strip_.stripLayout();
  const auto ground = [&](double angle) {
    const QPoint at(static_cast<int>(l.xOfColumn(column("C6-C7"))) - 2, static_cast<int>(l.yOf(angle)));
    return seen.pixelColor(at) == theme().panel;
  };
  EXPECT_FALSE(ground(0.7 * band.max));
  EXPECT_TRUE(ground(1.12 * band.max));
  EXPECT_FALSE(ground(0.7 * band.min));
  EXPECT_TRUE(ground(1.12 * band.min));
}

TEST_F(StripTest, ANearMarginIsSofterThanTheRest) {
  const range::MotionRange& band = document_.motionRange(joint("C6-C7"), 0);
  const QImage seen = picture();
  const StripLayout& l = strip_.stripLayout();
  const auto greenAt = [&](double angle) {
    const QPoint at(static_cast<int>(l.xOfColumn(column("C6-C7"))) - 2, static_cast<int>(l.yOf(angle)));
    return theme().panel.red() - seen.pixelColor(at).red();
  };
  // The near margin is a tenth of the overlap, which is a fifth of the way from full to half.
  EXPECT_GT(greenAt(0.7 * band.max), greenAt(0.91 * band.max) + 10);
  EXPECT_GT(greenAt(0.91 * band.max), 5);
}

TEST_F(StripTest, AJointThatNothingJudgesIsHatched) {
  files::Project project = sampleProject();
  anatomy::Specimen specimen = project.specimen();
  anatomy::Joint& skull = specimen.joints[joint("skull-C1").value];
  ASSERT_EQ(skull.kind, anatomy::JointKind::Typed);
  skull.typed.reset();
  project.setSpecimen(std::move(specimen));
  open(project);
  ASSERT_EQ(level("skull-C1"), range::Level::NotJudged);
  const QImage seen = picture();
  const QRectF lane = strip_.stripLayout().laneRect(0);
  EXPECT_EQ(pixelsOf(seen, lane, theme().supported), 0);
  // Hatching: along the middle of the lane, ground and ink take turns.
  int turns = 0;
  const int x = static_cast<int>(lane.center().x());
  for (int y = static_cast<int>(lane.top()) + 8; y < lane.center().y() - 12; ++y)
    turns += (seen.pixelColor(x, y) == theme().panel) != (seen.pixelColor(x, y + 1) == theme().panel);
  EXPECT_GE(turns, 6);
  QSignalSpy hints(&strip_, &RangeStrip::hint);
  moveTo(strip_.markPlace(0), Qt::NoButton);
  EXPECT_TRUE(hints.last().first().toString().contains("not assessed: no facets and no typed limits"));
}

TEST_F(StripTest, TheSelectedJointIsNamedAndTinted) {
  ASSERT_EQ(pixelsOf(picture(), strip_.stripLayout().names(), theme().choice), 0);
  document_.selectJoint(joint("D4-D5"));
  const QImage seen = picture();
  EXPECT_GT(pixelsOf(seen, strip_.stripLayout().names(), theme().choice), 10);
  const QRectF lane = strip_.stripLayout().laneRect(column("D4-D5"));
  EXPECT_NE(seen.pixelColor(lane.topLeft().toPoint() + QPoint(2, 3)), theme().panel);
}

TEST_F(StripTest, FollowsTheTheme) {
  for (const Scheme scheme : {Scheme::Dark, Scheme::Light}) {
    ThemeSwitch::instance().apply(*qApp, scheme);
    const QImage seen = picture();
    EXPECT_EQ(seen.pixelColor(2, seen.height() - 3), theme().panel);
    EXPECT_GT(pixelsOf(seen, around(mark("C6-C7"), 5), theme().supported), 10);
  }
}

TEST_F(StripTest, AHundredJointsHaveLanesOfEightPixels) {
  anatomy::MeasurementTable table;
  table.plan = anatomy::BodyPlan::LowBrowser;
  table.counts = {15, 10, 5, 80};
  open(files::projectFromTable(table));
  EXPECT_GE(strip_.columns().columns.size(), 100u);
  EXPECT_GE(strip_.stripLayout().slotWidth(), 8);
  const double most = document_.motionRange(joint("Ca30-Ca31"), 0).max;
  drag(mark("Ca30-Ca31"), laneAt("Ca30-Ca31", 0.5 * most));
  EXPECT_NEAR(angle("Ca30-Ca31"), 0.5 * most, qDegreesToRadians(1.0));
  EXPECT_EQ(angle("Ca29-Ca30"), 0);
  EXPECT_EQ(angle("Ca31-Ca32"), 0);
}

TEST_F(StripTest, OpeningAnotherAnimalStartsAfresh) {
  strip_.setSpan(ColumnSpan{3, 5});
  strip_.zoomTo(anatomy::Region::Cervical);
  anatomy::MeasurementTable table;
  table.counts = {5, 9, 4, 12};
  open(files::projectFromTable(table));
  EXPECT_FALSE(strip_.span());
  EXPECT_FALSE(strip_.zoomedRegion());
  EXPECT_EQ(strip_.columns().columns.size(), 1u + 4 + 1 + 8 + 1 + 1 + 11);
}

TEST_F(StripTest, TheTipOfALaneIsItsVerdict) {
  const QPoint at = mark("C6-C7").toPoint();
  QHelpEvent help(QEvent::ToolTip, at, strip_.mapToGlobal(at));
  QApplication::sendEvent(&strip_, &help);
  EXPECT_TRUE(QToolTip::text().startsWith("C6-C7")) << QToolTip::text().toStdString();
  EXPECT_TRUE(QToolTip::text().contains("within range"));
  QToolTip::hideText();
}

TEST(EmptyStrip, SaysWhatWillBeThereAndTakesKeys) {
  Document document;
  RangeStrip strip(document);
  strip.resize(1000, 180);
  EXPECT_FALSE(strip.grab().isNull());
  for (Qt::Key key : {Qt::Key_Up, Qt::Key_Right, Qt::Key_Return, Qt::Key_Escape}) QTest::keyClick(&strip, key);
  QTest::mouseClick(&strip, Qt::LeftButton, {}, QPoint(300, 90));
  EXPECT_FALSE(document.hasProject());
}

}  // namespace
}  // namespace zyga::ui
