#pragma once

#include <QDialog>

#include "app/window/controllers/report_controller.h"

class QCheckBox;
class QComboBox;
class QRadioButton;

namespace zyga::ui {

/// What a report is to hold. The page of claims is offered where there are claims.
class ReportDialog : public QDialog {
  Q_OBJECT
 public:
  explicit ReportDialog(bool hasClaims, QWidget* parent = nullptr);
  ReportChoice choice() const;

 private:
  QComboBox* format_;
  QRadioButton *whole_, *claims_;
  QCheckBox *studies_, *numbers_;
};

}  // namespace zyga::ui
