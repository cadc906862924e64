#pragma once

#include <QWidget>

#include "core/range/findings.h"

namespace zyga::ui {

/// The verdict's shape beside words.
class VerdictMark : public QWidget {
  Q_OBJECT
 public:
  using QWidget::QWidget;
  void setLevel(range::Level level);
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  range::Level level_ = range::Level::NotJudged;
};

}  // namespace zyga::ui
