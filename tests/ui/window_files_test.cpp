#include <gmock/gmock.h>

#include <QComboBox>
#include <QJsonDocument>
#include <QJsonObject>
#include <QPlainTextEdit>
#include <QToolButton>
#include <filesystem>

#include "core/files/scan/clean_scan.h"
#include "tests/core/files/example_skeleton.h"
#include "tests/ui/window_fixture.h"
#include "ui/parts/elided_label.h"

// Where a project and its scans are kept, and what the window says when a scan is not there.
namespace zyga::ui {
namespace {

namespace fs = std::filesystem;
using testing::AllOf;
using testing::HasSubstr;

class WindowFiles : public WindowTest {
 protected:
  void SetUp() override {
    WindowTest::SetUp();
    scanned_ = document_->project();
    for (const char* id : {"C5", "C6", "C7", "C8"}) {
      files::CleanScan clean;
      clean.mesh = files::example::boxMesh({0.2, 0.06, 0.1 + 0.01 * scanned_.scans.size()}, 4);
      scanned_.scans.push_back(
          files::projectScan(clean, document_->specimen()[bone(id)], anatomy::ScanUnit::Metre, "bone.stl"));
    }
    scanned_.setSpecimen(files::specimenOf(scanned_.table, scanned_.scans));
    file_ = folder() / "neck.zyga";
    files::saveProject(scanned_, file_);
  }
  fs::path meshOf(std::size_t scan) const { return folder() / scanned_.scans[scan].scan.file; }
  void openFile(const fs::path& file) {
    window_->open(QString::fromStdString(file.string()));
    ASSERT_TRUE(QTest::qWaitFor([&] { return document_->path() == file; }, kPatience));
    settle();
  }
  std::string messageWith(const QString& words) {
    const auto said = [&] { return !messages().filter(words).isEmpty(); };
    EXPECT_TRUE(QTest::qWaitFor(said, kPatience))
        << words.toStdString() << " is not among: " << messages().join('\n').toStdString();
    return said() ? messages().filter(words).first().toStdString() : "";
  }
  static QString inQt(const fs::path& path) { return QString::fromStdString(path.string()); }
  void save() { QTest::keyClick(window_.get(), Qt::Key_S, Qt::ControlModifier); }
  void bend(double angle) {
    kinematics::Pose pose = document_->pose();
    pose[joint("C6-C7")].x() = angle;
    document_->changePose(pose, "Bend");
  }

  files::Project scanned_;
  fs::path file_;
};

TEST_F(WindowFiles, AMissingScanIsNamedWithItsStandInUntilAnotherProjectIsOpened) {
  fs::remove(meshOf(2));
  openFile(file_);
  EXPECT_THAT(messageWith("no such file"),
              AllOf(HasSubstr("C7"), HasSubstr(meshOf(2).string()), HasSubstr("sculpted"), HasSubstr("put it back")));
  EXPECT_EQ(document_->specimen()[bone("C7")].evidence, anatomy::Evidence::Inferred);
  EXPECT_EQ(document_->specimen()[bone("C6")].evidence, anatomy::Evidence::Found);
  document_->setBoneRecord(bone("C7"), anatomy::Evidence::Inferred, "typed");
  EXPECT_EQ(document_->project().scans[2].scan.evidence, anatomy::Evidence::Found) << "that was of the stand-in";
  bend(0.02);
  save();
  EXPECT_FALSE(messages().filter("no such file").isEmpty()) << "it lasts";
  window_->open(sample());
  ASSERT_TRUE(QTest::qWaitFor([&] { return document_->project().scans.empty(); }, kPatience));
  EXPECT_TRUE(messages().filter("no such file").isEmpty()) << messages().join('\n').toStdString();
  settle();
}

TEST_F(WindowFiles, TheMessageCanBeClosed) {
  fs::remove(meshOf(0));
  openFile(file_);
  messageWith("no such file");
  for (auto* label : window_->findChildren<QLabel*>("messageText"))
    if (label->text().contains("no such file"))
      QTest::mouseClick(label->parentWidget()->findChild<QToolButton*>(), Qt::LeftButton);
  EXPECT_TRUE(messages().filter("no such file").isEmpty());
}

TEST_F(WindowFiles, AWholeFolderThatIsGoneIsOneMessageAndAListOfAll) {
  fs::remove_all(folder() / "scans");
  openFile(file_);
  const std::string told = messageWith("there is no folder");
  EXPECT_THAT(told, AllOf(HasSubstr("C5"), HasSubstr("C6"), HasSubstr("C7"), HasSubstr("Further scans: 1")));
  EXPECT_EQ(messages().filter("there is no folder").size(), 1);
  press(*window_, "Show all");
  auto* list = dialog<QDialog>("scansAmiss");
  ASSERT_NE(list, nullptr);
  EXPECT_EQ(list->findChild<QPlainTextEdit*>("sentences")->toPlainText().count("there is no folder"), 4);
  press(*list, "Close");
  messageWith("Further scans: 1");
}

TEST_F(WindowFiles, AMovedScanIsTakenFromWhereItIsAndSavingPutsItBack) {
  fs::rename(meshOf(1), folder() / "sixth.ply");
  openFile(file_);
  EXPECT_THAT(messageWith("the same mesh was found"), AllOf(HasSubstr("C6"), HasSubstr("sixth.ply")));
  EXPECT_TRUE(document_->project().scans[1].mesh);
  bend(0.02);
  save();
  EXPECT_TRUE(fs::exists(meshOf(1)));
  EXPECT_THAT(messageWith("belongs to the project"), HasSubstr((folder() / "scans").string()));
}

TEST_F(WindowFiles, ScansAreLookedForInAFolderAsOneUndoStep) {
  fs::create_directories(folder() / "attic" / "box");
  fs::rename(meshOf(3), folder() / "attic" / "box" / "eight.ply");
  openFile(file_);
  messageWith("no such file");
  press(*window_, "Look in a folder");
  answerFile(folder() / "attic");
  ASSERT_TRUE(QTest::qWaitFor([&] { return document_->project().scans[3].mesh != nullptr; }, kPatience));
  EXPECT_EQ(document_->undoStack().undoText(), "Find scans again");
  EXPECT_EQ(document_->specimen()[bone("C8")].evidence, anatomy::Evidence::Found);
  messageWith("Scans found again: 1");
  EXPECT_TRUE(messages().filter("no such file").isEmpty());
  save();
  EXPECT_TRUE(fs::exists(meshOf(3)));
  document_->undoStack().undo();
  EXPECT_FALSE(document_->project().scans[3].mesh);
  document_->undoStack().redo();
  save();
  settle();
}

TEST_F(WindowFiles, SaveAsOneFileKeepsItOneFile) {
  openFile(file_);
  action("Save as")->trigger();
  auto* chooser = dialog<QFileDialog>();
  ASSERT_NE(chooser, nullptr);
  auto* kinds = chooser->findChild<QComboBox*>("fileTypeCombo");
  ASSERT_NE(kinds, nullptr);
  EXPECT_EQ(kinds->count(), 2);
  QTest::keyClick(kinds, Qt::Key_Down);
  auto* name = chooser->findChild<QLineEdit*>("fileNameEdit");
  EXPECT_TRUE(name->text().endsWith("neck.zygazip")) << name->text().toStdString();
  answerFile(folder() / "packed");
  const fs::path one = folder() / "packed.zygazip";
  ASSERT_TRUE(QTest::qWaitFor([&] { return document_->path() == one; }, kPatience));
  EXPECT_TRUE(files::isContainer(one));
  messageWith("inside the project file");
  EXPECT_TRUE(window_->windowTitle().startsWith("packed.zygazip"));
  bend(0.03);
  EXPECT_TRUE(window_->isWindowModified());
  save();
  EXPECT_FALSE(window_->isWindowModified());
  const auto read = files::readProject(one);
  EXPECT_EQ(files::writeProjectText(read), files::writeProjectText(document_->project()));
  EXPECT_TRUE(read.scans[0].mesh);
  EXPECT_TRUE(part<ElidedLabel>("hintText")->text().contains("inside the project file"));
  EXPECT_TRUE(QSettings().value("files/recent").toStringList().contains(inQt(one)));
  EXPECT_TRUE(messages().filter("changed by another").isEmpty());
  action("Save as")->trigger();
  chooser = dialog<QFileDialog>();
  ASSERT_NE(chooser, nullptr);
  EXPECT_TRUE(chooser->selectedNameFilter().contains("zygazip")) << "it remembers the kind";
  chooser->reject();
}

TEST_F(WindowFiles, OneFileIsDroppedGuardedAndReadAnew) {
  const fs::path one = folder() / "packed.zygazip";
  files::saveProject(scanned_, one);
  fs::remove_all(folder() / "scans");
  drop(one);
  ASSERT_TRUE(QTest::qWaitFor([&] { return document_->path() == one; }, kPatience));
  settle();
  EXPECT_TRUE(document_->project().scans[0].mesh);
  EXPECT_FALSE(fs::exists(folder() / "scans")) << "nothing is scattered";
  auto theirs = scanned_;
  theirs.pose[joint("C6-C7")].x() = 0.07;
  files::saveProject(theirs, one);
  messageWith("changed by another");
  press(*window_, "Read it anew");
  ASSERT_TRUE(
      QTest::qWaitFor([&] { return std::abs(document_->pose()[joint("C6-C7")].x() - 0.07) < 1e-12; }, kPatience));
  settle();
}

TEST_F(WindowFiles, ADamagedOneFileCostsNothing) {
  const fs::path one = folder() / "packed.zygazip";
  files::saveProject(scanned_, one);
  fs::resize_file(one, fs::file_size(one) / 2);
  const std::string before = files::writeProjectText(document_->project());
  drop(one);
  EXPECT_THAT(messageWith("cut short or damaged"), HasSubstr(one.string()));
  EXPECT_EQ(files::writeProjectText(document_->project()), before);
}

TEST_F(WindowFiles, RecoveredWorkGoesBackIntoTheOneFileWithScansFoundThere) {
  const fs::path one = folder() / "packed.zygazip";
  files::saveProject(scanned_, one);
  closeWindow();
  // What an autosave leaves whose own folder of scans is gone, and no living program holds its lock.
  auto lost = scanned_;
  lost.pose[lost.specimen().findJoint("C6-C7").value()].x() = 0.04;
  fs::create_directories(folder() / "recovery");
  std::ofstream(folder() / "recovery" / "lost.zyga") << files::writeProjectText(lost);
  std::ofstream(folder() / "recovery" / "lost.json")
      << QJsonDocument(QJsonObject{{"specimen", "Lost"}, {"original", inQt(one)}}).toJson().toStdString();
  openWindow();
  messageWith("was not saved");
  press(*window_, "Recover");
  ASSERT_TRUE(QTest::qWaitFor([&] { return document_->path() == one; }, kPatience));
  settle();
  EXPECT_TRUE(window_->isWindowModified());
  EXPECT_TRUE(document_->project().scans[0].mesh);
  EXPECT_EQ(document_->form(), files::ProjectForm::OneFile);
  save();
  EXPECT_FALSE(window_->isWindowModified());
  EXPECT_TRUE(files::isContainer(one));
  EXPECT_NEAR(files::readProject(one).pose[joint("C6-C7")].x(), 0.04, 1e-12);
}

}  // namespace
}  // namespace zyga::ui
