#include <gmock/gmock.h>

#include <QListWidget>
#include <QTableView>
#include <QTableWidget>
#include <QToolButton>
#include <sstream>

#include "tests/ui/window_fixture.h"

namespace zyga::ui {
namespace {

using anatomy::Measure;
using testing::HasSubstr;

class TablesTest : public WindowTest {
 protected:
  QDialog* openTable() {
    QTest::keyClick(window_.get(), Qt::Key_T, Qt::ControlModifier);
    return dialog("measurementDialog");
  }
  double lengthOf(const char* id) const {
    return document_->project().table.find(*anatomy::parseBoneId(id))->measures.value(Measure::Length);
  }
  static std::string read(const std::filesystem::path& file) {
    std::ostringstream text;
    text << std::ifstream(file).rdbuf();
    return text.str();
  }
};

TEST_F(TablesTest, ItOpensFromTheBonesPanelAtTheChosenBone) {
  document_->selectBone(bone("femur.R"));
  QTest::mouseClick(part<QToolButton>("measurementTableButton"), Qt::LeftButton);
  auto* table = dialog("measurementDialog");
  ASSERT_NE(table, nullptr);
  const auto* view = table->findChild<QTableView*>("measurementTable");
  EXPECT_EQ(view->model()->headerData(view->currentIndex().row(), Qt::Vertical).toString(), "femur.R");
  press(*table, "Close");
}

TEST_F(TablesTest, ATableIsOpenedIntoTheProjectAsOneStepAndSaved) {
  kinematics::Pose pose = document_->pose();
  pose[joint("C6-C7")].x() = 0.05;
  document_->changePose(pose, "Bend");
  const auto before = document_->project().table;
  auto* table = openTable();
  ASSERT_NE(table, nullptr);
  press(*table, "Open a table");
  answerFile(
      write("other.csv", "# specimen: Other\n# plan: high browser\nbone,length (mm)\nC5,400\nC6,4600\nC7,500\n"));
  ASSERT_TRUE(QTest::qWaitFor([&] { return document_->project().table.name == "Other"; }, kPatience));
  EXPECT_NEAR(lengthOf("C5"), 0.4, 1e-12);
  EXPECT_NEAR(document_->pose()[joint("C6-C7")].x(), 0.05, 1e-12) << "poses stay";
  // What is hard to believe is told as when a table is opened, and stays in the list.
  auto* faults = dialog("tableFaults");
  ASSERT_NE(faults, nullptr);
  EXPECT_EQ(faults->findChild<QTableWidget*>("faults")->item(0, 2)->text(), "2: C6, length");
  press(*faults, "Close");
  EXPECT_EQ(table->findChild<QListWidget*>("tableRemarks")->count(), 1);
  press(*table, "Save the table");
  answerFile(folder() / "saved.csv");
  ASSERT_TRUE(QTest::qWaitFor([&] { return std::filesystem::exists(folder() / "saved.csv"); }, kPatience));
  EXPECT_THAT(read(folder() / "saved.csv"), testing::AllOf(HasSubstr("# specimen: Other"), HasSubstr("C6,4600,found")));
  document_->undoStack().undo();
  EXPECT_EQ(document_->project().table, before);
}

TEST_F(TablesTest, AFaultyTableChangesNothingAndABlankOneIsWritten) {
  const auto before = document_->project().table;
  auto* table = openTable();
  ASSERT_NE(table, nullptr);
  press(*table, "Open a table");
  answerFile(write("bad.csv", "bone,length (mm)\nC5,abc\n"));
  auto* faults = dialog("tableFaults");
  ASSERT_NE(faults, nullptr);
  press(*faults, "Close");
  EXPECT_EQ(document_->project().table, before);
  press(*table, "Save a blank table");
  answerFile(folder() / "blank.csv");
  ASSERT_TRUE(QTest::qWaitFor([&] { return std::filesystem::exists(folder() / "blank.csv"); }, kPatience));
  const auto reading = anatomy::readMeasurementTable(read(folder() / "blank.csv"), "blank.csv");
  EXPECT_TRUE(reading.messages.empty());
  EXPECT_EQ(reading.table.rows.size(), before.rows.size());
}

}  // namespace
}  // namespace zyga::ui
