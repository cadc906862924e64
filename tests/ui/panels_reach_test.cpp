#include <gtest/gtest.h>

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/ui/document_sample.h"
#include "ui/commands/pose_edits.h"
#include "ui/panels/reach_panel.h"

namespace zyga::ui {
namespace {

class ReachPanelTest : public testing::Test {
 protected:
  void SetUp() override {
    document_.open(sampleProject(), {});
    panel_.resize(300, 300);
    panel_.show();
  }
  template <class Widget>
  Widget* part(const char* name) {
    return panel_.findChild<Widget*>(name);
  }
  template <class Widget>
  void click(const char* name) {
    QTest::mouseClick(part<Widget>(name), Qt::LeftButton, {}, QPoint(10, part<Widget>(name)->height() / 2));
  }
  JointIndex joint(const char* id) const { return document_.specimen().findJoint(id).value(); }

  Document document_;
  ReachSettings settings_;
  ReachPanel panel_{document_, settings_};
};

TEST_F(ReachPanelTest, ChoicesGoIntoTheSettingsAndBack) {
  QSignalSpy words(&panel_, &ReachPanel::shortChanged);
  click<QRadioButton>("reachBase");
  EXPECT_EQ(settings_.style(), kinematics::BendStyle::FromTheBase);
  click<QCheckBox>("reachPast");
  EXPECT_TRUE(settings_.pastRanges());
  click<QCheckBox>("reachGaze");
  EXPECT_TRUE(settings_.keepsGaze());
  EXPECT_EQ(words.last().first().toString(), "from the base, past the ranges, gaze kept");
  settings_.setStyle(kinematics::BendStyle::Even);
  settings_.setPastRanges(false);
  EXPECT_TRUE(part<QRadioButton>("reachEven")->isChecked());
  EXPECT_FALSE(part<QCheckBox>("reachPast")->isChecked());
  EXPECT_EQ(panel_.inShort(), "gaze kept");
}

TEST_F(ReachPanelTest, TheChosenJointIsLockedAndUnlocked) {
  EXPECT_FALSE(part<QPushButton>("reachLock")->isEnabled()) << "nothing is chosen";
  document_.selectJoint(joint("C6-C7"));
  EXPECT_EQ(part<QPushButton>("reachLock")->text(), "Lock C6-C7");
  click<QPushButton>("reachLock");
  EXPECT_TRUE(document_.isLocked(joint("C6-C7")));
  EXPECT_EQ(document_.undoStack().undoText(), "Lock C6-C7");
  EXPECT_EQ(part<QLabel>("reachLocked")->text(), "Locked: C6-C7");
  EXPECT_EQ(part<QPushButton>("reachLock")->text(), "Unlock C6-C7");
  lockOrUnlock(document_, joint("C3-C4"));
  EXPECT_EQ(document_.project().lockedJoints.size(), 2u);
  click<QPushButton>("reachUnlockAll");
  EXPECT_TRUE(document_.project().lockedJoints.empty());
  document_.undoStack().undo();
  EXPECT_EQ(part<QLabel>("reachLocked")->text(), "Locked: C6-C7, C3-C4");
}

TEST_F(ReachPanelTest, TheBendBeginsAtTheChosenJoint) {
  document_.selectJoint(joint("C8-C9"));
  click<QPushButton>("reachBegin");
  EXPECT_EQ(document_.bendBase(), joint("C8-C9"));
  EXPECT_EQ(part<QLabel>("reachBegins")->text(), "The bend begins at C8-C9");
  click<QPushButton>("reachBegin");
  EXPECT_EQ(document_.bendBase(), std::nullopt);
}

TEST(ReachPanelWithoutProject, StandsEmptyAndQuiet) {
  Document document;
  ReachSettings settings;
  ReachPanel panel(document, settings);
  EXPECT_FALSE(panel.findChild<QPushButton*>("reachLock")->isEnabled());
  EXPECT_FALSE(panel.findChild<QPushButton*>("reachBegin")->isEnabled());
}

}  // namespace
}  // namespace zyga::ui
