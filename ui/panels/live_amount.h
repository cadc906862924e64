#pragma once

#include <QWidget>

namespace zyga::ui {

class DragSlider;
class UnitSpinBox;

/// A number as a slider and a field beside it. While the slider is held `moved` tells every value on the way,
/// `released` that it is let go, `cancelled` that Escape took it back. What is typed, stepped or turned comes as
/// `typed`.
class LiveAmount : public QWidget {
  Q_OBJECT
 public:
  LiveAmount(const QString& name, const QString& unit, QWidget* parent = nullptr);
  /// From zero to `most`; the arrow keys go by `step`, the slider by `fine`.
  void setScale(double most, double step, double fine, int decimals);

  double value() const;
  /// Tells nobody.
  void setValue(double value);

  DragSlider* slider() const { return slider_; }
  UnitSpinBox* field() const { return field_; }

 signals:
  void moved(double value);
  void released();
  void cancelled();
  void typed(double value);

 private:
  DragSlider* slider_;
  UnitSpinBox* field_;
  double fine_ = 1;
};

}  // namespace zyga::ui
