#pragma once

#include <QDialog>
#include <memory>

#include "ui/plots/study_plots.h"
#include "ui/studies/study_job.h"
#include "ui/theme/theme.h"

namespace zyga::ui {

/// The theme's colours for a figure on screen.
PlotInk screenInk(const Theme& theme, const QFont& font);

/// A study's figure, as wide as there is room. Out of date it is pale. A click or Enter asks for it large.
class PlotView : public QWidget {
  Q_OBJECT
 public:
  explicit PlotView(QWidget* parent = nullptr);

  void show(std::shared_ptr<const StudyResult> result, bool outOfDate);
  bool empty() const { return !result_; }

  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize sizeHint() const override;

 signals:
  void enlargeAsked();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  std::shared_ptr<const StudyResult> result_;
  bool outOfDate_ = false;
};

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
