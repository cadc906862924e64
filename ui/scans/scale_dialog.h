#pragma once

#include <QDialog>

#include "core/files/project/project_scan.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace zyga::ui {

class UnitSpinBox;

/// A length that can be typed to say how large something shall be.
struct KnownSize {
  QString name;
  double length = 0;  ///< at present, m
};

/// Asks how large something shall be, by one of its lengths, and says what that does.
class ScaleDialog : public QDialog {
  Q_OBJECT
 public:
  ScaleDialog(const QString& what, std::vector<KnownSize> sizes, QWidget* parent = nullptr);

  double factor() const;
  /// "femur to 1480 mm".
  QString said() const;

 private:
  void takeSize();
  void refresh();

  std::vector<KnownSize> sizes_;
  QComboBox* by_;
  UnitSpinBox* length_;
  QLabel* told_;
  QPushButton* go_ = nullptr;
};

/// Femur, humerus, neck, total length: of what the animal has.
std::vector<KnownSize> animalSizes(const anatomy::Specimen& specimen);
/// Greatest side of a scan's box in its bone's frame, m.
double extentOf(const files::ProjectScan& scan);

}  // namespace zyga::ui
