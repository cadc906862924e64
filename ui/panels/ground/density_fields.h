#pragma once

#include <QWidget>
#include <array>

#include "ui/document/document.h"

class QToolButton;

namespace zyga::ui {

class UnitSpinBox;

/// The densities that mass and balance rest on, a field for each part of the body.
class DensityFields : public QWidget {
  Q_OBJECT
 public:
  explicit DensityFields(Document& document, QWidget* parent = nullptr);

 private:
  void change(study::BodyPart part, double density);
  void refresh();

  Document& document_;
  std::array<UnitSpinBox*, study::kBodyParts> fields_{};
  QToolButton* usual_;
};

}  // namespace zyga::ui
