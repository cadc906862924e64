#pragma once

#include <QDialog>

#include "ui/panels/studies/plot_view.h"

namespace zyga::ui {

/// A study's figure with all the room that a window gives, beside the main one.
class PlotWindow : public QDialog {
  Q_OBJECT
 public:
  explicit PlotWindow(QWidget* parent);
  void show(StudyKind kind, const std::shared_ptr<const StudyResult>& result, bool outOfDate);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  std::shared_ptr<const StudyResult> result_;
  bool outOfDate_ = false;
};

}  // namespace zyga::ui
