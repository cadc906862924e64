#include "ui/panels/cartilage_field.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QSignalBlocker>

#include "ui/panels/live_amount.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"

namespace zyga::ui {

using range::Cartilage;

CartilageField::CartilageField(const QString& name, QWidget* parent)
    : CartilageField(name, tr("Percent of the centrum's functional length, or millimetres"), {40, 0.5, 0.1, 2},
                     {200, 1, 0.5, 1}, parent) {}

CartilageField::CartilageField(const QString& name, const QString& percentOf, const Scale& percent,
                               const Scale& millimetres, QWidget* parent)
    : QWidget(parent),
      percent_(percent),
      millimetres_(millimetres),
      amount_(new LiveAmount(name, {})),
      unit_(calmComboBox()) {
  unit_->addItem(tr("%"), static_cast<int>(Cartilage::In::PercentOfCentrum));
  unit_->addItem(tr("mm"), static_cast<int>(Cartilage::In::Millimetres));
  unit_->setAccessibleName(tr("%1: unit").arg(name));
  unit_->setToolTip(percentOf);
  unit_->setFixedWidth(scaledWithText(52));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kGridStep);
  row->addWidget(amount_, 1);
  row->addWidget(unit_);
  setFocusProxy(amount_);
  fitRange();
  connect(amount_, &LiveAmount::moved, this, [this](double amount) { emit moved({unit(), amount}); });
  connect(amount_, &LiveAmount::released, this, &CartilageField::released);
  connect(amount_, &LiveAmount::cancelled, this, &CartilageField::cancelled);
  connect(amount_, &LiveAmount::typed, this, [this](double amount) {
    amount_->setValue(amount);
    emit edited();
  });
  connect(unit_, &QComboBox::currentIndexChanged, this, [this] {
    fitRange();
    emit edited();
  });
}

Cartilage::In CartilageField::unit() const { return static_cast<Cartilage::In>(unit_->currentData().toInt()); }

Cartilage CartilageField::value() const { return {unit(), amount_->value()}; }

void CartilageField::setValue(const Cartilage& cartilage) {
  if (cartilage.in != unit()) {
    const QSignalBlocker quiet(unit_);
    unit_->setCurrentIndex(unit_->findData(static_cast<int>(cartilage.in)));
    fitRange();
  }
  amount_->setValue(cartilage.amount);
}

void CartilageField::fitRange() {
  const Scale& scale = unit() == Cartilage::In::PercentOfCentrum ? percent_ : millimetres_;
  amount_->setScale(scale.most, scale.step, scale.fine, scale.decimals);
}

}  // namespace zyga::ui
