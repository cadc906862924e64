#include <QCheckBox>
#include <QComboBox>
#include <QRadioButton>
#include <QTableWidget>

#include "core/study/claims/claim.h"
#include "tests/ui/window_fixture.h"
#include "ui/commands/pose_edits.h"

namespace zyga::ui {
namespace {

std::string bytes(const std::filesystem::path& file) {
  std::ostringstream out;
  out << std::ifstream(file, std::ios::binary).rdbuf();
  return out.str();
}

TEST_F(WindowTest, ReportIsWrittenBesideTheWindow) {
  const auto file = folder() / "animal.pdf";
  action("Report")->trigger();
  auto* options = dialog("reportDialog");
  ASSERT_NE(options, nullptr);
  EXPECT_FALSE(options->findChild<QRadioButton*>("reportClaims")->isEnabled()) << "there are no claims";
  options->findChild<QCheckBox*>("reportNumbers")->click();
  press(*options, "Choose a file");
  answerFile(file);
  ASSERT_TRUE(QTest::qWaitFor([&] { return messages().contains("animal.pdf is written."); }, kPatience));
  EXPECT_TRUE(QString::fromStdString(bytes(file)).startsWith("%PDF"));
  EXPECT_NE(bytes(folder() / "animal.csv").find("\nstand.hip_height,"), std::string::npos);
}

TEST_F(WindowTest, CompareFollowsThePoseAndShowsTheGhost) {
  addNamedPose(*document_, "old view");
  action("Compare")->trigger();
  auto* compare = dialog("compareDialog");
  ASSERT_NE(compare, nullptr);
  EXPECT_EQ(document_->comparedPose(), std::optional<std::size_t>(0)) << "the ghost stands beside the animal";
  auto* joints = compare->findChild<QTableWidget*>("compareJoints");
  EXPECT_EQ(joints->rowCount(), 0);
  auto pose = document_->pose();
  pose[joint("C6-C7")].x() += 0.05;
  document_->changePose(pose, "raise");
  ASSERT_EQ(joints->rowCount(), 1);
  EXPECT_EQ(joints->item(0, 0)->text(), "C6-C7");
  EXPECT_EQ(joints->item(0, 1)->text(), QString::fromUtf8("−2.9°"));
  auto* other = compare->findChild<QComboBox*>("compareOther");
  other->setFocus();
  QTest::keyClick(other, Qt::Key_End);
  EXPECT_FALSE(document_->comparedPose().has_value()) << "assumptions have no ghost";
  EXPECT_EQ(joints->rowCount(), 0) << "the assumptions are the usual ones";
  press(*compare, "Close");
  EXPECT_FALSE(document_->comparedPose().has_value());
}

}  // namespace
}  // namespace zyga::ui
