#include <gmock/gmock.h>

#include <QRadioButton>

#include "core/anatomy/marks/mark_plan.h"
#include "core/anatomy/marks/scan_measures.h"
#include "tests/ui/scans_fixture.h"
#include "ui/parts/message_bar.h"

// Bones of another size than the animal's: the list says what unit they are in and why, marks the one that does not go
// with the others, and asks before an animal ten times as large gets them.
namespace zyga::ui {
namespace {

using anatomy::Measure;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

constexpr float kTenthInMetres = 0.1F;  ///< of a scanner: metres, of an animal a tenth as large

class ScanSizesTest : public ScansTest {
 protected:
  double lengthOf(const char* id) const { return cellOf(id).value; }
  anatomy::Cell cellOf(const char* id) const {
    return document_->project().table.find(*anatomy::parseBoneId(id))->measures[Measure::Length];
  }
  std::string said() const { return window_->findChild<MessageBar*>()->texts().join('\n').toStdString(); }
  static std::string unitTold(const BringInDialog& bringing) {
    return bringing.findChild<QLabel*>("bringInUnit")->text().toStdString();
  }
  static QWidget& question(const BringInDialog& bringing) { return *bringing.findChild<QWidget*>("sizeQuestion"); }
  static QPushButton& put(const BringInDialog& bringing) { return *bringing.findChild<QPushButton*>("putInPlace"); }
  /// The circle of a radio button, as the hand hits it.
  static void choose(const BringInDialog& bringing, const char* answer) {
    auto* button = bringing.findChild<QRadioButton*>(answer);
    QTest::mouseClick(button, Qt::LeftButton, {}, QPoint(10, button->height() / 2));
  }
  BringInDialog* tenthOfANeck() {
    scanner_ = kTenthInMetres;
    dropAll({scanned("C5", "C5.stl"), scanned("C6", "C6.stl"), scanned("C7", "C7.stl")});
    return readAll();
  }
};

TEST_F(ScanSizesTest, OneUnitIsGuessedForAllAndSaidWithItsGroundsAndWhoDoesNotFitIsMarked) {
  const auto c5 = scanned("C5", "C5.stl"), c6 = scanned("C6", "C6.stl"), c8 = scanned("C8", "C8.stl");
  scanner_ = 1000.0F / 12;
  const auto c7 = scanned("C7", "C7.stl");
  dropAll({c5, c6, c7, c8});
  auto* bringing = readAll();
  ASSERT_NE(bringing, nullptr);
  EXPECT_THAT(unitTold(*bringing), AllOf(HasSubstr("Unit of all guessed mm, in which the middle one of 4 bones is"),
                                         HasSubstr("no other unit comes near.")));
  // By itself it would be taken for centimetres.
  EXPECT_EQ(bringing->findChild<QComboBox*>("unit.C7.stl")->currentText(), "mm");
  EXPECT_THAT(outcome(*bringing, 2).toStdString(), HasSubstr("times too small: another unit, or another bone?"));
  auto* table = bringing->findChild<QTableWidget*>("bringInTable");
  EXPECT_FALSE(table->item(2, 4)->icon().isNull());
  for (const int own : {0, 1, 3}) {
    EXPECT_THAT(outcome(*bringing, own).toStdString(), Not(HasSubstr("beside the others"))) << own;
    EXPECT_TRUE(table->item(own, 4)->icon().isNull()) << own;
  }
  EXPECT_FALSE(question(*bringing).isVisible());
  EXPECT_TRUE(put(*bringing).isEnabled()) << "marked, not refused";
  table->scrollTo(table->model()->index(2, 0));
  auto* unit = bringing->findChild<QComboBox*>("unit.C7.stl");
  unit->setFocus();
  QTest::keyClick(unit, Qt::Key_Down);
  EXPECT_EQ(unit->currentText(), "cm");
  EXPECT_THAT(outcome(*bringing, 2).toStdString(), Not(HasSubstr("beside the others")));
  QTest::keyClick(bringing, Qt::Key_Escape);
}

TEST_F(ScanSizesTest, TheAnimalIsFittedToBonesOfATenthInOneStep) {
  const double before = lengthOf("femur.L"), height = document_->pose().X_WRoot.translation().z();
  const auto table = document_->project().table;
  auto* bringing = tenthOfANeck();
  ASSERT_NE(bringing, nullptr);
  EXPECT_THAT(unitTold(*bringing), HasSubstr("guessed m,"));
  ASSERT_TRUE(question(*bringing).isVisible());
  EXPECT_THAT(bringing->findChild<QLabel*>("sizeTold")->text().toStdString(),
              testing::ContainsRegex("The animal's bones are about [0-9.]+ times as large as these\\. Which is right"));
  EXPECT_FALSE(put(*bringing).isEnabled()) << "not taken silently";
  choose(*bringing, "fitAnimal");
  ASSERT_TRUE(put(*bringing).isEnabled());
  const double factor = bringing->fitFactor().value();
  EXPECT_NEAR(factor, 0.1, 0.035);
  press(*bringing, "Add to skeleton");
  EXPECT_EQ(document_->undoStack().count(), 1);
  EXPECT_EQ(document_->undoStack().undoText(), "Import 3 bones and fit the animal to them");
  EXPECT_EQ(document_->project().scans.size(), 3u);
  EXPECT_NEAR(lengthOf("femur.L"), factor * before, 1e-6);
  EXPECT_NEAR(document_->pose().X_WRoot.translation().z(), factor * height, 0.03 * factor * height) << "it stands";
  EXPECT_THAT(said(), HasSubstr("times as large as it was"));
  settle();
  undoByKey();
  EXPECT_TRUE(document_->project().scans.empty());
  EXPECT_EQ(document_->project().table, table);
  EXPECT_EQ(document_->pose().X_WRoot.translation().z(), height);
  settle();
}

TEST_F(ScanSizesTest, TheAnimalKeepsItsSizeWhereThatIsChosen) {
  const auto table = document_->project().table;
  auto* bringing = tenthOfANeck();
  ASSERT_NE(bringing, nullptr);
  choose(*bringing, "keepSize");
  EXPECT_EQ(bringing->fitFactor(), std::nullopt);
  press(*bringing, "Add to skeleton");
  EXPECT_EQ(document_->undoStack().undoText(), "Import 3 bones");
  EXPECT_EQ(document_->project().table, table);
  settle();
}

TEST_F(ScanSizesTest, AnotherUnitIsChosenForAllAtOnce) {
  dropAll({scanned("C5", "C5.stl"), scanned("C6", "C6.stl"), scanned("C7", "C7.stl")});
  auto* bringing = readAll();
  ASSERT_NE(bringing, nullptr);
  EXPECT_FALSE(question(*bringing).isVisible());
  for (const char* name : {"unit.C5.stl", "unit.C6.stl"}) {  // by hand, and wrong
    auto* unit = bringing->findChild<QComboBox*>(name);
    unit->setFocus();
    QTest::keyClick(unit, Qt::Key_Down);
  }
  ASSERT_TRUE(question(*bringing).isVisible());
  EXPECT_THAT(bringing->findChild<QLabel*>("sizeTold")->text().toStdString(),
              testing::ContainsRegex("These bones are about [0-9.]+ times as large as the animal's\\. Which is right"));
  choose(*bringing, "keepSize");
  EXPECT_TRUE(put(*bringing).isEnabled());
  choose(*bringing, "otherUnit");
  EXPECT_FALSE(put(*bringing).isEnabled()) << "which?";
  auto* all = bringing->findChild<QComboBox*>("unitOfAll");
  EXPECT_EQ(all->currentText(), "cm");
  all->setFocus();
  QTest::keyClick(all, Qt::Key_Up);
  for (const char* name : {"unit.C5.stl", "unit.C6.stl", "unit.C7.stl"})
    EXPECT_EQ(bringing->findChild<QComboBox*>(name)->currentText(), "mm") << name;
  EXPECT_FALSE(question(*bringing).isVisible());
  EXPECT_TRUE(put(*bringing).isEnabled());
  QTest::keyClick(bringing, Qt::Key_Escape);
  EXPECT_EQ(document_->undoStack().count(), 0);
}

TEST_F(ScanSizesTest, TheAnimalIsFittedLaterToWhatTheMarksMeasure) {
  action("Fit the animal to its scans")->trigger();
  EXPECT_THAT(said(), HasSubstr("No real bone has been brought in yet"));
  const double before = lengthOf("femur.L");
  const anatomy::Specimen sculpted = anatomy::buildSpecimen(document_->project().table);
  auto* bringing = tenthOfANeck();
  ASSERT_NE(bringing, nullptr);
  choose(*bringing, "keepSize");
  press(*bringing, "Add to skeleton");
  for (const char* id : {"C5", "C6", "C7"}) {
    const anatomy::Bone& own = sculpted[bone(id)];
    anatomy::Scan marked = scanOf(*document_, own.name)->scan;
    for (const char* name : {"cranialRim", "caudalRim", "spineTop"})
      setLandmark(marked, own, name, 0.1 * own.landmark(name));  // written in the bone's own axes
    changeScan(*document_, marked, "mark it");
  }
  const int steps = document_->undoStack().count();
  const auto measured = measuresOf(scanOf(*document_, *anatomy::parseBoneId("C6"))->scan);
  const auto length =
      std::find_if(measured.begin(), measured.end(), [](const auto& each) { return each.measure == Measure::Length; });
  ASSERT_NE(length, measured.end());
  action("Fit the animal to its scans")->trigger();
  ASSERT_EQ(document_->undoStack().count(), steps + 1);
  EXPECT_EQ(document_->undoStack().undoText(), "Fit the animal to its scans");
  EXPECT_NEAR(lengthOf("femur.L"), 0.1 * before, 0.01 * before) << "to the marks, not to the surfaces";
  EXPECT_TRUE(cellOf("C6").measured());
  EXPECT_DOUBLE_EQ(lengthOf("C6"), length->value);
  for (const files::ProjectScan& kept : document_->project().scans) EXPECT_EQ(kept.scan.scale, 1);
  action("Fit the animal to its scans")->trigger();
  EXPECT_EQ(document_->undoStack().count(), steps + 1);
  EXPECT_THAT(said(), HasSubstr("has the size of its scans already"));
  settle();
}

}  // namespace
}  // namespace zyga::ui
