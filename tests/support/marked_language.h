#pragma once

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QDockWidget>
#include <QDoubleSpinBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QRegularExpression>
#include <QSpinBox>
#include <QTabBar>
#include <QTextDocument>
#include <QTextDocumentFragment>
#include <QTextEdit>
#include <QTranslator>
#include <functional>

/// A language made by the tests, in which whatever has been translated stands between marks, so that words which never
/// went through a translation are seen.
namespace zyga::test {

inline const QChar kMarked(0x27E6), kMarkedEnd(0x27E7);

/// "%1 of %2 joints" -> "%1[ of ]%2[ joints]": what is filled in later stands outside the marks and needs its own. Tags
/// of rich text stay as they are.
inline QString marked(const QString& sentence) {
  static const QRegularExpression part(R"((?<bare><[^<>]*>|%L?\d|%n)|(?:(?!<[^<>]*>|%L?\d|%n).)+)",
                                       QRegularExpression::DotMatchesEverythingOption);
  static const QRegularExpression letter(R"(\p{L})");
  QString out;
  for (auto found = part.globalMatch(sentence); found.hasNext();) {
    const QRegularExpressionMatch match = found.next();
    const QString text = match.captured();
    const bool bare = match.hasCaptured(QStringLiteral("bare")) || !text.contains(letter);
    out += bare ? text : kMarked + text + kMarkedEnd;
  }
  return out;
}

/// Every sentence of ours and of the toolkit, in any number, marked.
class MarkedLanguage : public QTranslator {
 public:
  MarkedLanguage() { QCoreApplication::installTranslator(this); }
  ~MarkedLanguage() override { QCoreApplication::removeTranslator(this); }
  bool isEmpty() const override { return false; }
  /// As if nobody had translated these, to see that they are found.
  QList<QByteArray> forgotten;

  QString translate(const char* context, const char* sentence, const char*, int) const override {
    // Names of keys stand inside shortcuts, which are read back.
    if (qstrcmp(context, "QShortcut") == 0 || forgotten.contains(sentence)) return {};
    return marked(QString::fromUtf8(sentence));
  }
};

/// How many marks of a text are open at its end.
inline int openMarks(const QString& text) {
  return static_cast<int>(text.count(kMarked)) - static_cast<int>(text.count(kMarkedEnd));
}

/// What is left of a text when everything marked is taken out.
inline QString outsideMarks(QString text) {
  static const QRegularExpression inner(QString("%1[^%1%2]*%2").arg(kMarked).arg(kMarkedEnd));
  for (QString before; before != text;) {
    before = text;
    text.replace(inner, QString(QChar(0xFFFC)));
  }
  return text.remove(QChar(0xFFFC));
}

/// The words of a text that no translation has seen, but for those that need none: `exempt` knows ids, units and names.
inline QStringList unmarkedWords(const QString& text, const std::function<bool(const QString&)>& exempt) {
  static const QRegularExpression word(R"([\p{L}\d][\p{L}\p{M}\d._/'’+-]*)"), letters(R"(\p{L}{2})");
  const QString plain = Qt::mightBeRichText(text) ? QTextDocumentFragment::fromHtml(text).toPlainText() : text;
  QStringList words;
  for (auto found = word.globalMatch(outsideMarks(plain)); found.hasNext();) {
    QString said = found.next().captured();
    while (said.endsWith('.') || said.endsWith('\'')) said.chop(1);
    if (said.contains(letters) && !exempt(said)) words += said;
  }
  return words;
}

/// Gathers all texts that a person may see or hear, with the place of each.
class Texts {
 public:
  struct Text {
    QString place, text;
  };

  /// A window and everything visible in it; dialogs before it are windows of their own.
  void addWindow(QWidget& window) {
    addWidget(window);
    for (QWidget* widget : window.findChildren<QWidget*>()) {
      const bool elsewhere = widget->window() != &window && qobject_cast<QDialog*>(widget->window());
      if (!elsewhere && widget->isVisibleTo(&window)) addWidget(*widget);
    }
    for (const QAction* action : window.findChildren<QAction*>()) addAction(*action);
  }
  void addAction(const QAction& action) {
    const QString place = "action " + action.objectName();
    add(place, action.text());
    add(place, action.toolTip());
    add(place, action.statusTip());
    add(place, action.whatsThis());
  }

  void add(const QString& place, const QString& text) {
    if (!text.trimmed().isEmpty()) all_ += {place, text};
  }

  const QList<Text>& all() const { return all_; }

 private:
  void addWidget(const QWidget& widget) {
    const QString place = widget.metaObject()->className() + (' ' + widget.objectName());
    add(place, widget.toolTip());
    add(place, widget.statusTip());
    add(place, widget.whatsThis());
    add(place, widget.accessibleName());
    add(place, widget.accessibleDescription());
    if (widget.isWindow() || qobject_cast<const QDockWidget*>(&widget)) add(place, widget.windowTitle());
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) add(place, label->text());
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) add(place, button->text());
    if (const auto* group = qobject_cast<const QGroupBox*>(&widget)) add(place, group->title());
    if (const auto* bar = qobject_cast<const QProgressBar*>(&widget)) add(place, bar->text());
    if (const auto* tabs = qobject_cast<const QTabBar*>(&widget)) addTabs(place, *tabs);
    if (const auto* box = qobject_cast<const QComboBox*>(&widget)) addChoices(place, *box);
    if (const auto* view = qobject_cast<const QAbstractItemView*>(&widget)) addItems(place, *view);
    addFields(place, widget);
  }

  void addTabs(const QString& place, const QTabBar& tabs) {
    for (int i = 0; i < tabs.count(); ++i) {
      add(place, tabs.tabText(i));
      add(place, tabs.tabToolTip(i));
    }
  }
  void addChoices(const QString& place, const QComboBox& box) {
    for (int i = 0; i < box.count(); ++i) add(place, box.itemText(i));
  }

  /// What a person types is their own; what stands in an empty field, before or after it is ours.
  void addFields(const QString& place, const QWidget& widget) {
    if (const auto* line = qobject_cast<const QLineEdit*>(&widget)) {
      add(place, line->placeholderText());
      const bool typed = !line->isReadOnly() || qobject_cast<const QAbstractSpinBox*>(line->parentWidget());
      if (!typed) add(place, line->text());
    }
    if (const auto* whole = qobject_cast<const QSpinBox*>(&widget)) {
      for (const QString& text : {whole->prefix(), whole->suffix(), whole->specialValueText()}) add(place, text);
    }
    if (const auto* real = qobject_cast<const QDoubleSpinBox*>(&widget)) {
      for (const QString& text : {real->prefix(), real->suffix(), real->specialValueText()}) add(place, text);
    }
    if (const auto* page = qobject_cast<const QTextEdit*>(&widget)) {
      add(place, page->placeholderText());
      if (page->isReadOnly()) add(place, page->toPlainText());
    }
    if (const auto* page = qobject_cast<const QPlainTextEdit*>(&widget)) {
      add(place, page->placeholderText());
      if (page->isReadOnly()) add(place, page->toPlainText());
    }
  }

  void addItems(const QString& place, const QAbstractItemView& view) {
    const QAbstractItemModel* model = view.model();
    if (!model || qobject_cast<const QHeaderView*>(&view)) return;
    for (int column = 0; column < model->columnCount(); ++column)
      for (const int role : {Qt::DisplayRole, Qt::ToolTipRole})
        add(place + " header", model->headerData(column, Qt::Horizontal, role).toString());
    addRows(place, *model, view.rootIndex());
  }
  void addRows(const QString& place, const QAbstractItemModel& model, const QModelIndex& parent) {
    for (int row = 0; row < model.rowCount(parent); ++row)
      for (int column = 0; column < model.columnCount(parent); ++column) {
        const QModelIndex index = model.index(row, column, parent);
        for (const int role : {Qt::DisplayRole, Qt::ToolTipRole, Qt::AccessibleTextRole}) {
          add(place + " item", index.data(role).toString());
        }
        if (column == 0 && model.hasChildren(index)) addRows(place, model, index);
      }
  }

  QList<Text> all_;
};

/// Texts in which a word lacks the mark: "QLabel reachLocked: No joint is locked". Numbers are written #, so that the
/// same sentence is told once.
inline QStringList unmarkedTexts(const Texts& texts, const std::function<bool(const QString&)>& exempt) {
  static const QRegularExpression number(R"([-−+]?\d+(?:[.,]\d+)*)");
  QStringList found;
  for (const auto& [place, text] : texts.all()) {
    if (unmarkedWords(text, exempt).isEmpty()) continue;
    QString told = place + ": " + text.simplified();
    found += told.replace(number, "#");
  }
  found.removeDuplicates();
  return found;
}

}  // namespace zyga::test
