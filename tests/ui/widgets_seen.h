#pragma once

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QAccessible>
#include <QComboBox>
#include <QDockWidget>
#include <QLabel>
#include <QLineEdit>
#include <QScrollBar>
#include <QTabBar>
#include <QTextDocumentFragment>
#include <QToolButton>

/// What a person, or a program that reads the screen to them, finds in a window.
namespace zyga::ui {

/// "QLabel reachLocked 'No joint is locked' in reachPanel"
inline QString described(const QWidget& widget) {
  QString words = widget.metaObject()->className() + (' ' + widget.objectName());
  if (const auto* label = qobject_cast<const QLabel*>(&widget)) words += " '" + label->text() + "'";
  if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) words += " '" + button->text() + "'";
  for (const QWidget* holder = widget.parentWidget(); holder; holder = holder->parentWidget())
    if (!holder->objectName().isEmpty() && !holder->objectName().startsWith("qt_"))
      return words + " in " + holder->objectName();
  return words;
}

/// Parts that the toolkit makes inside its own controls.
inline bool innerPart(const QWidget& widget) {
  const QWidget* holder = widget.parentWidget();
  if (widget.objectName().startsWith("qt_") || qobject_cast<const QScrollBar*>(&widget)) return true;
  if (qobject_cast<const QTabBar*>(&widget) || qobject_cast<const QTabBar*>(holder)) return true;
  const bool inField = holder && (holder->inherits("QAbstractSpinBox") || holder->inherits("QComboBox") ||
                                  holder->inherits("QLineEdit") || holder->inherits("QComboBoxPrivateContainer"));
  return inField || widget.inherits("QHeaderView") || widget.inherits("QTableCornerButton");
}

/// Controls that the Tab key reaches and that have no name for assistive technology.
inline QStringList nameless(QWidget& window) {
  QStringList found;
  for (QWidget* widget : window.findChildren<QWidget*>()) {
    if (!(widget->focusPolicy() & Qt::TabFocus) || innerPart(*widget)) continue;
    if (qobject_cast<QScrollBar*>(widget) || widget->inherits("QScrollArea")) continue;
    QAccessibleInterface* told = QAccessible::queryAccessibleInterface(widget);
    if (!told || told->text(QAccessible::Name).trimmed().isEmpty()) found += described(*widget);
  }
  return found;
}

/// Room that the words of a label or button ask for at its present width.
inline QSize roomAskedFor(const QWidget& widget) {
  if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
    if (label->wordWrap()) return {0, label->heightForWidth(label->width())};
    return label->minimumSizeHint();
  }
  const auto* button = qobject_cast<const QAbstractButton*>(&widget);
  if (!button || button->text().isEmpty()) return {0, 0};
  if (const auto* tool = qobject_cast<const QToolButton*>(button);
      tool && tool->toolButtonStyle() == Qt::ToolButtonIconOnly && !tool->icon().isNull())
    return {0, 0};
  QSize words = button->fontMetrics().size(Qt::TextShowMnemonic, button->text());
  if (!button->icon().isNull() && !button->inherits("QToolButton")) words.rwidth() += button->iconSize().width();
  return words;
}

/// Why the words of this widget cannot be read in full; empty when they can.
inline QString clipping(const QWidget& widget) {
  const QSize asked = roomAskedFor(widget);
  if (asked.width() > widget.width() + 1) return QString("%1 px wide, has %2").arg(asked.width()).arg(widget.width());
  if (asked.height() > widget.height() + 1)
    return QString("%1 px high, has %2").arg(asked.height()).arg(widget.height());
  bool scrolls = false;
  for (const QWidget* holder = widget.parentWidget(); holder; holder = holder->parentWidget()) {
    const QRect in(widget.mapTo(holder, QPoint(0, 0)), widget.size());
    if (in.left() < 0 || in.right() > holder->width())
      return QString("reaches from %1 to %2 of %3 px in %4")
          .arg(in.left())
          .arg(in.right())
          .arg(holder->width())
          .arg(holder->objectName());
    if (qobject_cast<const QAbstractScrollArea*>(holder->parentWidget())) scrolls = true;
    if (!scrolls && (in.top() < 0 || in.bottom() > holder->height()))
      return QString("stands outside %1").arg(described(*holder));
    if (holder->isWindow()) break;
  }
  return {};
}

/// Labels and buttons on screen whose words are cut off.
inline QStringList clipped(QWidget& window) {
  QStringList found;
  for (QWidget* widget : window.findChildren<QWidget*>()) {
    if (!widget->isVisible() || widget->visibleRegion().isEmpty() || innerPart(*widget)) continue;
    if (!qobject_cast<QLabel*>(widget) && !qobject_cast<QAbstractButton*>(widget)) continue;
    if (const QString why = clipping(*widget); !why.isEmpty()) found += described(*widget) + ": " + why;
  }
  return found;
}

}  // namespace zyga::ui
