#pragma once

#include <QStyledItemDelegate>
#include <QTableView>

namespace zyga::ui {

class MeasurementModel;

/// Cells of the measurement table: what cannot be stays in its field with the reason under it, until it is mended or
/// given up. A cell that is remarked on has a corner in the colour of a warning.
class MeasurementCellDelegate : public QStyledItemDelegate {
  Q_OBJECT
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

 signals:
  /// What was typed cannot be; empty as soon as it is mended.
  void refused(const QString& why) const;

 protected:
  bool eventFilter(QObject* editor, QEvent* event) override;
};

/// The measurement table with its keys: typing replaces a cell, Delete makes the chosen ones blank, and what is
/// measured is copied to other programs and taken from them as lines of cells with tabs between.
class MeasurementView : public QTableView {
  Q_OBJECT
 public:
  explicit MeasurementView(QWidget* parent = nullptr);

 signals:
  void clearAsked(const QModelIndexList& cells);
  /// Texts for cells from the current one on, rows and columns that are hidden left out.
  void pasted(const std::vector<std::pair<QModelIndex, QString>>& texts);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void copy() const;
  void paste();
};

}  // namespace zyga::ui
