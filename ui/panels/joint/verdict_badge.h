#pragma once

#include <QWidget>

#include "core/range/findings.h"

namespace zyga::ui {

/// A verdict as its shape and its word.
class VerdictBadge : public QWidget {
 public:
  explicit VerdictBadge(QWidget* parent = nullptr);
  void show(range::Level level);
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QString words() const;
  range::Level level_ = range::Level::NotJudged;
};

}  // namespace zyga::ui
