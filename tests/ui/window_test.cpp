#include <gmock/gmock.h>

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QRadioButton>
#include <QSpinBox>
#include <QTableWidget>

#include "tests/ui/window_fixture.h"

namespace zyga::ui {
namespace {

constexpr double kDegrees = 180 / 3.14159265358979323846;

/// Pixels of the picture within `radius` of `centre` that are the colour, give or take.
int pixelsLike(const QImage& picture, const QPointF& centre, int radius, const QColor& colour) {
  constexpr int kTolerance = 40;
  int count = 0;
  for (int y = -radius; y <= radius; ++y)
    for (int x = -radius; x <= radius; ++x) {
      const QPoint at = centre.toPoint() + QPoint(x, y);
      if (!picture.rect().contains(at)) continue;
      const QColor seen = picture.pixelColor(at);
      if (std::abs(seen.red() - colour.red()) < kTolerance && std::abs(seen.green() - colour.green()) < kTolerance &&
          std::abs(seen.blue() - colour.blue()) < kTolerance)
        ++count;
    }
  return count;
}

TEST_F(WindowTest, SampleIsOnScreenWithItsNumbers) {
  EXPECT_TRUE(window_->windowTitle().startsWith("High browser")) << window_->windowTitle().toStdString();
  EXPECT_FALSE(window_->isWindowModified());
  EXPECT_TRUE(part<QLabel>("lengths")->text().startsWith("neck 4.99 · trunk 2.99"));
  EXPECT_TRUE(findings().isEmpty());
  const QImage picture = viewport()->grabPicture();
  const QPointF trunk = viewport()->placeOf(bone("D6")).value() * picture.devicePixelRatio();
  EXPECT_NE(picture.pixelColor(trunk.toPoint()), picture.pixelColor(4, 4)) << "there is a bone before the background";
}

TEST_F(WindowTest, DragBeyondRangeIsFoundUndoneAndDoneAgain) {
  QTest::keyClick(window_.get(), Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);  // past the ranges
  QTest::keyClick(window_.get(), Qt::Key_1, Qt::ControlModifier);
  const auto start = document_->pose();
  ASSERT_TRUE(QTest::qWaitFor(
      [&] {
        const auto seen = viewport()->placeOf(bone("C4"));
        return seen && viewport()->rect().contains(seen->toPoint()) && viewport()->camera().elevation == 0;
      },
      kPatience));
  QPointF neck;
  ASSERT_TRUE(QTest::qWaitFor(
      [&] {  // the view has come to rest
        const QPointF before = neck;
        neck = viewport()->placeOf(bone("C4")).value();
        return (neck - before).manhattanLength() < 0.01;
      },
      kPatience));
  drag(viewport(), neck, neck + QPointF(150, -170));
  ASSERT_FALSE(document_->pose() == start);
  EXPECT_TRUE(window_->isWindowModified());
  ASSERT_THAT(findings(), testing::Not(testing::IsEmpty()));
  // Bones that enter each other are found beside the joints and may come first.
  const QStringList beyond = findings().filter(" out of range: ");
  ASSERT_FALSE(beyond.isEmpty()) << findings().join('\n').toStdString();
  const QString worst = beyond.front();

  const auto id = worst.section(' ', 0, 0).toStdString();
  const JointIndex marked = document_->specimen().findJoint(id).value();
  const range::MotionRange& band = document_->motionRange(marked, 0);
  const double angle = document_->pose()[marked].x();
  EXPECT_TRUE(angle > band.max || angle < band.min)
      << id << " at " << angle * kDegrees << " of " << band.min * kDegrees << " to " << band.max * kDegrees;
  ASSERT_TRUE(QTest::qWaitFor([&] { return strip()->settled(); }, kPatience));
  const QPointF mark = strip()->markPlace(strip()->columns().columnOf(marked).value());
  EXPECT_GT(pixelsLike(strip()->grab().toImage(), mark, 6, theme().beyond), 10) << "a triangle in vermillion";

  QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(document_->pose(), start);
  EXPECT_TRUE(findings().isEmpty());
  EXPECT_FALSE(window_->isWindowModified());
  QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(findings().filter(" out of range: ").front(), worst);
}

TEST_F(WindowTest, ChoosingAFindingShowsItsJoint) {
  kinematics::Pose pose = document_->pose();
  pose[joint("C6-C7")].x() = 0.5;
  document_->changePose(pose, "Bend");
  const Camera before = viewport()->camera();
  auto* list = part<QListView>("findingsList");
  QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualRect(list->model()->index(0, 0)).center());
  EXPECT_EQ(document_->selectedJoint(), joint("C6-C7"));
  EXPECT_TRUE(QTest::qWaitFor([&] { return viewport()->camera().viewHeight < before.viewHeight / 2; }, kPatience));
}

TEST_F(WindowTest, SavedWorkComesBack) {
  kinematics::Pose pose = document_->pose();
  pose[joint("C6-C7")].x() = 0.05;
  document_->changePose(pose, "Bend");
  const auto file = folder() / "neck.zyga";
  action("Save as")->trigger();
  answerFile(file);
  ASSERT_TRUE(QTest::qWaitFor([&] { return std::filesystem::exists(file); }, kPatience));
  EXPECT_FALSE(window_->isWindowModified());
  EXPECT_TRUE(window_->windowTitle().startsWith("neck.zyga"));

  closeWindow();
  openWindow();
  window_->openUsual();
  settle();
  EXPECT_TRUE(window_->windowTitle().startsWith("neck.zyga")) << "what was open last";
  EXPECT_NEAR(document_->pose()[joint("C6-C7")].x(), 0.05, 1e-9);
}

TEST_F(WindowTest, ExportWritesTheMeshes) {
  const auto file = folder() / "posed.glb";
  action("Export meshes")->trigger();
  auto* options = dialog("exportDialog");
  ASSERT_NE(options, nullptr);
  EXPECT_EQ(options->findChild<QComboBox*>("exportFormat")->currentData().toString(), "glb");
  press(*options, "Choose a file");
  answerFile(file);
  ASSERT_TRUE(QTest::qWaitFor([&] { return messages().contains("posed.glb is written."); }, kPatience));
  EXPECT_GT(std::filesystem::file_size(file), 100'000u);
  const auto leftOver = std::distance(std::filesystem::directory_iterator(folder()), {});
  EXPECT_LE(leftOver, 2) << "the file and the recovery folder, nothing half-made";
}

TEST_F(WindowTest, ExportWritesOneClosedSurfaceAndTellsItsSizeFirst) {
  const auto file = folder() / "base.stl";
  action("Export meshes")->trigger();
  auto* options = dialog("exportDialog");
  ASSERT_NE(options, nullptr);
  auto* format = options->findChild<QComboBox*>("exportFormat");
  format->setCurrentIndex(format->findData("stl"));
  auto* unit = options->findChild<QComboBox*>("exportUnit");
  unit->setCurrentIndex(2);
  auto* voxel = options->findChild<QDoubleSpinBox*>("exportVoxel");
  EXPECT_FALSE(voxel->isEnabled());
  options->findChild<QRadioButton*>("exportWatertight")->click();
  EXPECT_TRUE(voxel->isEnabled());
  voxel->setValue(25);
  options->findChild<QSpinBox*>("exportTriangles")->setValue(30000);
  const QString told = options->findChild<QLabel*>("exportSize")->text();
  EXPECT_TRUE(told.contains("mm long")) << told.toStdString();
  EXPECT_TRUE(told.contains("about " + QLocale().toString(30000) + " triangles")) << told.toStdString();
  options->findChild<QCheckBox*>("exportBodyGuide")->click();
  auto* preset = options->findChild<QComboBox*>("guideBuild");
  preset->setFocus();
  QTest::keyClick(preset, Qt::Key_End);
  preset->setCurrentIndex(2);
  emit preset->activated(2);
  EXPECT_EQ(options->findChild<QDoubleSpinBox*>("guideTailWidth")->value(), 190);
  press(*options, "Choose a file");
  EXPECT_EQ(document_->project().guide.tailWidth, 1.9) << "kept with the project";
  answerFile(file);
  ASSERT_TRUE(QTest::qWaitFor([&] { return messages().join(' ').contains("base.stl is written."); }, kPatience));
  EXPECT_TRUE(messages().join(' ').contains("One closed surface"));
  EXPECT_GT(std::filesystem::file_size(file), 1'000'000u);  // 50 bytes a triangle
  EXPECT_TRUE(std::filesystem::exists(folder() / "base.body_guide_not_anatomy.stl"));
  document_->undoStack().undo();
  EXPECT_EQ(document_->project().guide, solid::GuideThickness{});
}

TEST_F(WindowTest, PictureIsTracedBesideTheWindow) {
  const auto file = folder() / "animal.png";
  action("Save picture")->trigger();
  auto* options = dialog("pictureDialog");
  ASSERT_NE(options, nullptr);
  options->findChild<QDoubleSpinBox*>("pictureWidth")->setValue(320);
  press(*options, "Choose a file");
  answerFile(file);
  ASSERT_TRUE(QTest::qWaitFor([&] { return messages().contains("animal.png is written."); }, kPatience));
  EXPECT_EQ(QImage(QString::fromStdString(file.string())).width(), 320);
}

TEST_F(WindowTest, BrokenTableTellsEveryFaultAndLeavesTheRest) {
  const auto name = document_->specimen().name;
  drop(write("bad.csv", "bone,length (mm)\nC6,abc\nC99x,12\n"));
  auto* faults = dialog("tableFaults");
  ASSERT_NE(faults, nullptr);
  const auto* list = faults->findChild<QTableWidget*>("faults");
  ASSERT_GE(list->rowCount(), 2);
  EXPECT_EQ(list->item(0, 1)->text(), "2");
  EXPECT_EQ(list->item(0, 2)->text(), "2: C6, length");
  EXPECT_TRUE(list->item(0, 3)->text().contains("abc"));
  EXPECT_FALSE(list->item(0, 4)->text().isEmpty());
  EXPECT_EQ(list->item(1, 1)->text(), "3");
  press(*faults, "Close");
  EXPECT_EQ(document_->specimen().name, name);
}

TEST_F(WindowTest, BrokenProjectIsAMessageAndNotADialog) {
  drop(write("broken.zyga", "{\"zygapose\": "));
  ASSERT_TRUE(QTest::qWaitFor([&] { return !messages().isEmpty(); }, kPatience));
  EXPECT_TRUE(messages().front().contains("broken.zyga")) << messages().front().toStdString();
  EXPECT_TRUE(document_->hasProject());
}

TEST_F(WindowTest, UnsavedWorkIsAskedAboutBeforeItIsReplaced) {
  kinematics::Pose pose = document_->pose();
  pose[joint("C6-C7")].x() = 0.05;
  document_->changePose(pose, "Bend");
  window_->open(sample());
  auto* question = dialog<QMessageBox>("unsavedWork");
  ASSERT_NE(question, nullptr);
  press(*question, "Go back");
  EXPECT_NEAR(document_->pose()[joint("C6-C7")].x(), 0.05, 1e-12);

  window_->close();
  EXPECT_TRUE(window_->isVisible()) << "closing asks too";
  question = dialog<QMessageBox>("unsavedWork");
  ASSERT_NE(question, nullptr);
  press(*question, "Give them up");
  EXPECT_TRUE(QTest::qWaitFor([&] { return !window_->isVisible(); }, kPatience));
}

TEST_F(WindowTest, LostWorkIsOffered) {
  kinematics::Pose pose = document_->pose();
  pose[joint("C6-C7")].x() = 0.05;
  files::Project lost = document_->project();
  lost.pose = pose;
  std::filesystem::create_directories(folder() / "recovery");
  files::saveProject(lost, folder() / "recovery" / "lost.zyga");  // and no living program holds its lock
  closeWindow();
  openWindow();
  ASSERT_EQ(messages().size(), 1);
  EXPECT_TRUE(messages().front().endsWith("was not saved."));
  press(*window_, "Recover");
  settle();
  EXPECT_NEAR(document_->pose()[joint("C6-C7")].x(), 0.05, 1e-9);
  EXPECT_TRUE(window_->isWindowModified());
  EXPECT_TRUE(
      QTest::qWaitFor([&] { return !std::filesystem::exists(folder() / "recovery" / "lost.zyga"); }, kPatience));
}

TEST_F(WindowTest, PoseMenuMovesTheWholeAnimalAndCanBeUndone) {
  kinematics::Pose pose = document_->pose();
  pose[joint("C6-C7")] = {0.05, 0.04, 0};
  document_->changePose(pose, "Bend");
  QTest::keyClick(window_.get(), Qt::Key_M, Qt::ControlModifier);
  EXPECT_DOUBLE_EQ(document_->pose()[joint("C6-C7")].y(), -0.04);
  action("Neck to neutral")->trigger();
  EXPECT_EQ(document_->pose()[joint("C6-C7")], Eigen::Vector3d::Zero());
  EXPECT_EQ(action("Undo:")->text(), "Undo: Neck to neutral");
  action("Undo:")->trigger();
  action("Undo:")->trigger();
  EXPECT_EQ(document_->pose(), pose);
}

TEST_F(WindowTest, DarkIsDark) {
  const auto brightness = [&] { return window_->grab().toImage().pixelColor(8, 300).lightness(); };
  EXPECT_GT(brightness(), 200);
  action("Dark")->trigger();
  EXPECT_LT(brightness(), 80);
  action("Dark")->trigger();
}

TEST_F(WindowTest, EveryPanelIsReachedByKeys) {
  document_->selectJoint(joint("C6-C7"));
  QSet<QString> reached;
  for (int i = 0; i < 8; ++i) {
    QTest::keyClick(window_.get(), Qt::Key_F6);
    for (QWidget* widget = QApplication::focusWidget(); widget; widget = widget->parentWidget())
      if (widget->objectName().endsWith("Dock") || widget == viewport()) reached += widget->objectName();
  }
  for (const char* name : {"viewport", "bonesDock", "jointDock", "findingsDock", "stripDock"})
    EXPECT_TRUE(reached.contains(name)) << name;
}

}  // namespace
}  // namespace zyga::ui
