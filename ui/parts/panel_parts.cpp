#include "ui/parts/panel_parts.h"

#include <QComboBox>
#include <QLabel>
#include <QLayout>
#include <QScrollArea>
#include <QToolButton>
#include <QWheelEvent>

#include "ui/theme/icons.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"

namespace zyga::ui {
namespace {

class CalmComboBox : public QComboBox {
 protected:
  void wheelEvent(QWheelEvent* event) override {
    if (hasFocus()) return QComboBox::wheelEvent(event);
    event->ignore();
  }
};

}  // namespace

QComboBox* calmComboBox() {
  auto* box = new CalmComboBox;
  box->setFocusPolicy(Qt::StrongFocus);
  return box;
}

QLabel* mutedLabel(const QString& text) {
  auto* label = new QLabel(text);
  label->setProperty("role", "muted");
  label->setWordWrap(true);
  return label;
}

QToolButton* iconButton(const char* iconName, const QString& text) {
  auto* button = new QToolButton;
  button->setIcon(icon(iconName));
  button->setIconSize({20, 20});
  button->setToolTip(text);
  button->setAccessibleName(text);
  button->setFocusPolicy(Qt::TabFocus);
  return button;
}

QScrollArea* scrolling(QWidget* content) {
  auto* scroll = new QScrollArea;
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setWidget(content);
  // The surface is the panel's, not the window's.
  content->setAutoFillBackground(false);
  scroll->viewport()->setAutoFillBackground(false);
  return scroll;
}

int leastListHeight() { return scaledWithText(44); }

void setPanelMargins(QLayout& layout) {
  layout.setContentsMargins(kWideGap, kGridStep, kWideGap, kWideGap);
  layout.setSpacing(kGap);
}

}  // namespace zyga::ui
