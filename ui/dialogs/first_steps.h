#pragma once

#include <QWidget>

class QLabel;
class QPushButton;

namespace zyga::ui {

/// One line under the animal that tells a newcomer one thing after the other, until it is sent away.
class FirstSteps : public QWidget {
  Q_OBJECT
 public:
  explicit FirstSteps(QWidget* parent = nullptr);

 signals:
  void sentAway();

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void show(int step);

  int step_ = 0;
  QLabel *count_ = nullptr, *words_ = nullptr;
  QPushButton* next_ = nullptr;
};

}  // namespace zyga::ui
