#include "app/window/docks/panel_dock.h"

#include <QVBoxLayout>
#include <algorithm>

#include "ui/parts/panel_parts.h"
#include "ui/parts/panel_title.h"
#include "ui/theme/theme.h"

namespace zyga::ui {
namespace {

constexpr int kLeftWidth = 312, kRightWidth = 328;  // px, at least
constexpr int kWidestPanel = 620;                   // px; leaves as much to the animal in a small window

}  // namespace

PanelDock::PanelDock(const QString& name, const QString& title, QWidget* content, Qt::DockWidgetArea side)
    : QDockWidget(title), content_(content), side_(side) {
  setObjectName(name);
  content->setProperty("role", "panel");
  content->setAttribute(Qt::WA_StyledBackground);
  // Large text leaves no room for panels on both sides.
  if (textIsLarge() && side_ == Qt::LeftDockWidgetArea) side_ = Qt::RightDockWidgetArea;
  if (side_ == Qt::LeftDockWidgetArea) content->setMinimumWidth(scaledWithText(kLeftWidth));
  if (side_ == Qt::RightDockWidgetArea) content->setMinimumWidth(std::min(scaledWithText(kRightWidth), kWidestPanel));
  // A dock whose whole widget is hidden loses its width, so what folds away is one step further in.
  auto* body = new QWidget;
  auto* layout = new QVBoxLayout(body);
  layout->setContentsMargins(0, 0, 0, 0);
  // At large text a panel may be higher than the window.
  if (textIsLarge() && side_ == Qt::RightDockWidgetArea)
    layout->addWidget(scrolling(content));
  else
    layout->addWidget(content);
  setWidget(body);
  auto* bar = new PanelTitle(*this, *content);
  connect(bar, &PanelTitle::helpAsked, this, &PanelDock::helpAsked);
  setTitleBarWidget(bar);
}

PanelTitle* PanelDock::title() const { return qobject_cast<PanelTitle*>(titleBarWidget()); }

void PanelDock::setFolded(bool folded) {
  if (PanelTitle* bar = title()) bar->setFolded(folded);
}

bool PanelDock::folded() const { return title() && title()->folded(); }

void PanelDock::reveal() {
  show();
  raise();
  if (PanelTitle* bar = title()) bar->unfold();
}

void PanelDock::setSummary(const QString& words) {
  if (PanelTitle* bar = title()) bar->setSummary(words);
}

}  // namespace zyga::ui
