#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QClipboard>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>
#include <fstream>
#include <sstream>

#include "core/kinematics/standing.h"
#include "tests/ui/brought_forward.h"
#include "ui/commands/pose_edits.h"
#include "ui/commands/project_edits.h"
#include "ui/commands/table_edits.h"
#include "ui/dialogs/measurement_dialog.h"
#include "ui/dialogs/measurement_model.h"
#include "ui/dialogs/measurement_view.h"
#include "ui/theme/theme.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using anatomy::Evidence;
using anatomy::Measure;
using testing::HasSubstr;

/// The table of the first sample in its window, under a person's hands.
class MeasurementTableTest : public testing::Test {
 protected:
  void SetUp() override {
    ThemeSwitch::instance().apply(*qApp, Scheme::Light);
    std::ostringstream text;
    text << std::ifstream(std::string(ZYGAPOSE_SOURCE_DIR) + "/samples/high_browser.csv").rdbuf();
    document_.open(files::projectFromTable(anatomy::readMeasurementTable(text.str(), "high.csv").table), {});
    dialog_ = std::make_unique<MeasurementDialog>(document_);
    dialog_->show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(dialog_.get()));
    ASSERT_TRUE(broughtForward(*dialog_));
  }

  template <typename Widget>
  Widget* part(const char* name) const {
    return dialog_->findChild<Widget*>(name);
  }
  QTableView* view() const { return part<QTableView>("measurementTable"); }
  /// The field of the cell that is being edited.
  QLineEdit* field() const {
    for (auto* each : view()->findChildren<QLineEdit*>("measurementField"))
      if (each->isVisible()) return each;
    return nullptr;
  }
  QString refusal() const {
    const auto* label = part<QLabel>("tableRefusal");
    return label->isVisible() ? label->text() : QString();
  }
  static anatomy::BoneName named(const char* id) { return *anatomy::parseBoneId(id); }
  const anatomy::TableRow& row(const char* id) const { return *document_.project().table.find(named(id)); }
  const anatomy::Cell& cell(const char* id, Measure measure) const { return row(id).measures[measure]; }
  JointIndex joint(const char* id) const { return document_.specimen().findJoint(id).value(); }
  BoneIndex bone(const char* id) const { return document_.specimen().findBone(id).value(); }
  int steps() { return document_.undoStack().index(); }

  /// A click on a cell.
  QModelIndex click(const char* id, Measure measure) {
    dialog_->jumpTo(named(id), measure);
    const QModelIndex index = view()->currentIndex();
    QTest::mouseClick(view()->viewport(), Qt::LeftButton, {}, view()->visualRect(index).center());
    EXPECT_EQ(view()->currentIndex(), index);
    return index;
  }
  /// Types into what has the focus, which the first letter may move.
  void type(const QString& text) {
    for (const QChar letter : text) QTest::keyClick(QApplication::focusWidget(), letter.toLatin1());
  }
  /// A key to what has the focus; fields close once the events that follow have run.
  void press(Qt::Key key) {
    QTest::keyClick(QApplication::focusWidget(), key);
    QCoreApplication::processEvents();
  }
  void enter() { press(Qt::Key_Return); }
  void fill(const char* id, Measure measure, const QString& text) {
    click(id, measure);
    type(text);
    enter();
  }

  Document document_;
  std::unique_ptr<MeasurementDialog> dialog_;
};

TEST_F(MeasurementTableTest, TheModelKeepsTheRulesOfItsKind) {
  MeasurementModel model(document_);
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  changeCells(document_, {{named("C4"), Measure::CotyleHeight, 0.11}}, "a");
  anatomy::RegionCounts counts = document_.project().table.counts;
  ++counts.caudal;
  EXPECT_FALSE(changeCounts(document_, counts, "b").any());
  document_.undoStack().undo();
}

TEST_F(MeasurementTableTest, ATypedValueIsMeasuredAndOneStep) {
  const auto before = document_.project().table;
  const double c10 = cell("C10", Measure::CotyleHeight).value;
  ASSERT_FALSE(cell("C4", Measure::CotyleHeight).measured());
  fill("C4", Measure::CotyleHeight, "118");
  EXPECT_EQ(field(), nullptr) << "the field is closed";
  EXPECT_TRUE(cell("C4", Measure::CotyleHeight).measured());
  EXPECT_NEAR(cell("C4", Measure::CotyleHeight).value, 0.118, 1e-12);
  EXPECT_EQ(cell("C10", Measure::CotyleHeight).value, c10) << "not beside it";
  EXPECT_GT(cell("C4", Measure::FacetHeight).value, 0);
  EXPECT_NEAR(document_.specimen()[bone("C4")].measures.value(Measure::CotyleHeight), 0.118, 1e-12)
      << "the animal is built anew";
  EXPECT_EQ(steps(), 1);
  QTest::keyClick(dialog_.get(), Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(document_.project().table, before);
  EXPECT_FALSE(document_.specimen()[bone("C4")].measures[Measure::CotyleHeight].measured());
  QTest::keyClick(dialog_.get(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_NEAR(cell("C4", Measure::CotyleHeight).value, 0.118, 1e-12);
}

TEST_F(MeasurementTableTest, EachCellIsAStepOfItsOwnAndUnitsMayBeTyped) {
  fill("C4", Measure::CotyleHeight, "10.9 cm");
  fill("C4", Measure::CotyleWidth, "0,113 m");
  fill("C4", Measure::Wedge, "-2 deg");
  EXPECT_NEAR(cell("C4", Measure::CotyleHeight).value, 0.109, 1e-12);
  EXPECT_NEAR(cell("C4", Measure::CotyleWidth).value, 0.113, 1e-12);
  EXPECT_NEAR(cell("C4", Measure::Wedge).value, -2 * 3.14159265358979 / 180, 1e-9);
  EXPECT_EQ(steps(), 3);
  document_.undoStack().undo();
  EXPECT_FALSE(cell("C4", Measure::Wedge).measured());
  EXPECT_TRUE(cell("C4", Measure::CotyleWidth).measured());
}

TEST_F(MeasurementTableTest, AnInferredCellThatIsEnteredAndLeftStaysInferred) {
  click("C4", Measure::CotyleHeight);
  QTest::keyClick(view(), Qt::Key_F2);
  ASSERT_NE(field(), nullptr);
  EXPECT_EQ(field()->text(), "");
  EXPECT_FALSE(field()->placeholderText().isEmpty()) << "what is inferred shows through";
  enter();
  EXPECT_EQ(steps(), 0);
  EXPECT_FALSE(cell("C4", Measure::CotyleHeight).measured());
}

TEST_F(MeasurementTableTest, MeasuredAndInferredCellsLookDifferent) {
  const QModelIndex measured = click("C5", Measure::Length), inferred = click("C4", Measure::CotyleHeight);
  EXPECT_EQ(measured.data(Qt::ForegroundRole).value<QColor>(), theme().text);
  EXPECT_EQ(inferred.data(Qt::ForegroundRole).value<QColor>(), theme().muted);
  EXPECT_EQ(measured.data().toString(), "360.0");
  // As painted, with neither of them chosen.
  view()->setCurrentIndex({});
  const auto darkest = [this](const QModelIndex& index) {
    const QImage picture = view()->viewport()->grab(view()->visualRect(index).adjusted(2, 2, -2, -2)).toImage();
    int least = 255;
    for (int y = 0; y < picture.height(); ++y)
      for (int x = 0; x < picture.width(); ++x) least = std::min(least, picture.pixelColor(x, y).lightness());
    return least;
  };
  EXPECT_LT(darkest(measured), theme().muted.lightness() - 20);
  EXPECT_GE(darkest(inferred), theme().muted.lightness() - 2);
  EXPECT_LT(darkest(inferred), 200) << "to be read all the same";
  EXPECT_TRUE(inferred.data(Qt::ToolTipRole).toString().contains("between C3 and C5"))
      << inferred.data(Qt::ToolTipRole).toString().toStdString();
}

TEST_F(MeasurementTableTest, DeleteMakesCellsInferredAgainInOneStep) {
  const QModelIndex length = click("C12", Measure::CotyleHeight);
  QTest::keyClick(view(), Qt::Key_Right, Qt::ShiftModifier);
  ASSERT_EQ(view()->selectionModel()->selectedIndexes().size(), 2);
  QTest::keyClick(view(), Qt::Key_Delete);
  EXPECT_FALSE(cell("C12", Measure::CotyleHeight).measured());
  EXPECT_FALSE(cell("C12", Measure::CotyleWidth).measured());
  EXPECT_TRUE(cell("C12", Measure::CotyleHeight).known()) << "inferred, not lost";
  EXPECT_EQ(steps(), 1);
  EXPECT_EQ(view()->currentIndex().row(), length.row()) << "the place in the table stays";
  document_.undoStack().undo();
  EXPECT_TRUE(cell("C12", Measure::CotyleWidth).measured());
}

TEST_F(MeasurementTableTest, ABoneOfWhichNothingIsMeasuredIsNotPreserved) {
  ASSERT_EQ(row("rib.C5.L").evidence, Evidence::Found);
  ASSERT_EQ(row("rib.C5.R").evidence, Evidence::Mirrored);
  click("rib.C5.L", Measure::Length);
  QTest::keyClick(view(), Qt::Key_Delete);
  EXPECT_EQ(row("rib.C5.L").evidence, Evidence::Inferred);
  EXPECT_EQ(row("rib.C5.R").evidence, Evidence::Inferred) << "mirrored from nothing";
  fill("rib.C5.R", Measure::Length, "612");
  EXPECT_EQ(row("rib.C5.R").evidence, Evidence::Found);
  EXPECT_EQ(row("rib.C5.L").evidence, Evidence::Mirrored);
  EXPECT_NEAR(cell("rib.C5.L", Measure::Length).value, 0.612, 1e-9);
}

TEST_F(MeasurementTableTest, WhatCannotBeStaysInItsFieldWithTheReason) {
  const auto before = document_.project().table;
  fill("C4", Measure::CotyleHeight, "abc");
  ASSERT_NE(field(), nullptr) << "still open";
  EXPECT_EQ(field()->text(), "abc");
  EXPECT_THAT(refusal().toStdString(), HasSubstr("'abc' is not a number"));
  EXPECT_EQ(document_.project().table, before);
  type("30000");  // over what was chosen
  EXPECT_EQ(refusal(), "") << "mended or not is seen when it is entered";
  enter();
  EXPECT_THAT(refusal().toStdString(), HasSubstr("more than 20 m"));
  press(Qt::Key_Escape);
  EXPECT_EQ(refusal(), "");
  EXPECT_EQ(field(), nullptr);
  EXPECT_EQ(document_.project().table, before);
  EXPECT_EQ(steps(), 0);
  // With the other cells of its row: 30 times as long as high.
  fill("C5", Measure::Length, "3600");
  EXPECT_THAT(refusal().toStdString(), HasSubstr("30.25 times as long as high"));
  press(Qt::Key_Escape);
  // A field that is left with a fault in it is given up, and that is told.
  click("C4", Measure::CotyleHeight);
  type("-4");
  QTest::mouseClick(view()->viewport(), Qt::LeftButton, {}, view()->visualRect(view()->model()->index(5, 1)).center());
  EXPECT_THAT(refusal().toStdString(), HasSubstr("C4, cotyle height: -4 mm is not a length"));
  EXPECT_EQ(document_.project().table, before);
}

TEST_F(MeasurementTableTest, ARemarkIsShownAtItsCellAndTheListLeadsThere) {
  auto* list = part<QListWidget>("tableRemarks");
  EXPECT_FALSE(list->isVisible());
  fill("D5", Measure::Length, "2600");
  EXPECT_EQ(refusal(), "") << "hard to believe is not refused";
  ASSERT_TRUE(list->isVisible());
  ASSERT_EQ(list->count(), 1);
  EXPECT_THAT(list->item(0)->text().toStdString(),
              testing::AllOf(HasSubstr("D5, length: 2600.0"), HasSubstr("26"), HasSubstr("10 times too large?")));
  auto* parts = part<QComboBox>("tablePart");
  parts->setCurrentIndex(parts->findData(static_cast<int>(anatomy::Region::Skull)));
  part<QLineEdit>("tableSearch")->setText("jaw");
  EXPECT_EQ(view()->model()->rowCount(), 1);
  QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualItemRect(list->item(0)).center());
  const QModelIndex there = view()->currentIndex();
  EXPECT_EQ(view()->model()->headerData(there.row(), Qt::Vertical).toString(), "D5");
  EXPECT_FALSE(there.data(MeasurementModel::kRemarkRole).toString().isEmpty());
  EXPECT_THAT(there.data(Qt::ToolTipRole).toString().toStdString(), HasSubstr("10 times too large?"));
  EXPECT_TRUE(view()->viewport()->rect().contains(view()->visualRect(there).center()));
  // The corner is painted.
  const QImage picture = view()->viewport()->grab(view()->visualRect(there)).toImage();
  EXPECT_EQ(picture.pixelColor(2, 2), theme().beyond);
  document_.undoStack().undo();
  EXPECT_EQ(list->count(), 0);
}

TEST_F(MeasurementTableTest, CountsKeepPosesLocksAndNotesWhereTheBonesAre) {
  kinematics::Pose pose = document_.pose();
  pose[joint("C6-C7")].x() = 0.08;
  pose[joint("hip.L")].x() = 0.05;
  document_.changePose(pose, "Bend");
  document_.setLockedJoints({joint("C3-C4"), joint("knee.L")});
  addNote(document_, bone("Ca52"), {0, 0, 0});
  addNote(document_, bone("C7"), {0, 0, 0});
  document_.selectBone(bone("femur.L"));
  const int before = steps();
  auto* caudals = part<QSpinBox>("tableCount4");
  ASSERT_EQ(caudals->value(), 52);
  // The last is measured: refused, and the count is as it was.
  caudals->setFocus();
  QTest::keyClick(caudals, Qt::Key_Down);
  EXPECT_THAT(refusal().toStdString(), HasSubstr("Ca52 is measured and would be gone; clear its row first"));
  EXPECT_EQ(caudals->value(), 52);
  EXPECT_EQ(steps(), before);
  changeCells(document_, {{named("Ca52"), Measure::Length, std::nullopt}}, "clear");
  QTest::keyClick(caudals, Qt::Key_Down);
  EXPECT_EQ(document_.project().table.counts.caudal, 51);
  EXPECT_FALSE(document_.specimen().findBone("Ca52").has_value());
  EXPECT_NEAR(document_.pose()[joint("C6-C7")].x(), 0.08, 1e-12);
  EXPECT_NEAR(document_.pose()[joint("hip.L")].x(), 0.05, 1e-12);
  EXPECT_TRUE(document_.isLocked(joint("C3-C4")) && document_.isLocked(joint("knee.L")));
  EXPECT_EQ(document_.project().lockedJoints.size(), 2u);
  ASSERT_EQ(document_.project().notes.size(), 1u);
  EXPECT_EQ(document_.project().notes[0].bone, named("C7"));
  EXPECT_EQ(document_.selectedBone(), bone("femur.L"));
  EXPECT_EQ(document_.project().poses.front().pose.angles.size(), document_.specimen().joints.size());
  document_.undoStack().undo();
  EXPECT_EQ(document_.project().notes.size(), 2u) << "what a step took away its undoing brings back";
  EXPECT_EQ(document_.project().table.counts.caudal, 52);
  EXPECT_NEAR(document_.pose()[joint("C6-C7")].x(), 0.08, 1e-12);
  EXPECT_EQ(document_.selectedBone(), bone("femur.L"));
  EXPECT_EQ(caudals->value(), 52);
}

TEST_F(MeasurementTableTest, AnAnimalThatStoodStandsOnLongerLegs) {
  const auto lowest = [this] {
    double z = 1e9;
    for (const auto& sole : kinematics::solePoints(document_.specimen()))
      z = std::min(z, (document_.placement()[sole.bone.value] * sole.p_BSole).z());
    return z;
  };
  ASSERT_NEAR(lowest(), 0, 1e-6);
  fill("femur.R", Measure::Length, "1700");
  EXPECT_NEAR(cell("femur.L", Measure::Length).value, 1.7, 1e-9) << "mirrored";
  EXPECT_NEAR(lowest(), 0, 1e-6);
  document_.undoStack().undo();
  EXPECT_NEAR(lowest(), 0, 1e-6);
}

TEST_F(MeasurementTableTest, CellsAreCopiedAndPastedInOneStep) {
  click("C5", Measure::CotyleHeight);
  QTest::keyClick(view(), Qt::Key_Right, Qt::ShiftModifier);
  QTest::keyClick(view(), Qt::Key_Down, Qt::ShiftModifier);
  QTest::keyClick(view(), Qt::Key_C, Qt::ControlModifier);
  EXPECT_EQ(QApplication::clipboard()->text(), "119\t125\n130\t139");
  QApplication::clipboard()->setText("111\t118\r\n\t126.5\r\n");
  click("C4", Measure::CotyleHeight);
  QTest::keyClick(view(), Qt::Key_V, Qt::ControlModifier);
  EXPECT_NEAR(cell("C4", Measure::CotyleHeight).value, 0.111, 1e-12);
  EXPECT_NEAR(cell("C4", Measure::CotyleWidth).value, 0.118, 1e-12);
  EXPECT_NEAR(cell("C5", Measure::CotyleHeight).value, 0.119, 1e-12) << "nothing stands there";
  EXPECT_NEAR(cell("C5", Measure::CotyleWidth).value, 0.1265, 1e-12);
  EXPECT_EQ(steps(), 1);
  document_.undoStack().undo();
  EXPECT_FALSE(cell("C4", Measure::CotyleHeight).measured());
  const auto before = document_.project().table;
  QApplication::clipboard()->setText("111\n112\nmany");
  click("C4", Measure::CotyleHeight);
  QTest::keyClick(view(), Qt::Key_V, Qt::ControlModifier);
  EXPECT_EQ(document_.project().table, before) << "all or nothing";
  EXPECT_THAT(refusal().toStdString(), HasSubstr("C6, cotyle height: 'many' is not a number"));
}

TEST_F(MeasurementTableTest, PlanAndTotalsAreEdited) {
  auto* plan = part<QComboBox>("tablePlan");
  plan->setFocus();
  const double jaw = cell("jaw", Measure::Height).value, facet = cell("C5", Measure::FacetHeight).value;
  QTest::keyClick(plan, Qt::Key_Down);
  EXPECT_EQ(document_.project().table.plan, anatomy::BodyPlan::LowBrowser);
  EXPECT_EQ(cell("jaw", Measure::Height).value, jaw) << "measured";
  EXPECT_NE(cell("C5", Measure::FacetHeight).value, facet) << "inferred";
  // A plan without a head cannot take the place of one with a measured skull.
  plan->setFocus();
  QTest::keyClick(plan, Qt::Key_Down);
  EXPECT_THAT(refusal().toStdString(), HasSubstr("is measured and would be gone"));
  EXPECT_EQ(plan->currentData().toInt(), static_cast<int>(anatomy::BodyPlan::LowBrowser));
  document_.undoStack().undo();
  EXPECT_EQ(document_.project().table.plan, anatomy::BodyPlan::HighBrowser);
  auto* neck = part<QLineEdit>("tableTotal0");
  EXPECT_EQ(neck->text(), "");
  EXPECT_EQ(neck->placeholderText(), "4990");
  neck->setFocus();
  type("x");
  enter();
  EXPECT_THAT(refusal().toStdString(), HasSubstr("'x' is not a number"));
  EXPECT_TRUE(document_.project().table.regionTotals.empty());
  neck->setFocus();
  neck->selectAll();
  type("5.2 m");
  enter();
  EXPECT_NEAR(document_.project().table.regionTotals.at("neck"), 5.2, 1e-9);
  neck->selectAll();
  QTest::keyClick(neck, Qt::Key_Delete);
  enter();
  EXPECT_TRUE(document_.project().table.regionTotals.empty());
}

TEST_F(MeasurementTableTest, EvidenceAndSourceAreEditedInTheirCells) {
  dialog_->showBone(named("C4"));
  const int row = view()->currentIndex().row(), source = view()->model()->columnCount() - 1;
  view()->setCurrentIndex(view()->model()->index(row, source));
  view()->scrollTo(view()->currentIndex());
  QTest::keyClick(view(), Qt::Key_F2);
  ASSERT_NE(field(), nullptr);
  field()->selectAll();
  type("drawer 7");
  enter();
  EXPECT_EQ(this->row("C4").source, "drawer 7");
  const QModelIndex evidence = view()->model()->index(row, 0);
  view()->scrollTo(evidence);
  QTest::mouseDClick(view()->viewport(), Qt::LeftButton, {}, view()->visualRect(evidence).center());
  QTest::mouseClick(view()->viewport(), Qt::LeftButton, {}, view()->visualRect(evidence).center());
  QTest::mouseDClick(view()->viewport(), Qt::LeftButton, {}, view()->visualRect(evidence).center());
  auto* choice = view()->findChild<QComboBox*>();
  ASSERT_NE(choice, nullptr);
  EXPECT_EQ(choice->currentData().toInt(), static_cast<int>(Evidence::Scaled));
  choice->setCurrentIndex(choice->findData(static_cast<int>(Evidence::FoundDeformed)));
  emit choice->activated(choice->currentIndex());
  EXPECT_EQ(this->row("C4").evidence, Evidence::FoundDeformed);
  EXPECT_EQ(document_.specimen()[bone("C4")].evidence, Evidence::FoundDeformed);
  EXPECT_EQ(steps(), 2);
}

TEST_F(MeasurementTableTest, OnlyColumnsThatTheBonesHaveAreShown) {
  const auto shown = [this] {
    QStringList titles;
    for (int column = 0; column < view()->model()->columnCount(); ++column)
      if (!view()->isColumnHidden(column))
        titles << view()->model()->headerData(column, Qt::Horizontal).toString().replace('\n', ' ');
    return titles;
  };
  auto* parts = part<QComboBox>("tablePart");
  parts->setCurrentIndex(parts->findData(static_cast<int>(anatomy::Region::Skull)));
  EXPECT_EQ(shown(), (QStringList{"Evidence", "length (mm)", "height (mm)", "width (mm)", "Source"}));
  parts->setCurrentIndex(parts->findData(static_cast<int>(anatomy::Region::Cervical)));
  EXPECT_FALSE(shown().contains("postzyg tilt (°)"));
  const auto few = shown().size();
  QTest::mouseClick(part<QAbstractButton>("tableAllMeasures"), Qt::LeftButton, {}, {8, 8});
  EXPECT_GT(shown().size(), few + 8);
}

// At the least size of a window that is promised nothing is cut.
TEST_F(MeasurementTableTest, EverythingHasRoomOnASmallScreen) {
  fill("D5", Measure::Length, "2600");
  dialog_->resize(1180, 720);
  QCoreApplication::processEvents();
  EXPECT_LE(dialog_->minimumSizeHint().width(), 1180);
  EXPECT_LE(dialog_->minimumSizeHint().height(), 720);
  for (const auto* button : dialog_->findChildren<QPushButton*>())
    EXPECT_GE(button->width(), button->minimumSizeHint().width()) << button->text().toStdString();
  for (const auto* label : dialog_->findChildren<QLabel*>()) {
    if (!label->isVisible() || label->wordWrap()) continue;
    EXPECT_GE(label->width(), label->sizeHint().width()) << label->text().toStdString();
  }
  EXPECT_GE(view()->viewport()->height(), 8 * view()->verticalHeader()->defaultSectionSize());
  QHeaderView& header = *view()->horizontalHeader();
  for (int column = 0; column < header.count(); ++column) {
    if (view()->isColumnHidden(column)) continue;
    EXPECT_GE(header.sectionSize(column), header.sectionSizeHint(column))
        << view()->model()->headerData(column, Qt::Horizontal).toString().toStdString();
  }
}

}  // namespace
}  // namespace zyga::ui
