#pragma once

#include <QDialog>

#include "core/files/mesh_export.h"

class QComboBox;
class QLabel;
class QRadioButton;

namespace zyga::ui {

/// How the posed skeleton is to be written as meshes.
class ExportDialog : public QDialog {
  Q_OBJECT
 public:
  explicit ExportDialog(QWidget* parent = nullptr);

  /// "glb", "obj"...
  QString ending() const;
  files::ExportOptions options() const;

 private:
  void fitToFormat();

  QComboBox *format_, *unit_, *up_;
  QRadioButton *single_, *joined_;
  QLabel* note_;
};

}  // namespace zyga::ui
