#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTest>
#include <QToolButton>

#include "core/kinematics/stand_readings.h"
#include "core/study/claims/claim_book.h"
#include "tests/ui/brought_forward.h"
#include "tests/ui/document_sample.h"
#include "tests/ui/patience.h"
#include "ui/commands/project_edits.h"
#include "ui/panels/claims/claims_model.h"
#include "ui/panels/claims/claims_panel.h"
#include "ui/panels/findings_model.h"
#include "ui/theme/unit_spin_box.h"

namespace zyga::ui {
namespace {

using study::Bound;
using study::Claim;
using study::ClaimKind;

class ClaimsPanelTest : public testing::Test {
 protected:
  void SetUp() override {
    document_.open(sampleProject(), {});
    panel_ = std::make_unique<ClaimsPanel>(document_);
    panel_->resize(330, 1000);
    panel_->show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(panel_.get()));
    ASSERT_TRUE(broughtForward(*panel_));
  }
  template <typename Widget>
  Widget* part(const char* name) const {
    return panel_->findChild<Widget*>(name);
  }
  QString words(const char* name) const { return part<QLabel>(name)->text(); }
  void click(const char* name) { QTest::mouseClick(part<QAbstractButton>(name), Qt::LeftButton); }
  const std::vector<Claim>& claims() const { return document_.project().claims; }
  void settle() {
    ASSERT_TRUE(QTest::qWaitFor([this] { return !panel_->busy(); }, kPatience));
  }
  int levelOf(int row) const {
    return part<QListView>("claimList")->model()->index(row, 0).data(FindingsModel::kLevelRole).toInt();
  }
  /// Types over what has the keyboard.
  void type(const char* text) {
    QTest::keyClicks(QApplication::focusWidget(), text);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
  }
  double snout() const { return kinematics::snoutHeight(document_.specimen(), document_.placement()).value(); }

  Document document_;
  std::unique_ptr<ClaimsPanel> panel_;
};

TEST_F(ClaimsPanelTest, EmptyItSaysWhatAClaimIs) {
  EXPECT_TRUE(part<QLabel>("noClaims")->isVisible());
  EXPECT_TRUE(words("noClaims").contains("minimum head height 8.50 m"));
  EXPECT_FALSE(part<QListView>("claimList")->isVisible());
  EXPECT_FALSE(part<QToolButton>("removeClaim")->isEnabled());
  EXPECT_EQ(panel_->inShort(), "");
}

TEST_F(ClaimsPanelTest, AClaimIsAddedTypedAndAnswered) {
  click("firstClaim");
  EXPECT_EQ(QApplication::focusWidget(), part<UnitSpinBox>("claimMetres"));
  type("29");
  ASSERT_EQ(claims().size(), 1u);
  EXPECT_EQ(claims()[0], (Claim{ClaimKind::HeadHeight, Bound::AtLeast, 29}));
  settle();
  EXPECT_TRUE(words("claimVerdict").startsWith("Out of range: the snout reaches "))
      << words("claimVerdict").toStdString();
  EXPECT_TRUE(words("claimStops").startsWith("Stopped by "));
  EXPECT_TRUE(words("claimNeeds").startsWith("No minimum overlap alone"));
  EXPECT_TRUE(words("claimNotes").contains("near their limit"));
  EXPECT_EQ(levelOf(0), static_cast<int>(range::Level::Beyond));
  EXPECT_EQ(panel_->inShort(), "0 of 1 within range");
  EXPECT_EQ(part<QPushButton>("claimPose")->text(), "Show the nearest pose");
}

// The answer stands before the samples are ready, and nothing waits for them.
TEST_F(ClaimsPanelTest, TheAnswerComesFirstAndItsProbabilityFollows) {
  addClaim(document_, {ClaimKind::HeadHeight, Bound::AtLeast, snout() + 0.2});
  QStringList seen;
  ASSERT_TRUE(QTest::qWaitFor(
      [&] {
        if (part<QLabel>("claimProbability")->isVisible() && !seen.contains(words("claimProbability")))
          seen << words("claimProbability");
        return !panel_->busy();
      },
      kPatience));
  ASSERT_EQ(seen.size(), 2) << seen.join('|').toStdString();
  EXPECT_EQ(seen.front(), "Probability: being worked out…");
  EXPECT_TRUE(seen.back().contains("within range in ")) << seen.back().toStdString();
  EXPECT_TRUE(seen.back().endsWith(" of 1000 samples.")) << seen.back().toStdString();
  EXPECT_TRUE(words("claimTally").startsWith("Facets of the joints that bend: "));
  EXPECT_TRUE(words("claimNotes").contains("Collisions between bones were not assessed."));
  EXPECT_TRUE(words("claimBasis").contains("Mastrandrea"));
  EXPECT_TRUE(words("claimVerdict").startsWith("Within range")) << "the deterministic answer stands beside it";
}

TEST_F(ClaimsPanelTest, WhatIsNotAnsweredHasNoProbability) {
  addClaim(document_, {ClaimKind::HeadHeight, Bound::AtLeast, 2});
  range::Assumptions assumptions = document_.assumptions();
  assumptions.minOverlap = 1;
  assumptions.neck.amount = 20;
  document_.changeAssumptions(assumptions, "strictest");
  settle();
  EXPECT_TRUE(words("claimVerdict").startsWith("Not answered: ")) << words("claimVerdict").toStdString();
  EXPECT_FALSE(part<QLabel>("claimProbability")->isVisible());
  EXPECT_EQ(levelOf(0), static_cast<int>(range::Level::NotJudged));
  EXPECT_FALSE(part<QPushButton>("stopClaims")->isVisible()) << "there is nothing left to test";
}

TEST_F(ClaimsPanelTest, TheAnswerFollowsTheAssumptions) {
  addClaim(document_, {ClaimKind::HeadHeight, Bound::AtLeast, 29});
  settle();
  const QString strict = words("claimVerdict");
  range::Assumptions assumptions = document_.assumptions();
  assumptions.minOverlap = 0.25;
  document_.changeAssumptions(assumptions, "looser");
  EXPECT_TRUE(panel_->busy());
  EXPECT_FALSE(part<QPushButton>("claimPose")->isEnabled()) << "the pose of another rule";
  settle();
  EXPECT_NE(words("claimVerdict"), strict);
  EXPECT_TRUE(part<QPushButton>("claimPose")->isEnabled());
  document_.undoStack().undo();
  settle();
  EXPECT_EQ(words("claimVerdict"), strict);
}

TEST_F(ClaimsPanelTest, ThePoseIsShownAsOneStep) {
  const double height = snout() + 0.3;
  addClaim(document_, {ClaimKind::HeadHeight, Bound::AtLeast, height});
  settle();
  const kinematics::Pose before = document_.pose();
  const int steps = document_.undoStack().count();
  click("claimPose");
  EXPECT_EQ(document_.undoStack().count(), steps + 1);
  EXPECT_TRUE(document_.undoStack().undoText().startsWith("Show “Minimum head height"));
  EXPECT_GE(snout(), height - 1e-6);
  settle();
  EXPECT_FALSE(part<QPushButton>("claimPose")->isEnabled()) << "it is shown";
  document_.undoStack().undo();
  EXPECT_EQ(document_.pose(), before);
}

TEST_F(ClaimsPanelTest, KindBoundAndSourceAreSteps) {
  addClaim(document_, study::usualClaim(ClaimKind::HeadHeight));
  auto* kind = part<QComboBox>("claimKind");
  kind->setFocus();
  QTest::keyClick(kind, Qt::Key_Down);
  EXPECT_EQ(claims()[0].kind, ClaimKind::NeckSlope);
  EXPECT_TRUE(part<UnitSpinBox>("claimDegrees")->isVisible());
  EXPECT_FALSE(part<UnitSpinBox>("claimMetres")->isVisible());
  auto* bound = part<QComboBox>("claimBound");
  bound->setFocus();
  QTest::keyClick(bound, Qt::Key_Down);
  EXPECT_EQ(claims()[0].bound, Bound::AtMost);
  auto* source = part<QLineEdit>("claimSource");
  source->setFocus();
  QTest::keyClicks(source, "an invented paper, 2020");
  QTest::keyClick(source, Qt::Key_Return);
  EXPECT_EQ(claims()[0].source, "an invented paper, 2020");
  settle();
  EXPECT_FALSE(panel_->busy());
  for (int step = 0; step < 3; ++step) document_.undoStack().undo();
  EXPECT_EQ(claims()[0], study::usualClaim(ClaimKind::HeadHeight));
  EXPECT_EQ(kind->currentIndex(), 0);
}

TEST_F(ClaimsPanelTest, AValueThatIsTurnedIsOneStep) {
  addClaim(document_, study::usualClaim(ClaimKind::HeadHeight));
  const int steps = document_.undoStack().count();
  auto* value = part<UnitSpinBox>("claimMetres");
  value->setFocus();
  for (int i = 0; i < 5; ++i) QTest::keyClick(value, Qt::Key_Up);
  EXPECT_NEAR(claims()[0].value, 6.5, 1e-9);
  EXPECT_EQ(document_.undoStack().count(), steps + 1);
}

TEST_F(ClaimsPanelTest, ClaimsAreRemovedByKey) {
  addClaim(document_, {ClaimKind::HeadHeight, Bound::AtLeast, 5});
  addClaim(document_, {ClaimKind::TailBaseLevel, Bound::AtLeast, 0.2});
  auto* list = part<QListView>("claimList");
  list->setFocus();
  list->setCurrentIndex(list->model()->index(0, 0));
  QTest::keyClick(list, Qt::Key_Delete);
  ASSERT_EQ(claims().size(), 1u);
  EXPECT_EQ(claims()[0].kind, ClaimKind::TailBaseLevel);
  QTest::keyClick(list, Qt::Key_Delete);
  EXPECT_TRUE(claims().empty());
  EXPECT_TRUE(part<QLabel>("noClaims")->isVisible());
  document_.undoStack().undo();
  document_.undoStack().undo();
  EXPECT_EQ(claims().size(), 2u);
  QTest::keyClick(panel_.get(), Qt::Key_Insert);
  EXPECT_EQ(claims().size(), 3u);
}

TEST_F(ClaimsPanelTest, AskingIsStoppedAndTakenUpAgain) {
  addClaim(document_, {ClaimKind::SnoutToGround, Bound::AtLeast, 2});
  EXPECT_TRUE(panel_->busy());
  click("stopClaims");
  EXPECT_FALSE(panel_->busy());
  EXPECT_EQ(words("claimsState"), "stopped");
  EXPECT_EQ(part<QPushButton>("stopClaims")->text(), "Test again");
  click("stopClaims");
  EXPECT_TRUE(panel_->busy());
  settle();
  EXPECT_FALSE(part<QPushButton>("stopClaims")->isVisible());
  EXPECT_FALSE(words("claimVerdict").isEmpty());
}

TEST_F(ClaimsPanelTest, ModelKeepsTheRulesOfItsKind) {
  ClaimAnswers answers(document_);
  ClaimsModel model(document_, answers);
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  addClaim(document_, {ClaimKind::HeadHeight, Bound::AtLeast, 5});
  addClaim(document_, {ClaimKind::HeadHeight, Bound::AtLeast, 5, 0, "again"});
  removeClaim(document_, 0);
  document_.undoStack().setIndex(0);
  document_.undoStack().setIndex(document_.undoStack().count());
  ASSERT_TRUE(QTest::qWaitFor([&] { return !answers.busy(); }, kPatience));
  EXPECT_TRUE(model.index(0).data(Qt::AccessibleTextRole).toString().contains("range"));
}

// What has been answered for a scenario is taken from the book that window, report and verbs share.
TEST_F(ClaimsPanelTest, AnAnswerIsSharedWithReportAndVerbs) {
  const Claim claim{ClaimKind::HeadHeight, Bound::AtLeast, 29};
  ClaimAnswers answers(document_);
  addClaim(document_, claim);
  ASSERT_TRUE(QTest::qWaitFor([&] { return !answers.busy(); }, kPatience));
  ASSERT_TRUE(answers.find(0) && answers.find(0)->answer);
  EXPECT_EQ(study::claimBook().find(document_.scenario(), claim), answers.find(0)->answer);
}

TEST(ClaimsPanelWithoutProject, CanDoNothing) {
  Document document;
  ClaimsPanel panel(document);
  EXPECT_FALSE(panel.findChild<QToolButton*>("addClaim")->isEnabled());
  panel.add();
  panel.remove();
  panel.showPose();
}

}  // namespace
}  // namespace zyga::ui
