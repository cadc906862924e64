#pragma once

#include <QStyledItemDelegate>

class QTextLayout;

namespace zyga::ui {

/// A verdict's shape and its sentence, wrapped to the width of the list; the joint's name stands out.
class FindingDelegate : public QStyledItemDelegate {
  Q_OBJECT
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace zyga::ui
