#include "ui/panels/cartilage_field.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QSignalBlocker>

#include "ui/theme/figures.h"

namespace zyga::ui {

using range::Cartilage;

CartilageField::CartilageField(const QString& name, QWidget* parent)
    : QWidget(parent), amount_(new QDoubleSpinBox), unit_(new QComboBox) {
  amount_->setDecimals(2);
  amount_->setSingleStep(0.5);
  amount_->setAlignment(Qt::AlignRight);
  amount_->setAccessibleName(name);
  unit_->addItem(tr("% of centrum"), static_cast<int>(Cartilage::In::PercentOfCentrum));
  unit_->addItem(tr("mm"), static_cast<int>(Cartilage::In::Millimetres));
  unit_->setAccessibleName(tr("%1: unit").arg(name));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kGridStep);
  row->addWidget(amount_, 1);
  row->addWidget(unit_, 1);
  setFocusProxy(amount_);
  fitRange();
  connect(amount_, &QDoubleSpinBox::valueChanged, this, &CartilageField::edited);
  connect(unit_, &QComboBox::currentIndexChanged, this, [this] {
    {
      const QSignalBlocker quiet(amount_);
      fitRange();
    }
    emit edited();
  });
}

Cartilage CartilageField::value() const {
  return {static_cast<Cartilage::In>(unit_->currentData().toInt()), amount_->value()};
}

void CartilageField::setValue(const Cartilage& cartilage) {
  if (cartilage == value()) return;
  const QSignalBlocker quietAmount(amount_);
  const QSignalBlocker quietUnit(unit_);
  unit_->setCurrentIndex(unit_->findData(static_cast<int>(cartilage.in)));
  fitRange();
  amount_->setValue(cartilage.amount);
}

void CartilageField::fitRange() {
  const bool percent = unit_->currentData().toInt() == static_cast<int>(Cartilage::In::PercentOfCentrum);
  amount_->setRange(0, percent ? 40 : 200);
}

}  // namespace zyga::ui
