#pragma once

#include <QDialog>
#include <QFileDialog>
#include <QPointer>
#include <QSet>
#include <QTimer>

#include "core/anatomy/specimen.h"
#include "tests/support/painted_text.h"
#include "tests/ui/window_fixture.h"

namespace zyga::ui {

/// The window in a language in which every translated word is marked.
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
  static bool exempt(const QString& word, const QSet<QString>& names) {
    static const QStringList known{
        "Zygapose", "zygapose", "English", "mm",     "cm",    "km",   "kg",    "kN",   "Nm",        "mmHg", "kPa",
        "MPa",      "px",       "dpi",     "Ctrl",   "Shift", "Alt",  "Esc",   "Del",  "PDF",       "SVG",  "PNG",
        "JSON",     "CSV",      "GLB",     "glTF",   "OBJ",   "STL",  "PLY",   "HTML", "Backspace", "Tab",  "Space",
        "Home",     "PgUp",     "PgDown",  "Return", "Enter", "Left", "Right", "Up",   "Down",      "Ins"};
    static const QRegularExpression id(R"(^[A-Za-z]+\d+.*|^\d+[A-Za-z]*$|^F\d+$|.*\.[LR](-.*)?$)");
    static const QRegularExpression file(
        R"(.*[/\\].*|.*\.(zyga|csv|ply|obj|stl|glb|gltf|pdf|svg|png|json|html|txt)\d*$)");
    if (known.contains(word) || id.match(word).hasMatch() || file.match(word).hasMatch()) return true;
    for (const QString& part : word.split('-'))
      if (!names.contains(part)) return word.contains('+') && known.contains(word.section('+', 0, 0));
    return true;
  }
  /// Of bones, joints, samples, the animal and its sources, and what the test has typed, word by word.
  QSet<QString> names() const {
    QSet<QString> out{"Typed", "by", "a", "person", "High", "Low", "browser", "Wide", "gauge", "neutral", "standing",
                      // what the broken table says, cited work, and a language by its own name
                      "abc", "guessed", "nothing", "cervicals", "Mallison", "Palaeontol.", "Palaeontol", "Electron.",
                      "Electron", QString::fromUtf8("简体中文")};
    if (!document_->hasProject()) return out;
    const anatomy::Specimen& specimen = document_->specimen();
    static const QRegularExpression between("[^A-Za-z0-9.]+");
    const auto add = [&](const std::string& name) {
      for (const QString& word : QString::fromStdString(name).split(between, Qt::SkipEmptyParts)) out += word;
    };
    for (const auto& bone : specimen.bones) {
      add(bone.id);
      add(bone.source);
    }
    for (const auto& each : specimen.joints) add(each.id);
    add(specimen.name);
    return out;
  }

  void check(const test::Texts& texts) {
    const QSet<QString> names = this->names();
    found_ += test::unmarkedTexts(texts, [&](const QString& word) { return exempt(word, names); });
  }
  /// What a window says and what it paints.
  void look(QWidget& window) {
    test::Texts texts;
    texts.addWindow(window);
    for (const QString& text : test::paintedTexts(window)) texts.add("painted in " + window.objectName(), text);
    check(texts);
  }
  void lookAtTexts(const QString& place, const QStringList& said) {
    test::Texts texts;
    for (const QString& text : said) texts.add(place, text);
    check(texts);
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
      check(texts);
    }
  }

  /// Triggers what opens a dialog, looks at it and sends it away. How many came.
  int lookAtEveryDialog() {
    QList<QPointer<QAction>> opening;  // a dialog that goes takes its own along
    for (QAction* action : window_->findChildren<QAction*>())
      if (action->isEnabled() && test::outsideMarks(action->text()).isEmpty() && action->text().contains(QChar(0x2026)))
        opening += action;
    int came = 0;
    for (const QPointer<QAction>& action : opening) {
      if (!action) continue;
      const bool there = lookAtWhatOpens(*action);
      came += there;
      settle();
    }
    return came;
  }
  /// Looks at every dialog on screen and sends it away. How many there were. What is looked at may send others away,
  /// so that each is asked for only while it is there.
  int lookAtOpenDialogs() {
    QList<QPointer<QDialog>> open;
    for (QWidget* widget : QApplication::topLevelWidgets())
      if (auto* dialog = qobject_cast<QDialog*>(widget)) open += dialog;
    int seen = 0;
    for (const QPointer<QDialog>& dialog : open) {
      if (!dialog || !dialog->isVisible()) continue;
      // What the toolkit's own file dialog lists is the disk's.
      if (!qobject_cast<QFileDialog*>(dialog)) look(*dialog);
      ++seen;
      if (dialog) dialog->reject();
    }
    return seen;
  }
  bool lookAtWhatOpens(QAction& action) {
    int seen = 0;
    QTimer watch;  // also while a dialog runs its own loop
    QObject::connect(&watch, &QTimer::timeout, &watch, [&] { seen += lookAtOpenDialogs(); });
    watch.start(50);
    action.trigger();
    const bool came = QTest::qWaitFor([&] { return seen > 0; }, kMoment);
    return came;
  }

  void expectAllMarked(const char* place) {
    found_.removeDuplicates();
    found_.sort();
    EXPECT_EQ(found_.join('\n').toStdString(), "") << place;
  }

  std::unique_ptr<test::MarkedLanguage> language_;
  QStringList found_;
};

}  // namespace zyga::ui
