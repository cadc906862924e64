#pragma once

#include <QSlider>

namespace zyga::ui {

/// A horizontal slider that goes where it is pressed and follows from there. Escape while it is held takes the drag
/// back: `cancelled` is told instead of sliderReleased. The wheel turns it only while it has the focus.
class DragSlider : public QSlider {
  Q_OBJECT
 public:
  explicit DragSlider(QWidget* parent = nullptr);
  /// Where the handle's middle is for a value, px from the left.
  int placeOf(int value) const;

 signals:
  void cancelled();

 protected:
  bool event(QEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;

 private:
  int valueAt(double x) const;

  double grip_ = 0;  ///< px from the handle's middle to the pointer
};

}  // namespace zyga::ui
