#pragma once

#include <QString>

class QAbstractItemModel;
class QAbstractItemView;
class QLabel;
class QLayout;
class QToolButton;

/// Small pieces the panels share.
namespace zyga::ui {

/// Secondary text that wraps.
QLabel* mutedLabel(const QString& text = {});
/// A flat button with an icon of ours; `text` is its tool tip and its name for assistive technology.
QToolButton* iconButton(const char* iconName, const QString& text);
/// Margins and gaps of a panel's outermost layout.
void setPanelMargins(QLayout& layout);

}  // namespace zyga::ui
