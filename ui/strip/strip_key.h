#pragma once

#include <QWidget>

namespace zyga::ui {

/// What the marks and bands of the strip mean.
class StripKey : public QWidget {
 public:
  explicit StripKey(QWidget* parent = nullptr);
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace zyga::ui
