#pragma once

#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMimeData>
#include <QMouseEvent>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <fstream>

#include "app/window/main_window.h"
#include "tests/ui/brought_forward.h"
#include "tests/ui/patience.h"
#include "ui/strip/range_strip.h"
#include "ui/theme/theme.h"
#include "ui/viewport/viewport.h"

namespace zyga::ui {

/// The whole window on the first sample, and a person's hands and eyes on it. The bones' cache is the tests' own but
/// outlives them, so that each program need not sculpt anew; it goes by content, so it cannot be out of date.
class WindowTest : public testing::Test {
 protected:
  void SetUp() override {
    QSettings().clear();
    QSettings().setValue("hints/shown", false);
    ThemeSwitch::instance().apply(*qApp, Scheme::Light);
    openWindow();
    window_->open(sample());
    settle();
    QSettings().setValue("files/folder", folder_.path());  // nothing is ever saved beside the samples
  }
  void TearDown() override { closeWindow(); }

  void openWindow() {
    document_ = std::make_unique<Document>();
    window_ = std::make_unique<MainWindow>(*document_, WindowFolders{boneCache(), folder() / "recovery"});
    window_->resize(1280, 800);
    window_->show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(window_.get()));
    ASSERT_TRUE(broughtForward(*window_));
  }
  void closeWindow() {
    window_.reset();
    document_.reset();
  }
  void settle() {
    ASSERT_TRUE(QTest::qWaitFor([this] { return window_->settled(); }, kPatience));
  }
  static std::filesystem::path boneCache() { return std::filesystem::path(ZYGAPOSE_TEST_CACHE) / "zygapose"; }
  static QString sample() { return QString(ZYGAPOSE_SOURCE_DIR) + "/samples/high_browser.csv"; }
  std::filesystem::path folder() const { return folder_.path().toStdString(); }

  template <typename Widget>
  Widget* part(const char* name) const {
    return window_->findChild<Widget*>(name);
  }
  Viewport* viewport() const { return part<Viewport>("viewport"); }
  RangeStrip* strip() const { return part<RangeStrip>("rangeStrip"); }
  QAction* action(const QString& text) const {
    for (QAction* action : window_->findChildren<QAction*>())
      if (action->text().remove('&').startsWith(text)) return action;
    return nullptr;
  }
  QStringList findings() const {
    const auto* list = part<QListView>("findingsList");
    QStringList sentences;
    for (int row = 0; row < list->model()->rowCount(); ++row)
      sentences += list->model()->index(row, 0).data().toString();
    return sentences;
  }
  QStringList messages() const {
    QStringList texts;
    for (const auto* label : window_->findChildren<QLabel*>("messageText"))
      if (label->isVisible()) texts += label->text();
    return texts;
  }

  JointIndex joint(const char* id) const { return document_->specimen().findJoint(id).value(); }
  BoneIndex bone(const char* id) const { return document_->specimen().findBone(id).value(); }

  void drag(QWidget* widget, QPointF from, QPointF to) {
    QTest::mouseMove(widget, from.toPoint());
    QTest::mousePress(widget, Qt::LeftButton, {}, from.toPoint());
    constexpr int kSteps = 12;
    for (int step = 1; step <= kSteps; ++step) {
      const QPointF at = from + (to - from) * step / kSteps;
      QMouseEvent move(QEvent::MouseMove, at, widget->mapToGlobal(at), Qt::NoButton, Qt::LeftButton, Qt::NoModifier);
      QApplication::sendEvent(widget, &move);
      QCoreApplication::processEvents();
    }
    QTest::mouseRelease(widget, Qt::LeftButton, {}, to.toPoint());
  }
  /// A dialog of this kind once it is on screen.
  template <typename Dialog = QDialog>
  Dialog* dialog(const char* name = nullptr) {
    Dialog* found = nullptr;
    const auto look = [&] {
      for (auto* candidate : window_->findChildren<Dialog*>())
        if (candidate->isVisible() && (!name || candidate->objectName() == name)) found = candidate;
      return found != nullptr;
    };
    return QTest::qWaitFor(look, kPatience) ? found : nullptr;
  }
  void press(QWidget& dialog, const QString& text) {
    for (auto* button : dialog.findChildren<QAbstractButton*>())
      if (button->text().remove('&').startsWith(text)) return QTest::mouseClick(button, Qt::LeftButton);
    FAIL() << "no button " << text.toStdString();
  }
  /// Pastes a file's name into the file dialog that is open, and accepts it.
  void answerFile(const std::filesystem::path& file) {
    auto* files = dialog<QFileDialog>();
    ASSERT_NE(files, nullptr);
    auto* name = files->findChild<QLineEdit*>("fileNameEdit");
    ASSERT_NE(name, nullptr);
    name->setText(QString::fromStdString(file.string()));
    auto* buttons = files->findChild<QDialogButtonBox*>("buttonBox");
    for (auto* button : buttons->buttons())
      if (buttons->buttonRole(button) == QDialogButtonBox::AcceptRole && button->isEnabled())
        return QTest::mouseClick(button, Qt::LeftButton);
    FAIL() << "the file dialog does not take " << file;
  }
  void drop(const std::filesystem::path& file) {
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(QString::fromStdString(file.string()))});
    QDragEnterEvent enter({600, 300}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window_.get(), &enter);
    ASSERT_TRUE(enter.isAccepted());
    QDropEvent fall(QPointF(600, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window_.get(), &fall);
  }
  std::filesystem::path write(const char* name, const char* text) const {
    const auto file = folder() / name;
    std::ofstream(file) << text;
    return file;
  }

  QTemporaryDir folder_;
  std::unique_ptr<Document> document_;
  std::unique_ptr<MainWindow> window_;
};

}  // namespace zyga::ui
