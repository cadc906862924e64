#include "ui/panels/studies/plot_window.h"

#include <QPainter>
#include <QSettings>

#include "ui/theme/figures.h"

namespace zyga::ui {
namespace {

constexpr char kSizeKey[] = "studies/plotWindow";

}  // namespace

PlotWindow::PlotWindow(QWidget* parent) : QDialog(parent) {
  setObjectName("plotWindow");
  resize(QSettings().value(kSizeKey, QSize(880, 640)).toSize());
  setMinimumSize(360, 260);
  connect(&ThemeSwitch::instance(), &ThemeSwitch::changed, this, qOverload<>(&QWidget::update));
}

void PlotWindow::show(StudyKind kind, const std::shared_ptr<const StudyResult>& result, bool outOfDate) {
  result_ = result;
  outOfDate_ = outOfDate;
  setWindowTitle(outOfDate ? tr("%1, out of date").arg(title(kind)) : title(kind));
  update();
  if (result_) return QDialog::show();
  hide();
}

void PlotWindow::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), theme().panel);
  if (!result_) return;
  if (outOfDate_) painter.setOpacity(0.45);
  paintStudy(painter, QRectF(rect()).adjusted(kWideGap, kWideGap, -kWideGap, -kWideGap), *result_,
             screenInk(theme(), font()));
}

void PlotWindow::hideEvent(QHideEvent* event) {
  QSettings().setValue(kSizeKey, size());
  QDialog::hideEvent(event);
}

}  // namespace zyga::ui
