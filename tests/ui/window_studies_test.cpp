#include <QCheckBox>
#include <QComboBox>
#include <cmath>

#include "core/kinematics/bend.h"
#include "tests/ui/window_fixture.h"
#include "ui/panels/studies/studies_panel.h"

namespace zyga::ui {
namespace {

class WindowStudiesTest : public WindowTest {
 protected:
  StudiesPanel* studies() const { return part<StudiesPanel>("studiesPanel"); }
  bool waitFor(StudyKind kind) {
    return QTest::qWaitFor([&] { return studies()->job().result(kind) && !studies()->job().outOfDate(kind); },
                           kPatience);
  }
  /// How many of the viewport's pixels have changed.
  static int changed(const QImage& a, const QImage& b) {
    int count = 0;
    for (int y = 0; y < a.height(); ++y)
      for (int x = 0; x < a.width(); ++x) count += a.pixel(x, y) != b.pixel(x, y);
    return count;
  }
};

TEST_F(WindowStudiesTest, MenuUnfoldsThePanelAndRunsTheStudy) {
  action("Head height and neck slope")->trigger();
  ASSERT_TRUE(waitFor(StudyKind::Elevation));
  EXPECT_TRUE(studies()->isVisible());
  EXPECT_EQ(studies()->kind(), StudyKind::Elevation);
  EXPECT_TRUE(part<QLabel>("studyWords")->text().contains("Highest: snout"));
}

TEST_F(WindowStudiesTest, EnvelopeIsDrawnAroundTheAnimalAndTakenAwayAgain) {
  action("From the left")->trigger();
  ASSERT_TRUE(QTest::qWaitFor([&] { return std::abs(viewport()->camera().elevation) < 1e-9; }, kPatience));
  part<QCheckBox>("envelopeSpace")->setChecked(false);
  action("Feeding envelope (snout reach)")->trigger();
  ASSERT_TRUE(waitFor(StudyKind::Envelope));
  // Pictures without and with it, the panel as it is.
  QAction* draw = action("Draw the feeding envelope");
  ASSERT_TRUE(draw->isChecked());
  const QImage with = viewport()->grabPicture();
  draw->trigger();
  const QImage without = viewport()->grabPicture();
  EXPECT_GT(changed(with, without), 1000);
  draw->trigger();
  EXPECT_EQ(changed(with, viewport()->grabPicture()), 0);
}

TEST_F(WindowStudiesTest, AskingForTheDrawingMakesTheStudy) {
  part<QCheckBox>("envelopeSpace")->setChecked(false);
  QAction* draw = action("Draw the feeding envelope");
  EXPECT_FALSE(draw->isChecked()) << "nothing is drawn yet";
  draw->trigger();
  ASSERT_TRUE(waitFor(StudyKind::Envelope));
  EXPECT_TRUE(draw->isChecked());
  EXPECT_EQ(studies()->kind(), StudyKind::Envelope);
}

TEST_F(WindowStudiesTest, AChangedPoseLeavesTheAnswerBehind) {
  part<QCheckBox>("envelopeSpace")->setChecked(false);
  action("Feeding envelope (snout reach)")->trigger();
  ASSERT_TRUE(waitFor(StudyKind::Envelope));
  kinematics::Pose pose = document_->pose();
  pose[joint("C6-C7")][0] += 0.05;
  document_->changePose(pose, "bend");
  EXPECT_TRUE(studies()->job().outOfDate(StudyKind::Envelope));
  EXPECT_TRUE(part<QLabel>("studyStale")->isVisible());
}

}  // namespace
}  // namespace zyga::ui
