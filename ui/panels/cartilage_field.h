#pragma once

#include <QWidget>

#include "core/range/assumptions.h"

class QComboBox;

namespace zyga::ui {

class LiveAmount;

/// Thickness of cartilage as slider and number with a choice of unit: percent of the centrum's length, or millimetres.
/// Other lengths that are typed in the one or the other way are shown by it as well.
class CartilageField : public QWidget {
  Q_OBJECT
 public:
  /// How far a slider goes and by what steps, in one unit.
  struct Scale {
    double most, step, fine;
    int decimals;
  };
  explicit CartilageField(const QString& name, QWidget* parent = nullptr);
  /// `percentOf`: what percent and millimetres are of, for its tip.
  CartilageField(const QString& name, const QString& percentOf, const Scale& percent, const Scale& millimetres,
                 QWidget* parent = nullptr);

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

  Scale percent_, millimetres_;
  LiveAmount* amount_;
  QComboBox* unit_;
};

}  // namespace zyga::ui
