#pragma once

#include <QWidget>

#include "core/range/assumptions.h"

class QComboBox;

namespace zyga::ui {

class LiveAmount;

/// Thickness of cartilage as slider and number with a choice of unit: percent of the centrum's length, or millimetres.
class CartilageField : public QWidget {
  Q_OBJECT
 public:
  explicit CartilageField(const QString& name, QWidget* parent = nullptr);

  range::Cartilage value() const;
  /// Tells nobody.
  void setValue(const range::Cartilage& cartilage);

 signals:
  /// As those of LiveAmount; `edited` also when another unit is chosen.
  void moved(const zyga::range::Cartilage& cartilage);
  void released();
  void cancelled();
  void edited();

 private:
  range::Cartilage::In unit() const;
  void fitRange();

  LiveAmount* amount_;
  QComboBox* unit_;
};

}  // namespace zyga::ui
