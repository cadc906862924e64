#pragma once

#include <QButtonGroup>
#include <QWidget>

namespace zyga::ui {

/// Three buttons, one pressed: which motion of the joints the strip shows.
class MotionChoice : public QWidget {
  Q_OBJECT
 public:
  explicit MotionChoice(QWidget* parent = nullptr);
  int motion() const { return group_.checkedId(); }
  void setMotion(int motion);

 signals:
  void chosen(int motion);

 private:
  QButtonGroup group_;
};

/// What the marks and bands of the strip mean.
class StripKey : public QWidget {
 public:
  explicit StripKey(QWidget* parent = nullptr);
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace zyga::ui
