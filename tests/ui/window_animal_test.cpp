#include <gmock/gmock.h>

#include <QMenu>
#include <QMenuBar>
#include <cstdlib>
#include <iostream>

#include "tests/ui/scans_fixture.h"
#include "ui/parts/elided_label.h"
#include "ui/parts/message_bar.h"
#include "ui/scans/animal_dialog.h"

// Bones before there is an animal: they make one.
namespace zyga::ui {
namespace {

using testing::AllOf;
using testing::HasSubstr;

/// A window in which nothing has been opened.
class NoAnimalYet : public ScansTest {
 protected:
  void SetUp() override {
    ScansTest::SetUp();
    fs::create_directory(folder() / "neck");
    for (const char* id : {"C5", "C6"}) files_.push_back(scanned(id, (std::string("neck/") + id + ".stl").c_str()));
    closeWindow();
    openWindow();
  }
  AnimalDialog* animalDialog() { return dialog<AnimalDialog>("animalDialog"); }

  std::vector<fs::path> files_;
};

TEST_F(NoAnimalYet, AFolderThatIsDroppedIsAskedToMakeOne) {
  ASSERT_FALSE(document_->hasProject());
  dropAll({folder() / "neck"});
  auto* asked = animalDialog();
  ASSERT_NE(asked, nullptr);
  EXPECT_EQ(asked->folder().toStdString(), (folder() / "neck").string());
  EXPECT_TRUE(asked->findChild<QPushButton*>("makeAnimal")->isEnabled());
  EXPECT_TRUE(messages().isEmpty()) << messages().join('\n').toStdString();
  press(*asked, "Make the animal");
  ASSERT_TRUE(QTest::qWaitFor([&] { return document_->hasProject(); }, kPatience));
  EXPECT_EQ(document_->project().scans.size(), 2u);
  settle();
}

TEST_F(NoAnimalYet, SingleFilesAreOfferedToMakeOneOfTheirFolder) {
  dropAll(files_);
  EXPECT_THAT(window_->findChild<MessageBar*>()->texts().join('\n').toStdString(),
              HasSubstr("Open a sample, a table or a project first"));
  press(*window_, "New animal from scans");
  auto* asked = animalDialog();
  ASSERT_NE(asked, nullptr);
  EXPECT_EQ(asked->folder().toStdString(), (folder() / "neck").string());
  QTest::keyClick(asked, Qt::Key_Escape);
  EXPECT_FALSE(document_->hasProject());
}

TEST_F(NoAnimalYet, ImportFromTheMenuAsksForAFolder) {
  QTest::keyClick(window_.get(), Qt::Key_B, Qt::ControlModifier);
  auto* asked = animalDialog();
  ASSERT_NE(asked, nullptr);
  EXPECT_TRUE(asked->folder().isEmpty());
  EXPECT_FALSE(asked->findChild<QPushButton*>("makeAnimal")->isEnabled());
  QTest::keyClick(asked, Qt::Key_Escape);
}

/// What a person does with hand and keys, counted: a click, a key, a text typed, the pointer brought to a place.
class AnimalByHand : public WindowTest {
 protected:
  void click(QWidget& widget, const QPoint& at) {
    ++actions_;
    QTest::mouseMove(&widget, at);
    QTest::mouseClick(&widget, Qt::LeftButton, {}, at);
  }
  void key(Qt::Key key) {
    ++actions_;
    QTest::keyClick(QApplication::focusWidget(), key);
  }
  void type(const QString& text) {
    ++actions_;
    QTest::keyClicks(QApplication::focusWidget(), text);
  }
  void pointAt(QWidget& widget, const QPointF& at) {
    ++actions_;
    QMouseEvent move(QEvent::MouseMove, at, widget.mapToGlobal(at), Qt::NoButton, Qt::NoButton, Qt::NoModifier);
    QApplication::sendEvent(&widget, &move);
  }
  void clickMenu(const QString& menuName, const QString& name) {
    QMenuBar& bar = *window_->menuBar();
    QAction* menuAction = action(menuName);
    ASSERT_NE(menuAction, nullptr);
    click(bar, bar.actionGeometry(menuAction).center());
    QMenu& menu = *menuAction->menu();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&menu));
    click(menu, menu.actionGeometry(action(name)).center());
  }
  static fs::path dog() {
    const char* given = std::getenv("ZYGAPOSE_DATA");
    return fs::path(given ? given : ZYGAPOSE_SHARED_DATA) / "dog";
  }

  int actions_ = 0;
};

TEST_F(AnimalByHand, FromTheMenuToTheStripOfAWholeColumnOfScans) {
  if (!fs::is_directory(dog())) GTEST_SKIP() << "the open bone data are absent: " << dog();
  clickMenu("File", "New from scans");
  auto* asked = dialog<AnimalDialog>("animalDialog");
  ASSERT_NE(asked, nullptr);
  ASSERT_TRUE(broughtForward(*asked));
  ASSERT_EQ(QApplication::focusWidget()->objectName(), "animalFolder");
  type(QString::fromStdString(dog().string()));
  key(Qt::Key_Tab);
  key(Qt::Key_Tab);
  ASSERT_EQ(QApplication::focusWidget()->objectName(), "animalPlan");
  key(Qt::Key_M);
  EXPECT_EQ(asked->plan(), anatomy::BodyPlan::Mammal);
  auto* make = asked->findChild<QPushButton*>("makeAnimal");
  ASSERT_TRUE(make->isEnabled());
  click(*make, make->rect().center());
  ASSERT_TRUE(QTest::qWaitFor([&] { return document_->project().scans.size() > 30; }, kPatience));
  settle();
  ASSERT_TRUE(QTest::qWaitFor([&] { return strip()->settled(); }, kPatience));
  ASSERT_TRUE(broughtForward(*window_));
  for (const char* id : {"C3-C4", "C4-C5", "C5-C6", "C6-C7"}) {
    const JointIndex at = joint(id);
    EXPECT_EQ(document_->assessment().find(at)->level, range::Level::Supported) << id;
    const auto column = strip()->columns().columnOf(at);
    ASSERT_TRUE(column) << id;
    const QPointF mark = strip()->markPlace(*column);
    EXPECT_TRUE(strip()->rect().contains(mark.toPoint())) << id;
    pointAt(*strip(), mark);
    const std::string told = part<ElidedLabel>("hintText")->text().toStdString();
    EXPECT_THAT(told, AllOf(HasSubstr(id), HasSubstr("within range")));
    std::cout << told << "\n";
  }
  std::cout << "from the menu to the strip: " << actions_ << " actions\n";
  EXPECT_LE(actions_, 15);
}

}  // namespace
}  // namespace zyga::ui
