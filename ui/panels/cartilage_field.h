#pragma once

#include <QWidget>

#include "core/range/assumptions.h"

class QComboBox;
class QDoubleSpinBox;

namespace zyga::ui {

/// Thickness of cartilage as a number with a choice of unit: percent of the centrum's length, or millimetres.
class CartilageField : public QWidget {
  Q_OBJECT
 public:
  explicit CartilageField(const QString& name, QWidget* parent = nullptr);

  range::Cartilage value() const;
  void setValue(const range::Cartilage& cartilage);

 signals:
  /// The person has changed it; setValue does not tell.
  void edited();

 private:
  void fitRange();

  QDoubleSpinBox* amount_;
  QComboBox* unit_;
};

}  // namespace zyga::ui
