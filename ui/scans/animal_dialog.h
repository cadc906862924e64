#pragma once

#include <QDialog>

#include "core/anatomy/tables/measurement_table.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace zyga::ui {

/// Asks for a folder of bone scans and the kind of animal that they make.
class AnimalDialog : public QDialog {
  Q_OBJECT
 public:
  /// `startFolder`: where to begin looking.
  explicit AnimalDialog(const QString& startFolder, QWidget* parent = nullptr);

  void setFolder(const QString& folder);
  QString folder() const;
  anatomy::BodyPlan plan() const;

 private:
  void chooseFolder();
  void refresh();

  QString startFolder_;
  QLineEdit* folder_;
  QComboBox* plan_;
  QLabel* told_;
  QPushButton* go_;
};

}  // namespace zyga::ui
