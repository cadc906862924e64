#pragma once

#include <QDialog>
#include <optional>

#include "core/picture/picture.h"

class QCheckBox;
class QComboBox;
class QSpinBox;

namespace zyga::ui {

struct PictureChoice {
  std::optional<picture::StandardView> view;  ///< none: as the viewport shows it
  int width = 2400;
  bool transparentGround = false;
  bool groundGrid = false;
};

/// What picture is to be traced.
class PictureDialog : public QDialog {
  Q_OBJECT
 public:
  explicit PictureDialog(QWidget* parent = nullptr);

  PictureChoice choice() const;

 private:
  QComboBox* view_;
  QSpinBox* width_;
  QCheckBox *transparent_, *grid_;
};

}  // namespace zyga::ui
