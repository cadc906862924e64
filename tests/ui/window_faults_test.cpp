#include <gmock/gmock.h>
#include <signal.h>
#include <sys/resource.h>
#include <unistd.h>

#include <QMessageBox>
#include <QProcess>
#include <sstream>

#include "tests/ui/patience.h"
#include "tests/ui/window_fixture.h"

// Mishaps: at each, the person is told what happened and has lost nothing.
namespace zyga::ui {
namespace {

using testing::AllOf;
using testing::HasSubstr;

/// Files written meanwhile cannot grow past a page: what a full disk looks like from inside.
class FullDisk {
 public:
  FullDisk() {
    former_ = signal(SIGXFSZ, SIG_IGN);
    getrlimit(RLIMIT_FSIZE, &before_);
    const rlimit full{4096, before_.rlim_max};
    setrlimit(RLIMIT_FSIZE, &full);
  }
  ~FullDisk() {
    setrlimit(RLIMIT_FSIZE, &before_);
    signal(SIGXFSZ, former_);
  }

 private:
  rlimit before_{};
  sighandler_t former_;
};

/// Root may write anywhere; nobody may not.
class AsNobody {
 public:
  AsNobody() : root_(geteuid() == 0) { EXPECT_TRUE(!root_ || setresuid(65534, 65534, 0) == 0); }
  ~AsNobody() { EXPECT_TRUE(!root_ || setresuid(0, 0, 0) == 0); }

 private:
  bool root_;
};

class WindowFaults : public WindowTest {
 protected:
  void SetUp() override {
    WindowTest::SetUp();
    file_ = folder() / "neck.zyga";
    action("Save as")->trigger();
    answerFile(file_);
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return !window_->isWindowModified() && std::filesystem::exists(file_); }, kPatience));
  }
  static std::string bytes(const std::filesystem::path& path) {
    std::ostringstream out;
    out << std::ifstream(path, std::ios::binary).rdbuf();
    return out.str();
  }
  void bend(double angle) {
    kinematics::Pose pose = document_->pose();
    pose[joint("C6-C7")].x() = angle;
    document_->changePose(pose, "Bend");
  }
  double bentIn(const std::filesystem::path& file) const {
    const auto project = files::readProject(file);
    return project.pose[project.specimen().findJoint("C6-C7").value()].x();
  }
  /// What another program leaves in our file.
  void changeOutside(double angle) {
    auto project = document_->project();
    project.pose[joint("C6-C7")].x() = angle;
    files::saveProject(project, file_);
  }
  void save() { QTest::keyClick(window_.get(), Qt::Key_S, Qt::ControlModifier); }
  std::string waitForMessage(const char* words) {
    const auto said = [&] { return !messages().filter(words).isEmpty(); };
    EXPECT_TRUE(QTest::qWaitFor(said, kPatience)) << words << " is not among: " << messages().join('\n').toStdString();
    return said() ? messages().filter(words).first().toStdString() : "";
  }

  std::filesystem::path file_;
};

TEST_F(WindowFaults, AFullDiskLeavesTheOldFileAndTheWork) {
  const std::string before = bytes(file_);
  bend(0.05);
  {
    const FullDisk full;
    save();
    EXPECT_THAT(waitForMessage("cannot save"), AllOf(HasSubstr(file_.string()), HasSubstr("the old file")));
  }
  EXPECT_EQ(bytes(file_), before);
  EXPECT_TRUE(window_->isWindowModified()) << "the work is still only here";
  save();
  EXPECT_FALSE(window_->isWindowModified());
  EXPECT_NEAR(bentIn(file_), 0.05, 1e-12);
}

TEST_F(WindowFaults, AnExportOntoAFullDiskLeavesNothingHalfMade) {
  action("Export meshes")->trigger();
  auto* options = dialog("exportDialog");
  ASSERT_NE(options, nullptr);
  press(*options, "Choose a file");
  {
    const FullDisk full;
    answerFile(folder() / "posed.glb");
    EXPECT_THAT(waitForMessage("was not written"), HasSubstr("posed.glb"));
  }
  EXPECT_FALSE(std::filesystem::exists(folder() / "posed.glb"));
  for (const auto& entry : std::filesystem::directory_iterator(folder()))
    EXPECT_THAT(entry.path().filename().string(), testing::AnyOf("neck.zyga", "recovery"));
}

TEST_F(WindowFaults, AFolderThatMayNotBeWrittenIsToldAndAnotherIsOffered) {
  namespace fs = std::filesystem;
  bend(0.05);
  fs::permissions(folder(), fs::perms(0555));
  {
    const AsNobody nobody;
    save();
    EXPECT_THAT(waitForMessage("cannot save"), AllOf(HasSubstr(file_.string()), HasSubstr("you may not write")));
  }
  fs::permissions(folder(), fs::perms::owner_all);
  EXPECT_TRUE(window_->isWindowModified());
  EXPECT_EQ(bentIn(file_), 0);
  press(*window_, "Save as");
  auto* other = dialog<QFileDialog>();
  ASSERT_NE(other, nullptr) << "the message offers another place";
  other->reject();
  save();
  EXPECT_FALSE(window_->isWindowModified());
  EXPECT_NEAR(bentIn(file_), 0.05, 1e-12);
}

TEST_F(WindowFaults, AFileThatIsTakenAwayIsToldAndWrittenAnew) {
  std::filesystem::remove(file_);
  EXPECT_THAT(waitForMessage("moved or deleted"), HasSubstr("neck.zyga"));
  EXPECT_TRUE(window_->isWindowModified()) << "no file holds it any longer";
  press(*window_, "Save");
  ASSERT_TRUE(QTest::qWaitFor([&] { return std::filesystem::exists(file_); }, kPatience));
  EXPECT_EQ(bytes(file_), files::writeProjectText(document_->project()));
  EXPECT_FALSE(window_->isWindowModified());
}

TEST_F(WindowFaults, AFileChangedUnderneathIsReadAnewWhenAsked) {
  changeOutside(0.07);
  EXPECT_THAT(waitForMessage("changed by another"), HasSubstr("neck.zyga"));
  EXPECT_EQ(document_->pose()[joint("C6-C7")].x(), 0) << "nothing moves by itself";
  press(*window_, "Read it anew");
  ASSERT_TRUE(
      QTest::qWaitFor([&] { return std::abs(document_->pose()[joint("C6-C7")].x() - 0.07) < 1e-12; }, kPatience));
  EXPECT_FALSE(window_->isWindowModified());
}

TEST_F(WindowFaults, SavingOverAChangedFileAsksFirst) {
  changeOutside(0.07);
  bend(0.05);
  save();
  auto* question = dialog<QMessageBox>("changedElsewhere");
  ASSERT_NE(question, nullptr);
  press(*question, "Go back");
  EXPECT_NEAR(bentIn(file_), 0.07, 1e-12) << "theirs is untouched";
  EXPECT_TRUE(window_->isWindowModified());
  ASSERT_TRUE(
      QTest::qWaitFor([&] { return window_->findChild<QMessageBox*>("changedElsewhere") == nullptr; }, kPatience));
  save();
  question = dialog<QMessageBox>("changedElsewhere");
  ASSERT_NE(question, nullptr);
  press(*question, "Replace it");
  ASSERT_TRUE(QTest::qWaitFor([&] { return !window_->isWindowModified(); }, kPatience));
  EXPECT_NEAR(bentIn(file_), 0.05, 1e-12);
}

TEST_F(WindowFaults, TwoWindowsOnOneProjectKnowOfEachOther) {
  Document other;
  MainWindow second(other, WindowFolders{boneCache(), folder() / "recovery"});
  second.open(QString::fromStdString(file_.string()));
  ASSERT_TRUE(QTest::qWaitFor([&] { return other.hasProject(); }, kPatience));
  const auto told = [&] {
    QStringList texts;
    for (const auto* label : second.findChildren<QLabel*>("messageText")) texts += label->text();
    return texts;
  };
  EXPECT_EQ(told().filter("open in another window").size(), 1) << told().join('\n').toStdString();
  bend(0.05);
  save();
  EXPECT_FALSE(window_->isWindowModified());
  EXPECT_TRUE(QTest::qWaitFor([&] { return !told().filter("was changed by another").isEmpty(); }, kPatience));
  EXPECT_TRUE(other.hasUnsavedWork()) << "what the second shows is in no file";
  other.undoStack().setClean();
}

TEST_F(WindowFaults, ALostGraphicsContextIsMadeAnew) {
  const QImage before = viewport()->grabPicture();
  auto* const former = viewport()->context();
  ASSERT_NE(former, nullptr);
  bool gone = false;
  QObject::connect(former, &QObject::destroyed, [&gone] { gone = true; });
  viewport()->startGraphicsAnew();
  ASSERT_TRUE(QTest::qWaitFor([&] { return gone && viewport()->isValid(); }, kPatience));
  ASSERT_TRUE(QTest::qWaitFor([&] { return viewport()->grabPicture().size() == before.size(); }, kPatience));
  EXPECT_EQ(viewport()->grabPicture(), before);
  bend(0.3);
  EXPECT_NE(viewport()->grabPicture(), before) << "it goes on drawing";
}

TEST_F(WindowFaults, AKilledProgramsWorkComesBack) {
  closeWindow();
  const QString recovery = QString::fromStdString((folder() / "recovery").string());
  QProcess victim;
  victim.start(ZYGAPOSE_KILLED_WINDOW, {sample(), recovery});
  QByteArray told;
  ASSERT_TRUE(QTest::qWaitFor(
      [&] {
        told += victim.readAllStandardOutput();
        return told.contains("kept") || victim.state() == QProcess::NotRunning;
      },
      kPatience));
  ASSERT_TRUE(told.contains("kept")) << victim.readAllStandardError().toStdString();
  openWindow();
  EXPECT_TRUE(messages().filter("was not saved").isEmpty()) << "its owner still runs";
  closeWindow();

  victim.kill();
  ASSERT_TRUE(victim.waitForFinished());
  openWindow();
  EXPECT_EQ(messages().filter("was not saved").size(), 1);
  press(*window_, "Recover");
  settle();
  EXPECT_NEAR(document_->pose()[joint("C6-C7")].x(), 0.05, 1e-12);
  EXPECT_TRUE(window_->isWindowModified());
}

}  // namespace
}  // namespace zyga::ui
