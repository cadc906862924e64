#include "ui/dialogs/measurement_view.h"

#include <QAbstractProxyModel>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QPainterPath>
#include <map>
#include <set>

#include "ui/dialogs/measurement_model.h"
#include "ui/parts/evidence_mark.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"

namespace zyga::ui {
namespace {

constexpr char kCellProperty[] = "measurementCell";

/// Why what stands in a field cannot stand in its cell.
QString refusalIn(const QLineEdit& field) {
  const auto index = field.property(kCellProperty).value<QPersistentModelIndex>();
  const auto* proxy = qobject_cast<const QAbstractProxyModel*>(index.model());
  const auto* model = qobject_cast<const MeasurementModel*>(proxy ? proxy->sourceModel() : index.model());
  if (!index.isValid() || !model) return {};
  return model->refusalOf(proxy ? proxy->mapToSource(index) : QModelIndex(index), field.text());
}

}  // namespace

QWidget* MeasurementCellDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                               const QModelIndex& index) const {
  if (index.data(Qt::EditRole).typeId() == QMetaType::Int) {
    QComboBox* choice = evidenceChoice(parent);
    auto* self = const_cast<MeasurementCellDelegate*>(this);
    connect(choice, &QComboBox::activated, self, [self, choice] {
      emit self->commitData(choice);
      emit self->closeEditor(choice);
    });
    return choice;
  }
  auto* field = qobject_cast<QLineEdit*>(QStyledItemDelegate::createEditor(parent, option, index));
  auto* line = field ? field : new QLineEdit(parent);
  line->setObjectName("measurementField");
  line->setFrame(false);
  line->setFont(option.font);
  line->setAlignment(Qt::Alignment(index.data(Qt::TextAlignmentRole).toInt()) | Qt::AlignVCenter);
  line->setPlaceholderText(index.data(MeasurementModel::kInferredRole).toString());
  line->setProperty(kCellProperty, QVariant::fromValue(QPersistentModelIndex(index)));
  connect(line, &QLineEdit::textEdited, this, [this, line] {
    line->setPalette({});
    emit refused({});
  });
  return line;
}

void MeasurementCellDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  if (auto* choice = qobject_cast<QComboBox*>(editor)) {
    choice->setCurrentIndex(choice->findData(index.data(Qt::EditRole)));
  } else if (auto* field = qobject_cast<QLineEdit*>(editor); field && !field->isModified()) {
    field->setText(index.data(Qt::EditRole).toString());
    field->selectAll();
  }
}

void MeasurementCellDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
  if (const auto* choice = qobject_cast<QComboBox*>(editor))
    model->setData(index, choice->currentData().toInt());
  else if (const auto* field = qobject_cast<QLineEdit*>(editor))
    model->setData(index, field->text());
}

bool MeasurementCellDelegate::eventFilter(QObject* editor, QEvent* event) {
  auto* field = qobject_cast<QLineEdit*>(editor);
  if (!field || event->type() != QEvent::KeyPress) return QStyledItemDelegate::eventFilter(editor, event);
  const int key = static_cast<QKeyEvent*>(event)->key();
  const bool commits = key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Tab || key == Qt::Key_Backtab;
  if (key == Qt::Key_Escape) emit refused({});
  if (!commits) return QStyledItemDelegate::eventFilter(editor, event);
  const QString why = refusalIn(*field);
  emit refused(why);
  if (why.isEmpty()) return QStyledItemDelegate::eventFilter(editor, event);
  QPalette palette = field->palette();
  palette.setColor(QPalette::Text, theme().beyond);
  field->setPalette(palette);
  field->selectAll();
  return true;
}

void MeasurementCellDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                                    const QModelIndex& index) const {
  // The style sheet has one ink for all cells, and these have two.
  QStyleOptionViewItem item = option;
  initStyleOption(&item, index);
  const QString text = item.text;
  item.text.clear();
  const QVariant ground = index.data(Qt::BackgroundRole);
  if (ground.isValid()) painter->fillRect(option.rect, ground.value<QColor>());
  const QWidget* widget = option.widget;
  if (widget) widget->style()->drawControl(QStyle::CE_ItemViewItem, &item, painter, widget);
  painter->save();
  painter->setFont(item.font);
  const QVariant ink = index.data(Qt::ForegroundRole);
  painter->setPen(ink.isValid() ? ink.value<QColor>() : theme().text);
  const QRect room = option.rect.adjusted(kGap, 0, -kGap, 0);
  painter->drawText(room, static_cast<int>(item.displayAlignment | Qt::AlignVCenter),
                    item.fontMetrics.elidedText(text, Qt::ElideRight, room.width()));
  painter->restore();
  if (index.data(MeasurementModel::kRemarkRole).toString().isEmpty()) return;
  const QRectF cell = option.rect;
  const qreal size = scaledWithText(9);
  QPainterPath corner(cell.topLeft());
  corner.lineTo(cell.topLeft() + QPointF(size, 0));
  corner.lineTo(cell.topLeft() + QPointF(0, size));
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  painter->fillPath(corner, theme().beyond);
  painter->restore();
}

MeasurementView::MeasurementView(QWidget* parent) : QTableView(parent) {
  setObjectName("measurementTable");
  setFont(figureFont(font()));
  setSelectionMode(QAbstractItemView::ExtendedSelection);
  setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                  QAbstractItemView::AnyKeyPressed);
  setWordWrap(false);
  setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  setAlternatingRowColors(false);
  setTabKeyNavigation(true);
  setAccessibleName(tr("Measurement table"));
  QHeaderView& across = *horizontalHeader();
  across.setDefaultAlignment(Qt::AlignHCenter | Qt::AlignBottom);
  across.setHighlightSections(false);
  QHeaderView& down = *verticalHeader();
  down.setDefaultSectionSize(scaledWithText(24));
  down.setSectionResizeMode(QHeaderView::Fixed);
  down.setHighlightSections(false);
  down.setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
}

void MeasurementView::copy() const {
  // By rows, and by columns as they are shown.
  std::map<int, std::map<int, QString>> rows;
  std::set<int> columns;
  for (const QModelIndex& cell : selectionModel()->selectedIndexes()) {
    if (isColumnHidden(cell.column())) continue;
    columns.insert(cell.column());
    const bool measure = cell.data(MeasurementModel::kMeasuredRole).isValid();
    rows[cell.row()][cell.column()] = cell.data(measure ? Qt::EditRole : Qt::DisplayRole).toString();
  }
  QStringList lines;
  for (auto& [row, cells] : rows) {
    QStringList line;
    for (const int column : columns) line << cells[column];
    lines << line.join('\t');
  }
  if (!lines.isEmpty()) QApplication::clipboard()->setText(lines.join('\n'));
}

void MeasurementView::paste() {
  if (!currentIndex().isValid()) return;
  std::vector<int> columns;
  for (int column = currentIndex().column(); column < model()->columnCount(); ++column)
    if (!isColumnHidden(column)) columns.push_back(column);
  QStringList lines = QApplication::clipboard()->text().remove('\r').split('\n');
  while (!lines.isEmpty() && lines.back().trimmed().isEmpty()) lines.removeLast();
  std::vector<std::pair<QModelIndex, QString>> texts;
  for (qsizetype line = 0; line < lines.size(); ++line) {
    const int row = currentIndex().row() + static_cast<int>(line);
    const QStringList cells = lines[line].split('\t');
    for (qsizetype i = 0; i < cells.size() && i < static_cast<qsizetype>(columns.size()); ++i)
      if (row < model()->rowCount())
        texts.emplace_back(model()->index(row, columns[static_cast<std::size_t>(i)]), cells[i]);
  }
  if (!texts.empty()) emit pasted(texts);
}

void MeasurementView::keyPressEvent(QKeyEvent* event) {
  if (state() != EditingState && event->matches(QKeySequence::Copy)) return copy();
  if (state() != EditingState && event->matches(QKeySequence::Paste)) return paste();
  const bool clears = event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace;
  if (!clears || state() == EditingState) return QTableView::keyPressEvent(event);
  emit clearAsked(selectionModel()->selectedIndexes());
}

}  // namespace zyga::ui
