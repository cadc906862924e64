#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <fstream>
#include <future>

#include "tests/ui/document_sample.h"
#include "tests/ui/patience.h"
#include "ui/commands/pose_edits.h"
#include "ui/document/autosave.h"
#include "ui/document/open_file.h"
#include "ui/document/sculpt_job.h"
#include "ui/document/worker.h"

namespace zyga::ui {
namespace {

TEST(WorkerTest, DeliversInTheWindowsThreadWithProgress) {
  Worker worker;
  QSignalSpy progress(&worker, &Worker::progress);
  QThread* thread = nullptr;
  worker.start([&](const Worker::Control& control) {
    control.task.tell(0.75);
    return [&] { thread = QThread::currentThread(); };
  });
  EXPECT_TRUE(worker.busy());
  ASSERT_TRUE(QTest::qWaitFor([&] { return !worker.busy(); }, kPatience));
  EXPECT_EQ(thread, QThread::currentThread());
  ASSERT_EQ(progress.size(), 1);
  EXPECT_EQ(progress[0][0].toDouble(), 0.75);
}

TEST(WorkerTest, DropsStaleResults) {
  Worker worker;
  std::vector<int> delivered;
  std::promise<void> gate;
  worker.start([&, open = gate.get_future().share()](const Worker::Control& control) -> Worker::Delivery {
    open.wait();
    EXPECT_TRUE(control.task.cancelled());
    return [&] { delivered.push_back(1); };
  });
  worker.start([&](const Worker::Control&) -> Worker::Delivery { return [&] { delivered.push_back(2); }; });
  gate.set_value();
  ASSERT_TRUE(QTest::qWaitFor([&] { return !worker.busy(); }, kPatience));
  worker.wait();
  QCoreApplication::processEvents();
  EXPECT_THAT(delivered, testing::ElementsAre(2));
}

TEST(WorkerTest, ShowsSomethingBeforeItIsDoneUnlessStale) {
  Worker worker;
  std::vector<int> seen;
  std::promise<void> gate;
  worker.start([&, open = gate.get_future().share()](const Worker::Control& control) -> Worker::Delivery {
    control.show([&] { seen.push_back(1); });
    open.wait();
    control.show([&] { seen.push_back(2); });
    return [&] { seen.push_back(3); };
  });
  ASSERT_TRUE(QTest::qWaitFor([&] { return !seen.empty(); }, kPatience));
  EXPECT_TRUE(worker.busy());
  worker.start([&](const Worker::Control&) -> Worker::Delivery { return [&] { seen.push_back(4); }; });
  gate.set_value();
  ASSERT_TRUE(QTest::qWaitFor([&] { return !worker.busy(); }, kPatience));
  worker.wait();
  QCoreApplication::processEvents();
  EXPECT_THAT(seen, testing::ElementsAre(1, 4));
}

/// The root and what hangs next to it: an animal that is sculpted in no time.
files::Project threeBones() {
  files::Project project = sampleProject();
  anatomy::Specimen specimen = project.specimen();
  specimen.bones.resize(3);
  std::erase_if(specimen.joints, [](const anatomy::Joint& j) { return j.proximal.value >= 3 || j.distal.value >= 3; });
  project.setSpecimen(std::move(specimen));
  project.pose = kinematics::Pose::neutral(project.specimen());
  return project;
}

TEST(SculptJobTest, ShowsARoughLikenessFirstAndNothingRoughIsKept) {
  QTemporaryDir folder;
  Document document;
  SculptJob job(document, folder.path().toStdString());
  std::size_t rough = 0, fine = 0;
  QObject::connect(&document, &Document::changed, [&](Changes what) {
    if (what != Changes(Change::Meshes)) return;
    const bool done = !document.meshes().empty();
    std::size_t& triangles = done ? fine : rough;
    for (const auto& bone : document.meshesToShow())
      if (bone) triangles += bone->levels.front().triangles.size();
  });
  document.open(threeBones(), {});
  EXPECT_TRUE(document.meshesToShow().empty());
  ASSERT_TRUE(QTest::qWaitFor([&] { return !job.busy(); }, kPatience));
  EXPECT_GT(rough, 0u);
  EXPECT_GT(fine, 2 * rough);
  const std::size_t first = fine;
  rough = fine = 0;
  document.open(threeBones(), {});
  EXPECT_TRUE(document.meshesToShow().empty()) << "another animal is open";
  ASSERT_TRUE(QTest::qWaitFor([&] { return !job.busy(); }, kPatience));
  EXPECT_EQ(rough, 0u) << "all bones were kept";
  EXPECT_EQ(fine, first);
}

TEST(WorkerTest, TellsWhatWentWrong) {
  Worker worker;
  QString told;
  worker.start([](const Worker::Control&) -> Worker::Delivery { throw std::runtime_error("the disk is full"); },
               [&](const QString& message) { told = message; });
  ASSERT_TRUE(QTest::qWaitFor([&] { return !worker.busy(); }, kPatience));
  EXPECT_EQ(told, "the disk is full");
}

TEST(WorkerTest, CancelledWorkDeliversNothing) {
  Worker worker;
  bool delivered = false;
  worker.start([&](const Worker::Control& control) -> Worker::Delivery {
    while (!control.task.cancelled()) std::this_thread::yield();
    return [&] { delivered = true; };
  });
  worker.cancel();
  EXPECT_FALSE(worker.busy());
  worker.wait();
  QCoreApplication::processEvents();
  EXPECT_FALSE(delivered);
}

class FilesTest : public testing::Test {
 protected:
  std::filesystem::path write(const char* name, const char* text) {
    const std::filesystem::path path = folder_.filePath(name).toStdString();
    std::ofstream(path) << text;
    return path;
  }
  std::filesystem::path folder() const { return folder_.path().toStdString(); }

  QTemporaryDir folder_;
};

TEST_F(FilesTest, OpensProjectAndTable) {
  const std::filesystem::path path = folder() / "a.zyga";
  files::saveProject(sampleProject(), path);
  EXPECT_TRUE(openFile(path).project);

  const Opened fromTable = openFile(write("neck.csv", "bone,length [mm]\nC6,691\n"));
  ASSERT_TRUE(fromTable.project) << reason::debugText(fromTable.fault);
  EXPECT_TRUE(fromTable.fromTable);
  const auto c6 = fromTable.project->specimen().findBone("C6");
  EXPECT_NEAR(fromTable.project->specimen()[*c6].measures.value(anatomy::Measure::Length), 0.691, 1e-9);
}

TEST_F(FilesTest, ReportsEveryFaultOfATable) {
  const Opened opened = openFile(write("bad.csv", "bone,length [mm]\nC6,abc\nC99x,12\n"));
  EXPECT_FALSE(opened.project);
  ASSERT_GE(opened.messages.size(), 2u);
  EXPECT_EQ(opened.messages[0].line, 2);
  EXPECT_EQ(opened.messages[1].line, 3);
}

TEST_F(FilesTest, MissingOrBrokenFilesGiveAReason) {
  EXPECT_FALSE(openFile(folder() / "absent.zyga").fault.empty());
  EXPECT_FALSE(openFile(folder() / "absent.csv").fault.empty());
  EXPECT_FALSE(openFile(write("broken.zyga", "{\"zyg")).fault.empty());
}

class AutosaveTest : public FilesTest {
 protected:
  void SetUp() override {
    document_.open(sampleProject(), "/somewhere/neck.zyga");
    recovery_ = folder() / "recovery";
  }
  QStringList kept() const {
    return QDir(QString::fromStdString(recovery_.string())).entryList({"*.zyga"}, QDir::Files);
  }
  /// What a program leaves that was killed: its files, and a lock whose owner no longer runs.
  void leaveBehind(Autosave& autosave) {
    QSignalSpy written(&autosave, &Autosave::written);
    autosave.write();
    ASSERT_TRUE(written.wait());
    ended_.start("true", QStringList());
    const qint64 pid = ended_.processId();
    ended_.waitForFinished();
    const QDir source(QString::fromStdString(recovery_.string()));
    for (const QString& name : source.entryList(QDir::Files))
      if (!name.endsWith(".lock")) QFile::copy(source.filePath(name), source.filePath("dead" + name.mid(36)));
    QFile lock(source.filePath("dead.lock"));
    ASSERT_TRUE(lock.open(QIODevice::WriteOnly));
    lock.write(QByteArray::number(pid) + "\nzygapose\n" + QSysInfo::machineHostName().toUtf8() + "\n");
  }

  Document document_;
  std::filesystem::path recovery_;
  QProcess ended_;
};

TEST_F(AutosaveTest, KeepsUnsavedWorkUntilItIsSaved) {
  Autosave autosave(document_, recovery_);
  autosave.write();
  EXPECT_TRUE(kept().empty());

  addNamedPose(document_, "Alert");
  QSignalSpy written(&autosave, &Autosave::written);
  autosave.write();
  ASSERT_TRUE(written.wait());
  ASSERT_EQ(kept().size(), 1);
  const auto file = recovery_ / kept().first().toStdString();
  EXPECT_EQ(files::readProject(file).poses.back().name, "Alert");

  document_.setSavedAs("/somewhere/neck.zyga");
  EXPECT_TRUE(kept().empty());
}

TEST_F(AutosaveTest, WritesByItself) {
  Autosave autosave(document_, recovery_);
  autosave.setInterval(20);
  QSignalSpy written(&autosave, &Autosave::written);
  addNamedPose(document_, "Alert");
  EXPECT_TRUE(written.wait());
}

TEST_F(AutosaveTest, OffersTheWorkOfADeadProgramOnly) {
  addNamedPose(document_, "Alert");
  Autosave running(document_, recovery_);
  leaveBehind(running);

  Document other;
  const Autosave next(other, recovery_);
  const auto leftovers = next.leftovers();
  ASSERT_EQ(leftovers.size(), 1u);
  EXPECT_EQ(leftovers[0].file.filename(), "dead.zyga");
  EXPECT_EQ(leftovers[0].name, "Test animal");
  EXPECT_EQ(leftovers[0].original, "/somewhere/neck.zyga");
  Autosave::discard(leftovers[0]);
  EXPECT_TRUE(next.leftovers().empty());
}

TEST_F(AutosaveTest, RecoveredWorkIsKeptUnderTheNewProgram) {
  addNamedPose(document_, "Alert");
  {
    Autosave killed(document_, recovery_);
    leaveBehind(killed);
    killed.discard();
  }
  Document next;
  Autosave autosave(next, recovery_);
  const auto leftovers = autosave.leftovers();
  ASSERT_EQ(leftovers.size(), 1u);
  next.open(files::readProject(leftovers[0].file), leftovers[0].original);
  next.undoStack().resetClean();
  EXPECT_TRUE(next.hasUnsavedWork());
  QSignalSpy written(&autosave, &Autosave::written);
  autosave.takeOver(leftovers[0]);
  ASSERT_TRUE(written.wait());
  ASSERT_EQ(kept().size(), 1);
  EXPECT_NE(kept().first(), "dead.zyga");
}

}  // namespace
}  // namespace zyga::ui
