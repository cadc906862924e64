#include <QDialog>
#include <QFileDialog>
#include <QTimer>
#include <map>

#include "core/anatomy/specimen.h"
#include "tests/support/marked_language.h"
#include "tests/ui/window_fixture.h"

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

/// Sentences that are known to lack a translation; this list only shrinks. ZYGAPOSE_LIST_UNMARKED=FILE writes what is
/// there now.
QStringList left() {
  std::ifstream in(ZYGAPOSE_SOURCE_DIR "/tests/ui/unmarked_left.txt");
  QStringList lines;
  for (std::string line; std::getline(in, line);)
    if (!line.empty() && line[0] != '#') lines += QString::fromStdString(line);
  return lines;
}

class WindowInAMarkedLanguage : public WindowTest {
 protected:
  void SetUp() override {
    language_ = std::make_unique<test::MarkedLanguage>();
    WindowTest::SetUp();
  }
  void TearDown() override {
    WindowTest::TearDown();
    language_.reset();
  }

  void openSample(const char* name) {
    window_->open(QString(ZYGAPOSE_SOURCE_DIR "/samples/%1").arg(name));
    settle();
    document_->selectJoint(joint("C6-C7"));
    kinematics::Pose pose = document_->pose();
    pose[joint("C6-C7")] = {0.5, 0.2, 0.1};
    pose[joint("knee.L")].x() = -2;
    document_->changePose(pose, "Typed by a person");
    settle();
  }

  /// Ids, files, units, keys and names that people typed are the same in every language.
  bool exempt(const QString& word) const {
    static const QStringList known{
        "Zygapose", "zygapose", "English", "mm",    "cm",   "km",    "kg",   "kN",        "Nm",  "mmHg",  "kPa",
        "px",       "dpi",      "Ctrl",    "Shift", "Alt",  "Esc",   "Del",  "PDF",       "SVG", "PNG",   "JSON",
        "CSV",      "GLB",      "glTF",    "OBJ",   "STL",  "PLY",   "HTML", "Backspace", "Tab", "Space", "Home",
        "PgUp",     "PgDown",   "Return",  "Enter", "Left", "Right", "Up",   "Down",      "Ins"};
    static const QRegularExpression id(R"(^[A-Za-z]+\d+.*|^\d+[A-Za-z]*$|^F\d+$|.*\.[LR](-.*)?$)");
    static const QRegularExpression file(
        R"(.*[/\\].*|.*\.(zyga|csv|ply|obj|stl|glb|gltf|pdf|svg|png|json|html|txt)\d*$)");
    if (known.contains(word) || id.match(word).hasMatch() || file.match(word).hasMatch()) return true;
    for (const QString& part : word.split('-'))
      if (!names().contains(part)) return word.contains('+') && known.contains(word.section('+', 0, 0));
    return true;
  }
  /// Of bones, joints, samples, the animal and its sources, and what the test has typed, word by word.
  QStringList names() const {
    QStringList out{"Typed", "by", "a", "person", "High", "Low", "browser", "neutral", "standing",
                    // what the broken table says, cited work, and a language by its own name
                    "abc", "guessed", "nothing", "cervicals", "Mallison", "Palaeontol.", "Palaeontol", "Electron.",
                    "Electron", QString::fromUtf8("简体中文")};
    const anatomy::Specimen& specimen = document_->specimen();
    const auto add = [&](const std::string& name) {
      out += QString::fromStdString(name).split(QRegularExpression("[^A-Za-z0-9.]+"), Qt::SkipEmptyParts);
    };
    for (const auto& bone : specimen.bones) {
      add(bone.id);
      add(bone.source);
    }
    for (const auto& each : specimen.joints) add(each.id);
    add(specimen.name);
    return out;
  }

  void look(QWidget& window) {
    test::Texts texts;
    texts.addWindow(window);
    found_ += test::unmarkedTexts(texts, [this](const QString& word) { return exempt(word); });
  }
  void lookAtEveryDock() {
    for (QDockWidget* dock : window_->findChildren<QDockWidget*>()) {
      dock->show();
      dock->raise();
      QCoreApplication::processEvents();
      look(*window_);
    }
  }
  void lookAtEveryMenu() {
    for (QMenu* menu : window_->findChildren<QMenu*>()) {
      emit menu->aboutToShow();
      test::Texts texts;
      for (const QAction* action : menu->actions()) texts.addAction(*action);
      found_ += test::unmarkedTexts(texts, [this](const QString& word) { return exempt(word); });
    }
  }

  /// Triggers what opens a dialog, looks at it and sends it away. How many came.
  int lookAtEveryDialog() {
    QList<QAction*> opening;
    for (QAction* action : window_->findChildren<QAction*>())
      if (action->isEnabled() && test::outsideMarks(action->text()).isEmpty() && action->text().contains(QChar(0x2026)))
        opening += action;
    int came = 0;
    for (const QPointer<QAction> action : opening) {
      if (!action) continue;
      const bool there = lookAtWhatOpens(*action);
      came += there;
      settle();
    }
    return came;
  }
  bool lookAtWhatOpens(QAction& action) {
    int seen = 0;
    QTimer watch;  // also while a dialog runs its own loop
    QObject::connect(&watch, &QTimer::timeout, &watch, [&] {
      for (QWidget* widget : QApplication::topLevelWidgets()) {
        auto* dialog = qobject_cast<QDialog*>(widget);
        if (!dialog || !dialog->isVisible()) continue;
        QCoreApplication::processEvents();
        // What the toolkit's own file dialog lists is the disk's.
        if (!qobject_cast<QFileDialog*>(dialog)) look(*dialog);
        ++seen;
        dialog->reject();
      }
    });
    watch.start(50);
    action.trigger();
    const bool came = QTest::qWaitFor([&] { return seen > 0; }, kMoment);
    return came;
  }

  void expectAllMarked(const char* place) {
    found_.removeDuplicates();
    found_.sort();
    if (const QByteArray list = qgetenv("ZYGAPOSE_LIST_UNMARKED"); !list.isEmpty()) {
      std::ofstream out(list.toStdString(), std::ios::app);
      for (const QString& text : found_) out << text.toStdString() << '\n';
    }
    const QStringList known = left();
    QStringList fresh;
    for (const QString& text : found_)
      if (!known.contains(text)) fresh += text;
    EXPECT_EQ(fresh.join('\n').toStdString(), "") << place;
  }

  std::unique_ptr<test::MarkedLanguage> language_;
  QStringList found_;
};

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
    QObject::connect(&watch, &QTimer::timeout, &watch, [&] {
      for (QWidget* widget : QApplication::topLevelWidgets())
        if (auto* dialog = qobject_cast<QDialog*>(widget); dialog && dialog->isVisible()) {
          look(*dialog);
          dialog->reject();
        }
    });
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
