#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDragEnterEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QSettings>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <QUrl>
#include <fstream>

#include "tests/ui/document_sample.h"
#include "ui/commands/project_edits.h"
#include "ui/panels/ground/balance_panel.h"
#include "ui/panels/ground/ground_panel.h"
#include "ui/panels/ground/prints_model.h"
#include "ui/panels/ground/trackway_panel.h"
#include "ui/theme/unit_spin_box.h"

namespace zyga::ui {
namespace {

// Xing et al. 2016, Swiss J. Geosci., table 1.
constexpr const char* kTracks =
    "foot,pace_cm,next_pace_cm,stride_cm,length_cm\n"
    "LP1,62,66,106,33\nRP1,66,72,104,35\nLP2,72,58.5,102.5,32.5\nRP2,58.5,69,100,30\n";

class GroundPanelTest : public testing::Test {
 protected:
  void SetUp() override {
    QSettings().clear();
    document_.open(sampleProject(), {});
    panel_ = std::make_unique<GroundPanel>(document_);
    panel_->resize(330, 1100);
    panel_->show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(panel_.get()));
  }
  template <typename Widget>
  Widget* part(const char* name) const {
    return panel_->findChild<Widget*>(name);
  }
  QString words(const char* name) const { return part<QLabel>(name)->text(); }
  void click(const char* name) { QTest::mouseClick(part<QToolButton>(name), Qt::LeftButton); }
  QAbstractItemModel* prints() const { return part<QTableView>("prints")->model(); }
  const study::Trackway& trackway() const { return document_.project().trackway; }
  void drop(const char* text) {
    const std::string file = folder_.path().toStdString() + "/tracks.csv";
    std::ofstream(file) << text;
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(QString::fromStdString(file))});
    QDragEnterEvent enter({20, 20}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(panel_->trackway(), &enter);
    ASSERT_TRUE(enter.isAccepted());
    QDropEvent fall(QPointF(20, 20), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(panel_->trackway(), &fall);
  }
  /// Types into a cell as a person does: the editor opens on a key, Enter closes it.
  void type(int row, int column, const char* text) {
    auto* table = part<QTableView>("prints");
    table->setFocus();
    table->setCurrentIndex(prints()->index(row, column));
    table->edit(table->currentIndex());
    auto* editor = table->viewport()->findChild<QLineEdit*>();
    ASSERT_NE(editor, nullptr);
    QTest::keyClick(editor, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClick(editor, Qt::Key_Delete);
    QTest::keyClicks(editor, text);
    QTest::keyClick(editor, Qt::Key_Return);
    // The editor goes with the next round of events; the one after must not find it.
    QCoreApplication::processEvents();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  }

  QTemporaryDir folder_;
  Document document_;
  std::unique_ptr<GroundPanel> panel_;
};

TEST_F(GroundPanelTest, TellsMassAsARangeAndTheBalance) {
  EXPECT_TRUE(words("massByVolume").contains(" to ")) << words("massByVolume").toStdString();
  EXPECT_TRUE(words("massByCircumference").contains("inferred"));
  EXPECT_TRUE(words("balanceSentence").contains("over the 4 planted feet")) << words("balanceSentence").toStdString();
  EXPECT_TRUE(words("foreShare").contains("%"));
  EXPECT_TRUE(panel_->inShort().startsWith("balanced, "));
}

TEST_F(GroundPanelTest, FollowsThePoseAndSaysWhenItTips) {
  kinematics::Pose pose = document_.pose();
  pose.X_WRoot.translation().z() += 0.3;
  document_.previewPose(pose);
  EXPECT_TRUE(words("balanceSentence").contains("Nothing touches the ground"));
  EXPECT_EQ(panel_->inShort(), "off the ground");
  document_.cancelPreview();
  EXPECT_TRUE(panel_->inShort().startsWith("balanced, "));
}

TEST_F(GroundPanelTest, TheFleshOfAPartIsTypedAndUndone) {
  const QString before = words("massByVolume"), shift = words("tailFlesh");
  EXPECT_TRUE(shift.contains("farther back"));
  auto* field = part<UnitSpinBox>("hullFactorTail");
  EXPECT_EQ(field->value(), study::kHullFactor);
  field->setFocus();
  field->selectAll();
  QTest::keyClicks(field, "2");
  QTest::keyClick(field, Qt::Key_Return);
  EXPECT_EQ(document_.project().densities.hullFactors[3], 2);
  EXPECT_NE(words("massByVolume"), before);
  EXPECT_NE(words("tailFlesh"), shift);
  document_.undoStack().undo();
  EXPECT_EQ(words("massByVolume"), before);
  EXPECT_TRUE(words("tailLoad").isEmpty()) << "no tail on the ground";
}

TEST_F(GroundPanelTest, ADensityIsTypedAndUndone) {
  const QString before = words("massByVolume");
  auto* field = part<UnitSpinBox>("densityTrunk");
  field->setFocus();
  field->selectAll();
  QTest::keyClicks(field, "1000");
  QTest::keyClick(field, Qt::Key_Return);
  EXPECT_EQ(document_.project().densities[study::BodyPart::Trunk], 1000);
  EXPECT_NE(words("massByVolume"), before);
  click("usualDensities");
  EXPECT_EQ(words("massByVolume"), before);
  document_.undoStack().undo();
  EXPECT_EQ(field->value(), 1000);
  document_.undoStack().undo();
  EXPECT_EQ(field->value(), 800);
  EXPECT_EQ(words("massByVolume"), before);
}

TEST_F(GroundPanelTest, PrintsAreTypedInACalmTable) {
  EXPECT_TRUE(part<QLabel>("noPrints")->isVisible());
  EXPECT_FALSE(part<QTableView>("prints")->isVisible());
  click("addPrint");
  type(0, PrintsModel::kPace, "62");
  type(0, PrintsModel::kNextPace, "66");
  type(0, PrintsModel::kStride, "106");
  type(0, PrintsModel::kLength, "33,0");
  click("addPrint");
  ASSERT_EQ(trackway().prints.size(), 2u);
  EXPECT_EQ(trackway().prints[1].foot, "RP1");
  EXPECT_NEAR(trackway().prints[0].length.value(), 0.33, 1e-12);
  EXPECT_FALSE(part<QLabel>("noPrints")->isVisible());
  EXPECT_EQ(words("trackHip"), "1.32\u00A0m");
  EXPECT_EQ(words("trackAngulation"), "112°");
  EXPECT_TRUE(words("trackSpeed").contains("km/h"));
  EXPECT_TRUE(words("speedCaution").contains("soft ground are too high"));
  type(0, PrintsModel::kLength, "");
  type(1, PrintsModel::kLength, "");
  EXPECT_FALSE(trackway().prints[0].length);
  EXPECT_EQ(words("trackHip"), "unknown");
  EXPECT_EQ(words("trackSpeed"), "unknown");
}

TEST_F(GroundPanelTest, WhatIsNoDistanceIsRefusedInWords) {
  click("addPrint");
  type(0, PrintsModel::kPace, "long");
  EXPECT_FALSE(trackway().prints[0].pace);
  EXPECT_TRUE(words("trackwayTold").contains("“long” is no distance in cm"));
}

TEST_F(GroundPanelTest, ATableIsDroppedAsOneStepUnderTheFeet) {
  drop(kTracks);
  EXPECT_EQ(trackway().prints.size(), 4u);
  EXPECT_EQ(prints()->rowCount(), 4);
  EXPECT_EQ(words("trackHip"), "1.20–1.40\u00A0m");
  EXPECT_EQ(words("trackAngulation"), "98–112°");
  EXPECT_TRUE(words("trackFit").contains("Left hind foot"));
  EXPECT_TRUE(words("trackFit").contains("Left fore foot: no print"));
  document_.undoStack().undo();
  EXPECT_TRUE(trackway().prints.empty());
  document_.undoStack().redo();
  EXPECT_EQ(trackway().prints.size(), 4u);
}

TEST_F(GroundPanelTest, ABrokenTableChangesNothingAndIsTold) {
  drop("foot,pace_cm\nLP1,abc\n");
  EXPECT_TRUE(trackway().prints.empty());
  EXPECT_EQ(document_.undoStack().count(), 0);
  EXPECT_TRUE(words("trackwayTold").contains("tracks.csv:2, column 2: 'abc' is not a number"));
}

TEST_F(GroundPanelTest, AnotherRuleGivesAnotherHip) {
  drop(kTracks);
  auto* rule = part<QComboBox>("hipRule");
  rule->setFocus();
  QTest::keyClick(rule, Qt::Key_Down);
  EXPECT_EQ(trackway().hipMultiplier, 4.586);
  EXPECT_EQ(words("trackHip"), "1.38–1.61\u00A0m");
  document_.undoStack().undo();
  EXPECT_EQ(rule->currentIndex(), 0);
}

TEST_F(GroundPanelTest, TheFeetAreBroughtOntoThePrints) {
  drop(kTracks);
  const auto before = document_.pose();
  click("stepOn");
  EXPECT_FALSE(document_.pose() == before);
  const auto fits =
      study::fitFeet(study::feetOf(document_.specimen(), document_.placement()), study::layOut(trackway()).prints);
  for (const auto& fit : fits) {
    if (!fit.print) continue;
    EXPECT_LT(fit.distance(), 0.01) << toText(fit.foot);
  }
  document_.undoStack().undo();
  EXPECT_EQ(document_.pose(), before);
}

TEST_F(GroundPanelTest, RowsAreRemovedAndTheTrackwayCleared) {
  drop(kTracks);
  part<QTableView>("prints")->setCurrentIndex(prints()->index(1, 0));
  click("removePrint");
  ASSERT_EQ(trackway().prints.size(), 3u);
  EXPECT_EQ(trackway().prints[1].foot, "LP2");
  click("clearTrackway");
  EXPECT_TRUE(trackway().prints.empty());
  document_.undoStack().undo();
  document_.undoStack().undo();
  EXPECT_EQ(trackway().prints.size(), 4u);
}

TEST_F(GroundPanelTest, WhatIsDrawnFollowsTheBoxesAndThePanel) {
  EXPECT_TRUE(panel_->shown().balance);
  EXPECT_TRUE(panel_->shown().trackway);
  part<QCheckBox>("balanceDrawn")->click();
  EXPECT_FALSE(panel_->shown().balance);
  part<QCheckBox>("balanceDrawn")->click();
  panel_->hide();
  EXPECT_FALSE(panel_->shown().balance);
  EXPECT_TRUE(panel_->shown().trackway);
}

TEST_F(GroundPanelTest, ModelKeepsTheRulesOfItsKind) {
  PrintsModel model(document_);
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  model.addPrint();
  model.addPrint();
  model.setData(model.index(0, PrintsModel::kPace), "50");
  model.removePrint(0);
  document_.undoStack().setIndex(0);
  document_.undoStack().setIndex(document_.undoStack().count());
  model.removePrint(7);
}

TEST(GroundPanelWithoutProject, SaysWhatToDo) {
  Document document;
  GroundPanel panel(document);
  EXPECT_TRUE(panel.findChild<QLabel*>("balanceSentence")->text().contains("Open an animal"));
  EXPECT_FALSE(panel.findChild<QToolButton*>("addPrint")->isEnabled());
  EXPECT_EQ(panel.inShort(), "");
}

}  // namespace
}  // namespace zyga::ui
