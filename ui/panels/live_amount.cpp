#include "ui/panels/live_amount.h"

#include <QHBoxLayout>
#include <QSignalBlocker>
#include <cmath>

#include "ui/theme/drag_slider.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/theme/unit_spin_box.h"

namespace zyga::ui {
namespace {
constexpr int kFieldWidth = 88;  // px; room for "24.00" beside the arrows
}

LiveAmount::LiveAmount(const QString& name, const QString& unit, QWidget* parent)
    : QWidget(parent), slider_(new DragSlider), field_(new UnitSpinBox(unit)) {
  field_->setFixedWidth(scaledWithText(kFieldWidth));
  field_->setAccessibleName(name);
  slider_->setAccessibleName(tr("%1, slider").arg(name));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kGap);
  row->addWidget(slider_, 1);
  row->addWidget(field_);
  setFocusProxy(field_);
  connect(slider_, &DragSlider::valueChanged, this, [this](int position) {
    const double value = position * fine_;
    slider_->isSliderDown() ? emit moved(value) : emit typed(value);
  });
  connect(slider_, &DragSlider::sliderReleased, this, &LiveAmount::released);
  connect(slider_, &DragSlider::cancelled, this, &LiveAmount::cancelled);
  connect(field_, &UnitSpinBox::valueChanged, this, &LiveAmount::typed);
}

void LiveAmount::setScale(double most, double step, double fine, int decimals) {
  const QSignalBlocker quietSlider(slider_), quietField(field_);
  fine_ = fine;
  slider_->setRange(0, static_cast<int>(std::lround(most / fine)));
  slider_->setSingleStep(static_cast<int>(std::lround(step / fine)));
  slider_->setPageStep(5 * slider_->singleStep());
  field_->setDecimals(decimals);
  field_->setSingleStep(step);
  field_->setRange(0, most);
}

double LiveAmount::value() const { return field_->value(); }

void LiveAmount::setValue(double value) {
  const QSignalBlocker quietSlider(slider_), quietField(field_);
  slider_->setValue(static_cast<int>(std::lround(value / fine_)));
  field_->setValue(value);
}

}  // namespace zyga::ui
