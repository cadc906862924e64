#include "ui/theme/unit_spin_box.h"

#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QWheelEvent>

namespace zyga::ui {
namespace {
constexpr int kUnitGap = 2;
}

UnitSpinBox::UnitSpinBox(const QString& unit, QWidget* parent)
    : QDoubleSpinBox(parent), unit_(new QLabel(unit, lineEdit())) {
  unit_->setProperty("role", "muted");
  unit_->setAttribute(Qt::WA_TransparentForMouseEvents);
  setAlignment(Qt::AlignRight);
  setDecimals(1);
  setKeyboardTracking(false);
  setFocusPolicy(Qt::StrongFocus);
  placeUnit();
}

QSize UnitSpinBox::sizeHint() const {
  return QDoubleSpinBox::sizeHint() + QSize(unit_->sizeHint().width() + kUnitGap, 0);
}

void UnitSpinBox::resizeEvent(QResizeEvent* event) {
  QDoubleSpinBox::resizeEvent(event);
  placeUnit();
}

void UnitSpinBox::changeEvent(QEvent* event) {
  QDoubleSpinBox::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) placeUnit();
}

void UnitSpinBox::wheelEvent(QWheelEvent* event) {
  if (hasFocus()) return QDoubleSpinBox::wheelEvent(event);
  event->ignore();
}

void UnitSpinBox::placeUnit() {
  const QSize size = unit_->sizeHint();
  lineEdit()->setTextMargins(0, 0, size.width() + kUnitGap, 0);
  unit_->setGeometry(lineEdit()->width() - size.width(), 0, size.width(), lineEdit()->height());
}

}  // namespace zyga::ui
