#include <QToolButton>

#include "tests/ui/strip_fixture.h"

namespace zyga::ui {
namespace {

TEST_F(StripTest, ArrowsChooseJointsAlongTheColumn) {
  document_.selectJoint(joint("C6-C7"));
  key(Qt::Key_Right);
  EXPECT_EQ(document_.selectedJoint(), joint("C7-C8"));
  key(Qt::Key_Left);
  key(Qt::Key_Left);
  EXPECT_EQ(document_.selectedJoint(), joint("C5-C6"));
  key(Qt::Key_Home);
  key(Qt::Key_Left);
  EXPECT_EQ(document_.selectedJoint(), joint("skull-C1")) << "the snout's end holds";
  key(Qt::Key_End);
  key(Qt::Key_Right);
  EXPECT_EQ(document_.selectedJoint(), joint("Ca51-Ca52"));
}

TEST_F(StripTest, FirstArrowChoosesAJointWhereNoneWasChosen) {
  key(Qt::Key_Right);
  EXPECT_EQ(document_.selectedJoint(), joint("skull-C1"));
}

TEST_F(StripTest, UpAndDownNudgeAndAreOneStep) {
  document_.selectJoint(joint("C6-C7"));
  key(Qt::Key_Up);
  EXPECT_NEAR(qRadiansToDegrees(angle("C6-C7")), 0.5, 1e-9);
  key(Qt::Key_Up, Qt::ShiftModifier);
  EXPECT_NEAR(qRadiansToDegrees(angle("C6-C7")), 5.5, 1e-9);
  key(Qt::Key_Down);
  EXPECT_NEAR(qRadiansToDegrees(angle("C6-C7")), 5.0, 1e-9);
  EXPECT_EQ(document_.undoStack().count(), 1);
  key(Qt::Key_Right);
  key(Qt::Key_Down);
  EXPECT_EQ(document_.undoStack().count(), 2) << "another joint is another step";
  document_.undoStack().undo();
  document_.undoStack().undo();
  EXPECT_EQ(angle("C6-C7"), 0);
}

TEST_F(StripTest, ShiftedArrowsChooseASpanThatKeysBend) {
  document_.selectJoint(joint("C6-C7"));
  key(Qt::Key_Right, Qt::ShiftModifier);
  key(Qt::Key_Right, Qt::ShiftModifier);
  ASSERT_TRUE(strip_.span());
  EXPECT_EQ(*strip_.span(), (ColumnSpan{column("C6-C7"), column("C8-C9")}));
  key(Qt::Key_Up);
  for (const char* id : {"C6-C7", "C7-C8", "C8-C9"}) EXPECT_GT(angle(id), 0) << id;
  EXPECT_EQ(angle("C9-C10"), 0);
}

TEST_F(StripTest, EscapeLetsGoOfTheSpanThenOfTheZoom) {
  strip_.zoomTo(anatomy::Region::Caudal);
  strip_.setSpan(ColumnSpan{30, 40});
  key(Qt::Key_Escape);
  EXPECT_FALSE(strip_.span());
  EXPECT_EQ(strip_.zoomedRegion(), anatomy::Region::Caudal);
  key(Qt::Key_Escape);
  EXPECT_EQ(strip_.zoomedRegion(), std::nullopt);
}

TEST_F(StripTest, ReturnZoomsToTheChosenJointsRegion) {
  document_.selectJoint(joint("D4-D5"));
  key(Qt::Key_Return);
  EXPECT_EQ(strip_.zoomedRegion(), anatomy::Region::Dorsal);
  key(Qt::Key_Return);
  EXPECT_EQ(strip_.zoomedRegion(), std::nullopt);
}

TEST_F(StripTest, ZeroPutsTheSpanToNeutral) {
  setAngle("C6-C7", 0.1);
  setAngle("C7-C8", 0.1);
  document_.selectJoint(joint("C6-C7"));
  strip_.setSpan(ColumnSpan{column("C6-C7"), column("C7-C8")});
  key(Qt::Key_0);
  EXPECT_EQ(angle("C6-C7"), 0);
  EXPECT_EQ(angle("C7-C8"), 0);
}

TEST_F(StripTest, TheChoiceOfMotionDecidesWhatIsBent) {
  QToolButton* lateral = nullptr;
  for (auto* button : strip_.findChildren<QToolButton*>())
    if (button->text() == "Left / right") lateral = button;
  ASSERT_TRUE(lateral);
  QTest::mouseClick(lateral, Qt::LeftButton);
  EXPECT_EQ(strip_.motion(), 1);
  settle();
  document_.selectJoint(joint("C6-C7"));
  key(Qt::Key_Up);
  EXPECT_NEAR(qRadiansToDegrees(angle("C6-C7", 1)), 0.5, 1e-9);
  EXPECT_EQ(angle("C6-C7", 0), 0);
  key(Qt::Key_3);
  EXPECT_EQ(strip_.motion(), 2);
}

TEST_F(StripTest, TellsAssistiveTechnologyWhatIsChosen) {
  EXPECT_FALSE(strip_.accessibleName().isEmpty());
  document_.selectJoint(joint("C6-C7"));
  key(Qt::Key_Up);
  EXPECT_TRUE(strip_.accessibleDescription().startsWith(QString::fromUtf8("C6-C7  dorsiflexion 0.5° (limit ")))
      << strip_.accessibleDescription().toStdString();
}

}  // namespace
}  // namespace zyga::ui
