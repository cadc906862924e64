#include "tests/ui/strip_fixture.h"

namespace zyga::ui {
namespace {

constexpr const char* kJoint = "C6-C7";

TEST_F(StripTest, DraggingAMarkBeyondItsBandIsJudgedAndSeen) {
  const double most = document_.motionRange(joint(kJoint), 0).max;
  const QRectF plot = strip_.stripLayout().plot();
  ASSERT_EQ(level(kJoint), range::Level::Supported);
  ASSERT_EQ(pixelsOf(picture(), plot, theme().beyond), 0);

  const QPointF from = mark(kJoint), to = laneAt(kJoint, 1.2 * most);
  press(from);
  moveTo(to);
  EXPECT_TRUE(document_.previewing());
  EXPECT_EQ(level(kJoint), range::Level::Beyond) << "live, before the button is let go";
  release(to);

  EXPECT_FALSE(document_.previewing());
  EXPECT_NEAR(angle(kJoint), 1.2 * most, qDegreesToRadians(0.4)) << "a pixel is about 0.3 degrees here";
  EXPECT_EQ(level(kJoint), range::Level::Beyond);
  EXPECT_EQ(document_.undoStack().count(), 1);
  const QImage seen = picture();
  const QPointF place = mark(kJoint);
  EXPECT_GT(pixelsOf(seen, around(place, 8), theme().beyond), 20);
  const qreal size = 4;
  const int above = pixelsOf(seen, QRectF(place.x() - 6, place.y() - size, 12, size - 1), theme().beyond);
  const int below = pixelsOf(seen, QRectF(place.x() - 6, place.y(), 12, size - 1), theme().beyond);
  EXPECT_GT(below, above) << "a triangle is wider below";
}

TEST_F(StripTest, UndoPutsTheMarkBackIntoItsBand) {
  drag(mark(kJoint), laneAt(kJoint, 1.2 * document_.motionRange(joint(kJoint), 0).max));
  ASSERT_EQ(level(kJoint), range::Level::Beyond);
  document_.undoStack().undo();
  EXPECT_EQ(angle(kJoint), 0);
  EXPECT_EQ(pixelsOf(picture(), strip_.stripLayout().plot(), theme().beyond), 0);
  EXPECT_GT(pixelsOf(picture(), around(mark(kJoint), 5), theme().supported), 20);
}

TEST_F(StripTest, ADragMovesOnlyTheChosenMotionOfOneJoint) {
  const kinematics::Pose before = document_.pose();
  drag(mark("Ca8-Ca9"), mark("Ca8-Ca9") + QPointF(0, 20));
  EXPECT_LT(angle("Ca8-Ca9"), 0);
  kinematics::Pose expected = before;
  expected[joint("Ca8-Ca9")].x() = angle("Ca8-Ca9");
  EXPECT_EQ(document_.pose(), expected);
}

TEST_F(StripTest, EscapeTakesADragBack) {
  const kinematics::Pose before = document_.pose();
  const QPointF from = mark(kJoint), to = from - QPointF(0, 30);
  press(from);
  moveTo(to);
  ASSERT_NE(document_.pose(), before);
  key(Qt::Key_Escape);
  EXPECT_EQ(document_.pose(), before);
  moveTo(to - QPointF(0, 10));
  release(to);
  EXPECT_EQ(document_.pose(), before);
  EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(StripTest, AClickSelectsAndChangesNothing) {
  press(emptyLane(kJoint));
  release(emptyLane(kJoint));
  EXPECT_EQ(document_.selectedJoint(), joint(kJoint));
  EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(StripTest, SweepingSidewaysChoosesASpan) {
  const kinematics::Pose before = document_.pose();
  drag(emptyLane("C3-C4"), emptyLane("C9-C10"));
  ASSERT_TRUE(strip_.span());
  EXPECT_EQ(*strip_.span(), (ColumnSpan{column("C3-C4"), column("C9-C10")}));
  EXPECT_EQ(document_.pose(), before);
  drag(emptyLane("Ca9-Ca10"), emptyLane("Ca3-Ca4"));
  EXPECT_EQ(*strip_.span(), (ColumnSpan{column("Ca3-Ca4"), column("Ca9-Ca10")})) << "either way round";
  press(emptyLane("D4-D5"));
  release(emptyLane("D4-D5"));
  EXPECT_FALSE(strip_.span()) << "a click elsewhere lets it go";
}

TEST_F(StripTest, BendingASpanSpendsTheSameShareOfEveryJoint) {
  drag(emptyLane("C3-C4"), emptyLane("C12-C13"));
  const kinematics::Pose before = document_.pose();
  drag(emptyLane("C7-C8"), emptyLane("C7-C8") - QPointF(0, 25));
  const double turned = angle("C7-C8");
  EXPECT_GT(turned, 0);
  const auto width = [this](std::size_t c) {
    const range::MotionRange& band = document_.motionRange(strip_.columns().columns[c].joint, 0);
    return band.max - band.min;
  };
  const double share = turned / width(column("C7-C8"));
  for (std::size_t c = column("C3-C4"); c <= column("C12-C13"); ++c)
    EXPECT_NEAR(document_.pose()[strip_.columns().columns[c].joint].x(), share * width(c), 1e-9);
  EXPECT_NE(width(column("C3-C4")), width(column("C12-C13"))) << "else the test could not tell";
  EXPECT_EQ(angle("C2-C3"), 0);
  EXPECT_EQ(angle("C13-D1"), 0);
  EXPECT_EQ(document_.undoStack().count(), 1);
  EXPECT_TRUE(document_.undoStack().undoText().contains(QString::fromUtf8("C3–C13")));
  document_.undoStack().undo();
  EXPECT_EQ(document_.pose(), before);
}

TEST_F(StripTest, ClickingARegionsNameZoomsThereAndBack) {
  const auto click = [this](std::size_t region) {
    const StripLayout& l = strip_.stripLayout();
    const QPointF at(l.regionRect(strip_.columns().regions[region]).left() + 20, l.labels().center().y());
    press(at);
    release(at);
    settle();
  };
  const qreal narrow = strip_.stripLayout().slotWidth();
  click(0);
  EXPECT_EQ(strip_.zoomedRegion(), anatomy::Region::Cervical);
  EXPECT_GT(strip_.stripLayout().slotWidth(), 3 * narrow);
  EXPECT_EQ(strip_.stripLayout().visible().last, column("C13-D1"));
  drag(mark(kJoint), mark(kJoint) - QPointF(0, 10));
  EXPECT_GT(angle(kJoint), 0) << "marks are dragged there as well";
  click(0);
  EXPECT_EQ(strip_.zoomedRegion(), std::nullopt);
  EXPECT_DOUBLE_EQ(strip_.stripLayout().slotWidth(), narrow);
}

TEST_F(StripTest, DoubleClickOnAMarkPutsTheJointToNeutral) {
  setAngle(kJoint, 0.1);
  setAngle(kJoint, 0.05, 1);
  QTest::mouseDClick(&strip_, Qt::LeftButton, {}, mark(kJoint).toPoint());
  EXPECT_EQ(angle(kJoint), 0);
  EXPECT_EQ(angle(kJoint, 1), 0.05) << "the motion shown, not the others";
  document_.undoStack().undo();
  EXPECT_EQ(angle(kJoint), 0.1);
}

TEST_F(StripTest, HoveringSaysJointAngleAndVerdict) {
  setAngle(kJoint, 0.06);
  QSignalSpy hints(&strip_, &RangeStrip::hint);
  moveTo(mark(kJoint), Qt::NoButton);
  ASSERT_FALSE(hints.isEmpty());
  const QString words = hints.last().first().toString();
  const double most = qRadiansToDegrees(document_.motionRange(joint(kJoint), 0).max);
  EXPECT_TRUE(
      words.contains(QString::fromUtf8("C6-C7  dorsiflexion 3.4° (limit %1°) · within range").arg(most, 0, 'f', 1)))
      << words.toStdString();
  EXPECT_EQ(document_.hoveredBone(), document_.specimen()[joint(kJoint)].distal);
  EXPECT_EQ(strip_.cursor().shape(), Qt::SizeVerCursor) << "a drag here bends";
  moveTo(emptyLane(kJoint), Qt::NoButton);
  EXPECT_EQ(strip_.cursor().shape(), Qt::SizeHorCursor) << "a drag here chooses a span";
}

TEST_F(StripTest, ABandThatIsDraggedFollowsTheOtherAngles) {
  const double before = document_.motionRange(joint(kJoint), 0).max;
  QSignalSpy hints(&strip_, &RangeStrip::hint);
  setAngle(kJoint, 0.6 * document_.motionRange(joint(kJoint), 1).max, 1);
  const double after = document_.motionRange(joint(kJoint), 0).max;
  ASSERT_LT(after, 0.95 * before) << "overlap spent sideways is gone upwards";
  moveTo(mark(kJoint), Qt::NoButton);
  const QString said = hints.last().first().toString();
  EXPECT_TRUE(said.contains(QString::fromUtf8("(limit %1°)").arg(qRadiansToDegrees(after), 0, 'f', 1)))
      << said.toStdString();
}

}  // namespace
}  // namespace zyga::ui
