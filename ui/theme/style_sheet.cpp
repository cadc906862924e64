#include "ui/theme/style_sheet.h"

#include <utility>
#include <vector>

#include "ui/theme/theme.h"

namespace zyga::ui {
namespace {

// Words in @ are filled in from the theme below. Borders are one pixel; a focus ring takes the place of border and one
// pixel of padding, so nothing moves.
const char* const kSheet = R"(
QToolTip { background: @panel; color: @text; border: 1px solid @edge; padding: 4px 8px; }

QLabel[role="title"] { font-weight: 600; }
QLabel[role="muted"] { color: @muted; background: transparent; }
QFrame[role="hairline"] { background: @line; border: none; }
QWidget[role="panel"] { background: @panel; }

QMainWindow::separator { background: @line; width: 1px; height: 1px; }
QMainWindow::separator:hover { background: @choice; }
QSplitter::handle { background: @line; }
QSplitter::handle:horizontal { width: 1px; }
QSplitter::handle:vertical { height: 1px; }
QSplitter::handle:hover { background: @choice; }
QDockWidget::title { background: @panel; padding: 8px 16px 4px 16px; text-align: left; }

QMenuBar { background: @window; padding: 2px 8px; }
QMenuBar::item { background: transparent; padding: 4px 8px; border-radius: 4px; }
QMenuBar::item:selected { background: @hover; }
QMenuBar::item:pressed { background: @picked; }
QMenu { background: @panel; border: 1px solid @edge; padding: 4px; }
QMenu::item { padding: 4px 24px 4px 12px; border-radius: 4px; }
QMenu::item:selected { background: @picked; }
QMenu::item:disabled { color: @faded; }
QMenu::icon { padding-left: 8px; }
QMenu::separator { height: 1px; background: @line; margin: 4px 8px; }

QToolBar { background: @window; border: none; border-bottom: 1px solid @line; padding: 4px 8px; spacing: 4px; }
QToolBar::separator { background: @line; width: 1px; margin: 4px 8px; }
QToolButton { background: transparent; border: 1px solid transparent; border-radius: 4px; padding: 4px; }
QToolButton:hover { background: @hover; }
QToolButton:pressed { background: @pressed; }
QToolButton:checked { background: @picked; }
QToolButton:focus { border: 1px solid @choice; }
QToolButton[popupMode="1"], QToolButton[popupMode="2"] { padding-right: 16px; }
QToolButton::menu-indicator { image: url(:/icons/small/down.svg); width: 10px; height: 10px;
  subcontrol-position: right center; right: 2px; }
QToolButton::menu-button { border: none; width: 16px; }
QToolButton::menu-arrow { image: url(:/icons/small/down.svg); width: 10px; height: 10px; }

QPushButton { background: @panel; border: 1px solid @edge; border-radius: 4px; padding: 4px 15px; min-height: 20px; }
QPushButton:hover { background: @hover; }
QPushButton:pressed { background: @pressed; }
QPushButton:checked { background: @picked; border-color: @choice; }
QPushButton:default { border-color: @choice; color: @choice; }
QPushButton:focus { border: 2px solid @choice; padding: 3px 14px; }
QPushButton:disabled { color: @faded; border-color: @line; }

QLineEdit, QPlainTextEdit, QTextEdit, QAbstractSpinBox, QComboBox {
  background: @field; border: 1px solid @edge; border-radius: 4px; padding: 2px 7px; min-height: 20px;
  selection-background-color: @choice; selection-color: @panel; }
QAbstractSpinBox QLineEdit, QComboBox QLineEdit { border: none; padding: 0px; min-height: 0px; background: transparent; }
QAbstractSpinBox { padding-right: 20px; }
QLineEdit:hover, QAbstractSpinBox:hover, QComboBox:hover { border-color: @muted; }
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus, QComboBox:focus {
  border: 2px solid @choice; padding: 1px 6px; }
QAbstractSpinBox:focus { border: 2px solid @choice; padding: 1px 19px 1px 6px; }
QAbstractSpinBox QLineEdit:focus { border: none; padding: 0px; }
QLineEdit:disabled, QAbstractSpinBox:disabled, QComboBox:disabled { color: @faded; border-color: @line;
  background: @panel; }
QAbstractSpinBox::up-button, QAbstractSpinBox::down-button { background: transparent; border: none; width: 18px;
  subcontrol-origin: border; margin: 2px; border-radius: 3px; }
QAbstractSpinBox::up-button { subcontrol-position: top right; }
QAbstractSpinBox::down-button { subcontrol-position: bottom right; }
QAbstractSpinBox::up-button:hover, QAbstractSpinBox::down-button:hover { background: @hover; }
QAbstractSpinBox::up-button:pressed, QAbstractSpinBox::down-button:pressed { background: @pressed; }
QAbstractSpinBox::up-arrow { image: url(:/icons/small/up.svg); width: 9px; height: 9px; }
QAbstractSpinBox::down-arrow { image: url(:/icons/small/down.svg); width: 9px; height: 9px; }
QComboBox::drop-down { border: none; width: 20px; }
QComboBox::down-arrow { image: url(:/icons/small/down.svg); width: 10px; height: 10px; }
QComboBox QAbstractItemView { background: @panel; border: 1px solid @edge; outline: none; padding: 4px; }

QAbstractItemView { background: @panel; border: 1px solid transparent; outline: none;
  selection-background-color: @picked; selection-color: @text; }
QAbstractItemView:focus { border: 1px solid @choice; }
QTreeView::item, QListView::item, QTableView::item { padding: 0px 4px; color: @text;
  border: none; }
QTreeView::item:hover, QListView::item:hover, QTableView::item:hover { background: @hover; }
QTreeView::item:selected, QListView::item:selected, QTableView::item:selected { background: @picked; color: @text; }
QTreeView::branch { background: transparent; }
QTreeView::branch:has-children:closed { image: url(:/icons/small/branch-closed.svg); }
QTreeView::branch:has-children:open { image: url(:/icons/small/branch-open.svg); }
QHeaderView::section { background: @panel; color: @muted; border: none; border-bottom: 1px solid @line;
  padding: 4px 8px; }
QTableCornerButton::section { background: @panel; border: none; border-bottom: 1px solid @line; }

QCheckBox, QRadioButton { spacing: 8px; }
QCheckBox::indicator, QRadioButton::indicator, QMenu::indicator { width: 14px; height: 14px; background: @field;
  border: 1px solid @edge; border-radius: 3px; }
QRadioButton::indicator { border-radius: 8px; }
QMenu::indicator { margin-left: 6px; }
QCheckBox::indicator:hover, QRadioButton::indicator:hover { border-color: @muted; }
QCheckBox::indicator:checked, QMenu::indicator:checked { background: @choice; border-color: @choice;
  image: url(:/icons/small/check-@scheme.svg); }
QRadioButton::indicator:checked { width: 6px; height: 6px; border: 5px solid @choice; }
QCheckBox:focus, QRadioButton:focus { color: @choice; }
QCheckBox::indicator:focus, QRadioButton::indicator:focus { border-color: @choice; }
QCheckBox:disabled, QRadioButton:disabled { color: @faded; }

QTabBar::tab { background: transparent; color: @muted; padding: 6px 12px; border: none;
  border-bottom: 2px solid transparent; }
QTabBar::tab:selected { color: @text; border-bottom: 2px solid @choice; }
QTabBar::tab:hover { color: @text; }
QTabWidget::pane { border: none; border-top: 1px solid @line; }

QScrollArea { background: transparent; border: none; }
QScrollBar { background: transparent; border: none; }
QScrollBar:vertical { width: 12px; margin: 0px; }
QScrollBar:horizontal { height: 12px; margin: 0px; }
QScrollBar::handle { background: @thumb; border-radius: 3px; margin: 3px; }
QScrollBar::handle:vertical { min-height: 32px; }
QScrollBar::handle:horizontal { min-width: 32px; }
QScrollBar::handle:hover, QScrollBar::handle:pressed { background: @muted; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0px; height: 0px; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QAbstractScrollArea::corner { background: transparent; }

QSlider { min-height: 20px; }
QSlider::groove:horizontal { height: 4px; border-radius: 2px; background: @line; }
QSlider::sub-page:horizontal { height: 4px; border-radius: 2px; background: @muted; }
QSlider::handle:horizontal { width: 12px; height: 12px; margin: -5px 0px; border-radius: 7px; background: @panel;
  border: 1px solid @muted; }
QSlider::handle:horizontal:hover { border-color: @text; }
QSlider:focus { border: 1px solid @choice; border-radius: 4px; }
QProgressBar { background: @line; border: none; border-radius: 2px; max-height: 4px; text-align: center; }
QProgressBar::chunk { background: @choice; border-radius: 2px; }

QStatusBar { background: @window; border-top: 1px solid @line; }
QStatusBar::item { border: none; }
QGroupBox { border: none; margin-top: 24px; padding: 0px; }
QGroupBox::title { subcontrol-origin: margin; subcontrol-position: top left; font-weight: 600; }
)";

std::vector<std::pair<const char*, QColor>> words(const Theme& t) {
  // Longer words first where one begins another.
  return {{"@window", t.window},
          {"@panel", t.panel},
          {"@text", t.text},
          {"@muted", t.muted},
          {"@line", t.line},
          {"@choice", t.choice},
          {"@edge", mixed(t.line, t.muted, 0.35)},
          {"@field", mixed(t.panel, t.scheme == Scheme::Light ? QColor(Qt::white) : QColor(Qt::black),
                           t.scheme == Scheme::Light ? 0.6 : 0.18)},
          {"@hover", mixed(t.panel, t.text, 0.07)},
          {"@pressed", mixed(t.panel, t.text, 0.14)},
          {"@picked", mixed(t.panel, t.choice, 0.20)},
          {"@thumb", mixed(t.line, t.muted, 0.25)},
          {"@faded", mixed(t.panel, t.muted, 0.6)}};
}

}  // namespace

QString styleSheet(const Theme& theme) {
  QString sheet = QString::fromLatin1(kSheet);
  sheet.replace(QLatin1String("@scheme"), QLatin1String(theme.scheme == Scheme::Light ? "light" : "dark"));
  for (const auto& [word, colour] : words(theme)) sheet.replace(QLatin1String(word), colour.name());
  return sheet;
}

}  // namespace zyga::ui
