#include "ui/panels/cartilage_field.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QSignalBlocker>

#include "ui/panels/panel_parts.h"
#include "ui/theme/figures.h"
#include "ui/theme/unit_spin_box.h"

namespace zyga::ui {

using range::Cartilage;

CartilageField::CartilageField(const QString& name, QWidget* parent)
    : QWidget(parent), amount_(new UnitSpinBox(QString())), unit_(calmComboBox()) {
  amount_->setDecimals(2);
  amount_->setMinimumWidth(64);
  amount_->setSingleStep(0.5);
  amount_->setAlignment(Qt::AlignRight);
  amount_->setAccessibleName(name);
  unit_->addItem(tr("%"), static_cast<int>(Cartilage::In::PercentOfCentrum));
  unit_->addItem(tr("mm"), static_cast<int>(Cartilage::In::Millimetres));
  unit_->setAccessibleName(tr("%1: unit").arg(name));
  unit_->setItemData(0, tr("Percent of the centrum's functional length"), Qt::ToolTipRole);
  unit_->setToolTip(tr("Percent of the centrum's functional length, or millimetres"));
  unit_->setFixedWidth(64);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kGridStep);
  row->addWidget(amount_, 1);
  row->addWidget(unit_);
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
