#include <gmock/gmock.h>

#include <QCheckBox>
#include <QClipboard>
#include <QSignalSpy>

#include "tests/ui/patience.h"
#include "tests/ui/widgets_seen.h"
#include "tests/ui/window_fixture.h"
#include "ui/dialogs/preferences_dialog.h"
#include "ui/settings/preferences.h"

// For every person: names for those who hear the window, large text, high contrast, and the keyboard alone.
namespace zyga::ui {
namespace {

class WindowForEveryone : public WindowTest {
 protected:
  void TearDown() override {
    WindowTest::TearDown();
    ThemeSwitch::instance().apply(*qApp, Scheme::Light);
  }
  void look(int textPercent, Scheme scheme, bool contrast = false) {
    closeWindow();
    Look wanted(scheme);
    wanted.textPercent = textPercent;
    wanted.highContrast = contrast;
    ThemeSwitch::instance().apply(*qApp, wanted);
    openWindow();
    window_->open(sample());
    settle();
  }
  /// Brings every panel to the front in turn, unfolded, with a joint chosen, and looks at what can be read.
  QStringList clippedAnywhere() {
    document_->selectJoint(joint("C6-C7"));
    QStringList found;
    for (QDockWidget* dock : window_->findChildren<QDockWidget*>()) {
      dock->raise();
      QStringList here;
      const auto readable = [&] {  // once the layout has come to rest
        here = clipped(*window_);
        if (dock->visibleRegion().isEmpty()) here += dock->objectName() + " does not come to the front";
        return here.isEmpty();
      };
      if (!QTest::qWaitFor(readable, kMoment)) found += here;
    }
    found.removeDuplicates();
    return found;
  }
  void key(int key, Qt::KeyboardModifiers modifiers = {}) {
    QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : window_.get(),
                    static_cast<Qt::Key>(key), modifiers);
  }
  /// F6 until the panel that holds this has the focus.
  bool goTo(const QWidget* panel) {
    for (int i = 0; i < 24; ++i) {
      QWidget* focus = QApplication::focusWidget();
      if (focus && (focus == panel || panel->isAncestorOf(focus))) return true;
      key(Qt::Key_F6);
      QCoreApplication::processEvents();
    }
    return false;
  }
};

TEST_F(WindowForEveryone, EveryControlHasAName) {
  document_->selectJoint(joint("C6-C7"));
  EXPECT_EQ(nameless(*window_).join('\n').toStdString(), "");
}

TEST_F(WindowForEveryone, UsualTextIsNotClipped) { EXPECT_EQ(clippedAnywhere().join('\n').toStdString(), ""); }

TEST_F(WindowForEveryone, TextOfOneAndAHalfIsNotClipped) {
  look(150, Scheme::Light);
  EXPECT_EQ(clippedAnywhere().join('\n').toStdString(), "");
}

TEST_F(WindowForEveryone, TextOfTwiceTheSizeIsNotClippedInTheDark) {
  look(200, Scheme::Dark);
  EXPECT_LE(window_->width(), 1280);
  EXPECT_LE(window_->height(), 800);
  EXPECT_GE(viewport()->width(), 320) << "the animal keeps its room";
  EXPECT_EQ(clippedAnywhere().join('\n').toStdString(), "");
}

TEST_F(WindowForEveryone, HighContrastIsChosenInTheSettings) {
  action("Settings")->trigger();
  auto* settings = dialog<PreferencesDialog>();
  ASSERT_NE(settings, nullptr);
  QTest::keyClick(settings->findChild<QCheckBox*>("contrast"), Qt::Key_Space);
  press(*settings, "Apply");
  EXPECT_TRUE(QTest::qWaitFor([] { return theme().highContrast; }, kPatience));
  EXPECT_TRUE(Preferences::read().look.highContrast);
  EXPECT_EQ(qApp->palette().color(QPalette::Window), QColor(Qt::white));
}

TEST_F(WindowForEveryone, AnotherSizeOfTextAsksForAnotherWindowOnTheSameDocument) {
  kinematics::Pose pose = document_->pose();
  pose[joint("C6-C7")].x() = 0.05;
  document_->changePose(pose, "Bend");
  QSignalSpy asked(window_.get(), &MainWindow::anotherWindowAsked);
  action("Settings")->trigger();
  auto* settings = dialog<PreferencesDialog>();
  ASSERT_NE(settings, nullptr);
  auto* size = settings->findChild<QComboBox*>("textSize");
  size->setFocus();
  QTest::keyClick(size, Qt::Key_Down);
  press(*settings, "Apply");
  ASSERT_EQ(asked.size(), 1);
  ASSERT_EQ(Preferences::read().look.textPercent, 125);
  const QString before = part<QLabel>("lengths")->text();
  window_->putAway();
  window_.reset();
  ThemeSwitch::instance().apply(*qApp, Preferences::read().look);
  window_ = std::make_unique<MainWindow>(*document_, WindowFolders{boneCache(), folder() / "recovery"});
  window_->show();
  settle();
  EXPECT_EQ(part<QLabel>("lengths")->text(), before);
  EXPECT_TRUE(window_->isWindowModified());
  EXPECT_TRUE(messages().isEmpty()) << messages().join('\n').toStdString();
  action("Undo:")->trigger();
  EXPECT_EQ(document_->pose()[joint("C6-C7")].x(), 0);
}

TEST_F(WindowForEveryone, FirstStepsAreShownUntilSentAway) {
  EXPECT_EQ(part<QWidget>("firstSteps"), nullptr) << "the settings of these tests send them away";
  closeWindow();
  QSettings().setValue("hints/shown", true);
  openWindow();
  auto* steps = part<QWidget>("firstSteps");
  ASSERT_NE(steps, nullptr);
  EXPECT_TRUE(steps->isVisible());
  const QString first = part<QLabel>("firstStepsText")->text();
  QTest::mouseClick(part<QPushButton>("firstStepsNext"), Qt::LeftButton);
  EXPECT_NE(part<QLabel>("firstStepsText")->text(), first);
  QTest::mouseClick(part<QWidget>("firstStepsAway"), Qt::LeftButton);
  EXPECT_TRUE(QTest::qWaitFor([this] { return part<QWidget>("firstSteps") == nullptr; }, kPatience));
  closeWindow();
  openWindow();
  EXPECT_EQ(part<QWidget>("firstSteps"), nullptr);
}

// The main job without a mouse, at twice the text in the dark: find a bone, bend its joint past its range, read why,
// take it back, keep the pose under a name, save.
TEST_F(WindowForEveryone, TheKeyboardAloneDoesTheJob) {
  look(200, Scheme::Dark);
  key(Qt::Key_F, Qt::ControlModifier);
  auto* search = qobject_cast<QLineEdit*>(QApplication::focusWidget());
  ASSERT_NE(search, nullptr);
  QTest::keyClicks(search, "C6");
  key(Qt::Key_Down);
  key(Qt::Key_Return);
  ASSERT_TRUE(goTo(strip()));
  if (document_->selectedJoint() != joint("C6-C7")) document_->selectJoint(joint("C6-C7"));
  for (int i = 0; i < 60 && findings().isEmpty(); ++i) key(Qt::Key_Up, Qt::ShiftModifier);
  ASSERT_FALSE(findings().isEmpty());
  ASSERT_TRUE(goTo(part<QWidget>("findingsDock")));
  key(Qt::Key_Home);
  EXPECT_TRUE(document_->selectedJoint().has_value());
  key(Qt::Key_Z, Qt::ControlModifier);
  key(Qt::Key_D, Qt::ControlModifier);
  EXPECT_FALSE(document_->project().poses.empty());
  key(Qt::Key_S, Qt::ControlModifier);
  auto* save = dialog<QFileDialog>();
  ASSERT_NE(save, nullptr);
  ASSERT_TRUE(broughtForward(*save));
  auto* name = save->findChild<QLineEdit*>("fileNameEdit");
  ASSERT_TRUE(QTest::qWaitFor([&] { return name && QApplication::focusWidget() == name; }, kPatience))
      << "the name can be typed";
  QTest::keyClick(name, Qt::Key_A, Qt::ControlModifier);
  QTest::keyClicks(name, QString::fromStdString((folder() / "keys.zyga").string()));
  QTest::keyClick(name, Qt::Key_Return);
  EXPECT_TRUE(QTest::qWaitFor([&] { return std::filesystem::exists(folder() / "keys.zyga"); }, kPatience));
}

}  // namespace
}  // namespace zyga::ui
