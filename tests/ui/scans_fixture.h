#pragma once

#include <QComboBox>
#include <QTableWidget>
#include <QTreeWidget>
#include <cstring>
#include <filesystem>
#include <functional>

#include "core/anatomy/plan/build_specimen.h"
#include "core/solid/sculpt/sculpt.h"
#include "tests/ui/window_fixture.h"
#include "ui/commands/scan_edits.h"
#include "ui/scans/bring_in_dialog.h"
#include "ui/scans/landmark_editor.h"

namespace zyga::ui {

namespace fs = std::filesystem;

/// Real bones by the hands of a person: dropped on the window, named, put in place, marked on the editor.
class ScansTest : public WindowTest {
 protected:
  /// A bone of the open animal as a scanner leaves it: STL, `scanner_` times its size in metres; in its own axes, or
  /// where it lies; all of it, or only the triangles whose middles are `there` in its own axes.
  fs::path scanned(const char* id, const char* file, bool whereItLies = false,
                   const std::function<bool(const Eigen::Vector3f& p_B)>& there = {}) const {
    const auto& specimen = document_->specimen();
    const auto index = specimen.findBone(id).value();
    auto mesh = solid::sculptBone(specimen, index, 4000).levels.front();
    if (there)
      std::erase_if(mesh.triangles, [&](const auto& t) {
        return !there((mesh.positions[t[0]] + mesh.positions[t[1]] + mesh.positions[t[2]]) / 3);
      });
    const Eigen::Isometry3f X =
        whereItLies ? document_->placement()[index.value].cast<float>() : Eigen::Isometry3f::Identity();
    const auto count = static_cast<std::uint32_t>(mesh.triangles.size());
    std::string bytes(84 + 50 * mesh.triangles.size(), '\0');
    std::memcpy(bytes.data() + 80, &count, sizeof count);
    char* at = bytes.data() + 84;
    for (const auto& t : mesh.triangles) {
      for (std::size_t i = 0; i < 3; ++i) {
        const Eigen::Vector3f p = scanner_ * (X * mesh.positions[t[i]]);
        std::memcpy(at + 12 * (i + 1), p.data(), 12);
      }
      at += 50;
    }
    const auto path = folder() / file;
    std::ofstream(path, std::ios::binary) << bytes;
    return path;
  }
  void dropAll(const std::vector<fs::path>& files) {
    QMimeData data;
    QList<QUrl> urls;
    for (const auto& file : files) urls += QUrl::fromLocalFile(QString::fromStdString(file.string()));
    data.setUrls(urls);
    QDragEnterEvent enter({600, 300}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window_.get(), &enter);
    ASSERT_TRUE(enter.isAccepted());
    QDropEvent fall(QPointF(600, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window_.get(), &fall);
  }
  BringInDialog* readAll() {
    auto* bringing = dialog<BringInDialog>("bringInDialog");
    if (!bringing) return nullptr;
    EXPECT_TRUE(broughtForward(*bringing));
    EXPECT_TRUE(QTest::qWaitFor([&] { return !bringing->busy(); }, kPatience));
    return bringing;
  }
  /// Ctrl+Z in the window, once no dialog stands before it.
  void undoByKey() {
    ASSERT_TRUE(broughtForward(*window_));
    QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier);
  }
  static QString outcome(const BringInDialog& bringing, int row) {
    return bringing.findChild<QTableWidget*>("bringInTable")->item(row, 4)->text();
  }
  /// One bone in place and on the editor.
  LandmarkEditor* editorWith(const char* id, const char* file) {
    dropAll({scanned(id, file)});
    auto* bringing = readAll();
    press(*bringing, "Add to skeleton");
    settle();
    return openedEditor();
  }
  LandmarkEditor* openedEditor() {
    action("Place landmarks")->trigger();
    auto* editor = dialog<LandmarkEditor>("landmarkEditor");
    if (editor) {
      EXPECT_TRUE(QTest::qWaitFor([&] { return editor->ready(); }, kPatience));
    }
    return editor;
  }
  static void choose(LandmarkEditor& editor, const QString& mark) {
    auto* list = editor.findChild<QTreeWidget*>("landmarkList");
    for (int i = 0; i < list->topLevelItemCount(); ++i)
      if (list->topLevelItem(i)->text(0) == mark) return list->setCurrentItem(list->topLevelItem(i));
    FAIL() << mark.toStdString();
  }

  float scanner_ = 1000;  ///< its unit, and the size of what it scans beside the animal: millimetres, as large
};

}  // namespace zyga::ui
