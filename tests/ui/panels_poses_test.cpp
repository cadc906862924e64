#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QLineEdit>
#include <QListView>
#include <QTest>
#include <QToolButton>

#include "tests/ui/document_sample.h"
#include "tests/ui/patience.h"
#include "ui/commands/pose_edits.h"
#include "ui/panels/poses_model.h"
#include "ui/panels/poses_panel.h"

namespace zyga::ui {
namespace {

class PosesTest : public testing::Test {
 protected:
  void SetUp() override {
    files::Project project = sampleProject();
    project.poses.clear();
    document_.open(std::move(project), {});
    panel_.resize(300, 300);
    panel_.show();
  }
  QToolButton* button(const QString& tip) {
    for (auto* candidate : panel_.findChildren<QToolButton*>())
      if (candidate->toolTip().startsWith(tip)) return candidate;
    return nullptr;
  }
  void click(const QString& tip) { QTest::mouseClick(button(tip), Qt::LeftButton); }
  QListView* list() { return panel_.findChild<QListView*>("poseList"); }
  void bend() {
    kinematics::Pose pose = document_.pose();
    pose[document_.specimen().findJoint("C6-C7").value()].x() += 0.1;
    document_.changePose(pose, "bend");
  }

  Document document_;
  PosesPanel panel_{document_};
};

TEST_F(PosesTest, ModelKeepsTheRulesOfItsKind) {
  PosesModel model(document_);
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  addNamedPose(document_, "One");
  addNamedPose(document_, "Two");
  renameNamedPose(document_, 0, "First");
  deleteNamedPose(document_, 0);
  document_.undoStack().setIndex(0);
  document_.undoStack().setIndex(document_.undoStack().count());
}

TEST_F(PosesTest, KeepingAPoseLetsItsNameBeTyped) {
  click("Keep the present pose");
  auto* editor = list()->findChild<QLineEdit*>();
  ASSERT_NE(editor, nullptr);
  QTest::keyClicks(editor, "Drinking");
  QTest::keyClick(editor, Qt::Key_Return);
  ASSERT_EQ(document_.project().poses.size(), 1u);
  EXPECT_TRUE(QTest::qWaitFor([&] { return document_.project().poses[0].name == "Drinking"; }, kPatience));
  EXPECT_EQ(list()->model()->index(0, 0).data().toString(), "Drinking");
}

TEST_F(PosesTest, TakingAPoseGoesBackToIt) {
  addNamedPose(document_, "Start");
  const kinematics::Pose start = document_.pose();
  bend();
  list()->setCurrentIndex(list()->model()->index(0, 0));
  click("Take this pose");
  EXPECT_EQ(document_.pose(), start);
  EXPECT_FALSE(button("Take this pose")->isEnabled()) << "it is the present pose already";
  document_.undoStack().undo();
  EXPECT_FALSE(document_.pose() == start);
}

TEST_F(PosesTest, UpdatingPutsThePresentPoseInItsPlace) {
  addNamedPose(document_, "Start");
  bend();
  list()->setCurrentIndex(list()->model()->index(0, 0));
  click("Put the present pose");
  EXPECT_EQ(document_.project().poses[0].pose, document_.pose());
}

TEST_F(PosesTest, ComparingTogglesTheGhost) {
  addNamedPose(document_, "Start");
  list()->setCurrentIndex(list()->model()->index(0, 0));
  click("Show as a ghost");
  EXPECT_EQ(document_.comparedPose(), 0u);
  click("Show as a ghost");
  EXPECT_EQ(document_.comparedPose(), std::nullopt);
}

TEST_F(PosesTest, DeletingCanBeUndone) {
  addNamedPose(document_, "Start");
  list()->setCurrentIndex(list()->model()->index(0, 0));
  click("Delete");
  EXPECT_TRUE(document_.project().poses.empty());
  EXPECT_EQ(list()->model()->rowCount(), 0);
  document_.undoStack().undo();
  EXPECT_EQ(list()->model()->rowCount(), 1);
}

}  // namespace
}  // namespace zyga::ui
