#include <map>

#include "tests/ui/marked_window.h"

// Every word that a person sees has gone through a translation, so that another language is complete by the same list.
namespace zyga::ui {
namespace {

TEST(MarkedLanguage, MarksWhatIsTranslatedAndNotWhatIsFilledIn) {
  const auto nothing = [](const QString&) { return false; };
  const test::MarkedLanguage language;
  const QString form = QCoreApplication::translate("words", "%1 moves <b>with</b> %2.");
  EXPECT_EQ(test::unmarkedWords(form.arg("12", "3 %"), nothing), QStringList());
  EXPECT_EQ(test::unmarkedWords(form.arg("the neck", "C6"), nothing), QStringList({"the", "neck"}));
  EXPECT_EQ(test::unmarkedWords(form.arg(QCoreApplication::translate("words", "the neck"), "5"), nothing),
            QStringList());
  EXPECT_EQ(test::unmarkedWords(QCoreApplication::translate("words", "%n joints", nullptr, 4), nothing), QStringList());
  EXPECT_EQ(test::unmarkedWords("Save", nothing), QStringList("Save"));
}

TEST_F(WindowInAMarkedLanguage, PanelsOfBothSamplesSayNothingElse) {
  for (const char* sample : {"high_browser.csv", "low_browser.csv"}) {
    openSample(sample);
    lookAtEveryDock();
  }
  expectAllMarked("panels");
}

TEST_F(WindowInAMarkedLanguage, MenusSayNothingElse) {
  openSample("high_browser.csv");
  lookAtEveryMenu();
  expectAllMarked("menus");
}

TEST_F(WindowInAMarkedLanguage, DialogsSayNothingElse) {
  openSample("high_browser.csv");
  EXPECT_GE(lookAtEveryDialog(), 8);
  expectAllMarked("dialogs");
}

TEST_F(WindowInAMarkedLanguage, MessagesOnBrokenFilesSayNothingElse) {
  const std::map<const char*, const char*> broken{
      {"empty.csv", ""},
      {"holes.csv", "# specimen: Hopeful\n# plan: nothing\nbone,length (mm),evidence,source\nC99,abc,guessed,\n,1,,\n"},
      {"cut.zyga", "{\"zygapose\": 1, \"specimen\": {"},
      {"other.txt", "a letter"}};
  for (const auto& [name, text] : broken) {
    openSample("high_browser.csv");
    QTimer watch;
    QObject::connect(&watch, &QTimer::timeout, &watch, [this] { lookAtOpenDialogs(); });
    watch.start(50);
    window_->open(QString::fromStdString(write(name, text).string()));
    settle();
    QTest::qWait(200);
    look(*window_);
  }
  expectAllMarked("messages");
}

}  // namespace
}  // namespace zyga::ui
