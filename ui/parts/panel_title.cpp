#include "ui/parts/panel_title.h"

#include <QApplication>
#include <QDockWidget>
#include <QHBoxLayout>
#include <QLabel>
#include <QMainWindow>
#include <QMouseEvent>
#include <QTimer>
#include <QToolButton>
#include <algorithm>
#include <vector>

#include "ui/parts/elided_label.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/icons.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"

namespace zyga::ui {
namespace {

constexpr int kOfUse = 200;  // px that a panel needs to be of use
int unfoldings = 0;          // so far, by hand

int barHeight() { return scaledWithText(36); }

QToolButton* smallButton(const char* iconName, const QString& text) {
  QToolButton* button = iconButton(iconName, text);
  button->setIconSize({14, 14});
  return button;
}

}  // namespace

PanelTitle::PanelTitle(QDockWidget& dock, QWidget& content)
    : QWidget(&dock),
      dock_(dock),
      content_(content),
      summary_(new ElidedLabel(true)),
      fold_(smallButton("small/up", tr("Fold"))) {
  setProperty("role", "panel");
  setAttribute(Qt::WA_StyledBackground);
  auto* name = new QLabel(dock.windowTitle());
  name->setProperty("role", "title");
  QToolButton* close = smallButton("close", tr("Close %1; the View menu brings it back").arg(dock.windowTitle()));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(kWideGap, kGridStep, kGap, 0);
  row->setSpacing(kGap);
  row->addWidget(name);
  row->addWidget(summary_, 1);
  if (const QString page = content.property("helpPage").toString(); !page.isEmpty()) {
    QToolButton* help = smallButton("help", tr("How this is judged (Shift+F1)"));
    help->setObjectName("panelHelp");
    connect(help, &QToolButton::clicked, this, [this, page] { emit helpAsked(page); });
    row->addWidget(help);
  }
  row->addWidget(fold_);
  row->addWidget(close);
  connect(fold_, &QToolButton::clicked, this, [this] { toggle(); });
  connect(close, &QToolButton::clicked, &dock, &QWidget::hide);
  refresh();
}

QSize PanelTitle::sizeHint() const { return {QWidget::sizeHint().width(), barHeight()}; }

QSize PanelTitle::minimumSizeHint() const { return {QWidget::minimumSizeHint().width(), barHeight()}; }

void PanelTitle::setSummary(const QString& text) {
  words_ = text;
  refresh();
}

void PanelTitle::setFolded(bool folded) {
  folded_ = folded;
  refresh();
}

void PanelTitle::unfold() {
  if (folded_) toggle();
}

/// A panel that a person unfolds takes the room it asks for from its neighbours. Where they would be left with too
/// little to be of use they fold, those first that were unfolded longest ago.
void PanelTitle::toggle() {
  setFolded(!folded_);
  auto* window = qobject_cast<QMainWindow*>(dock_.window());
  if (folded_ || !window) return;
  unfoldedAt_ = ++unfoldings;
  foldNeighbours(*window);
  QTimer::singleShot(0, &dock_, [this, window] { window->resizeDocks({&dock_}, {wantedHeight()}, Qt::Vertical); });
}

int PanelTitle::wantedHeight() const { return content_.sizeHint().height() + barHeight(); }

int PanelTitle::heightOfUse() const { return folded_ ? barHeight() : std::min(wantedHeight(), scaledWithText(kOfUse)); }

void PanelTitle::foldNeighbours(const QMainWindow& window) {
  int spare = -wantedHeight();
  std::vector<PanelTitle*> neighbours;
  for (QDockWidget* dock : window.findChildren<QDockWidget*>()) {
    auto* title = qobject_cast<PanelTitle*>(dock->titleBarWidget());
    const bool here = title && dock->isVisible() && window.dockWidgetArea(dock) == window.dockWidgetArea(&dock_);
    if (!here || !window.tabifiedDockWidgets(dock).isEmpty()) continue;
    spare += dock->height();
    if (title == this) continue;
    spare -= title->heightOfUse();
    if (!title->folded_) neighbours.push_back(title);
  }
  std::sort(neighbours.begin(), neighbours.end(),
            [](const auto* a, const auto* b) { return a->unfoldedAt_ < b->unfoldedAt_; });
  for (PanelTitle* title : neighbours) {
    if (spare >= 0) return;
    spare += title->heightOfUse() - barHeight();
    title->setFolded(true);
  }
}

void PanelTitle::refresh() {
  content_.setVisible(!folded_);
  dock_.setMinimumHeight(folded_ ? barHeight() : 0);
  dock_.setMaximumHeight(folded_ ? barHeight() : QWIDGETSIZE_MAX);
  summary_->setText(folded_ ? words_ : QString());
  fold_->setIcon(icon(folded_ ? "small/down" : "small/up"));
  fold_->setToolTip(folded_ ? tr("Unfold") : tr("Fold"));
  fold_->setAccessibleName(fold_->toolTip() + ' ' + dock_.windowTitle());
}

// Presses are left to the dock too, which moves with a drag; only one without travel folds.
void PanelTitle::mousePressEvent(QMouseEvent* event) {
  pressedAt_ = event->globalPosition().toPoint();
  event->ignore();
}

void PanelTitle::mouseReleaseEvent(QMouseEvent* event) {
  const QPoint travel = event->globalPosition().toPoint() - pressedAt_;
  if (event->button() == Qt::LeftButton && travel.manhattanLength() < QApplication::startDragDistance()) toggle();
  event->ignore();
}

}  // namespace zyga::ui
