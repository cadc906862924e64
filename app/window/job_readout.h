#pragma once

#include <QWidget>

class QLabel;
class QProgressBar;

namespace zyga::ui {

class Worker;

/// One line for work that goes on beside the window: what it is, how far it is, and a button that stops it. Hidden
/// while the worker rests.
class JobReadout : public QWidget {
  Q_OBJECT
 public:
  JobReadout(Worker& worker, QWidget* parent = nullptr);
  void setTask(const QString& text);

 private:
  QLabel* text_;
  QProgressBar* bar_;
};

}  // namespace zyga::ui
