#pragma once

#include <QString>

class QComboBox;
class QLabel;
class QLayout;
class QScrollArea;
class QToolButton;
class QWidget;

/// Small pieces the panels share.
namespace zyga::ui {

/// Secondary text that wraps.
QLabel* mutedLabel(const QString& text = {});
/// A flat button with an icon of ours; `text` is its tool tip and its name for assistive technology.
QToolButton* iconButton(const char* iconName, const QString& text);
/// A list of choices that the wheel changes only once it has the focus, so that a panel scrolls past it unharmed.
QComboBox* calmComboBox();
/// Scrolls its content up and down on the panel's own surface.
QScrollArea* scrolling(QWidget* content);
/// Lists may shrink to two rows, px, so that all panels together fit into a small window.
int leastListHeight();
/// Margins and gaps of a panel's outermost layout.
void setPanelMargins(QLayout& layout);

}  // namespace zyga::ui
