#pragma once

#include <QDialog>

#include "core/files/project/sheet.h"
#include "ui/document/document.h"
#include "ui/document/worker.h"
#include "ui/sheets/sheet_scene.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QSpinBox;

namespace zyga::ui {

class SheetPreview;
class UnitSpinBox;

/// Designs a page and saves it. The choices are the project's sheet, each change one undoable step; the preview
/// follows, coarse at first.
class SheetDialog : public QDialog {
  Q_OBJECT
 public:
  explicit SheetDialog(Document& document, QWidget* parent = nullptr);

  bool busy() const { return preview_.busy() || saver_.busy(); }

 signals:
  /// A file is complete.
  void written(const QString& file);

 private:
  QWidget* createChoices();
  QWidget* createFoot();
  void fill();
  files::Sheet chosen() const;
  void choose();
  SheetScene scene() const;
  void redraw(bool fine);
  void save();
  void startSaving(const QString& file);
  void showSaving(bool saving);

  Document& document_;
  SheetPreview* shown_;
  QComboBox *layout_, *paper_, *bones_, *scale_;
  QCheckBox *person_, *joints_, *tones_, *spans_, *ground_, *notes_, *transparent_;
  UnitSpinBox* height_;
  QLineEdit *title_, *plate_;
  QSpinBox* width_;
  QLabel* told_;
  QProgressBar* progress_;
  QPushButton *save_, *stop_;
  bool filling_ = false;
  std::shared_ptr<const solid::TriangleMesh> body_;  ///< around the bones as they lie; none before one is drawn
  solid::GuideThickness bodyOf_;                     ///< with which it was made
  Worker preview_, saver_;
};

}  // namespace zyga::ui
