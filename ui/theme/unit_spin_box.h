#pragma once

#include <QDoubleSpinBox>

class QLabel;

namespace zyga::ui {

/// A number field whose unit stands in muted text at its right end instead of being part of the number. The wheel turns
/// it only while it has the focus, so that scrolling a panel changes nothing.
class UnitSpinBox : public QDoubleSpinBox {
  Q_OBJECT
 public:
  explicit UnitSpinBox(const QString& unit, QWidget* parent = nullptr);
  QSize sizeHint() const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;

 private:
  void placeUnit();

  QLabel* unit_;
};

}  // namespace zyga::ui
