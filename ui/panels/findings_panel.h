#pragma once

#include <QStyledItemDelegate>
#include <QWidget>

#include "ui/document/document.h"

class QCheckBox;
class QLabel;
class QListView;

class QTextLayout;

namespace zyga::ui {

class FindingsModel;

/// The sentences about the pose on screen. Choosing one selects its joint, or the bone that enters another, and asks
/// for it to be framed.
class FindingsPanel : public QWidget {
  Q_OBJECT
 public:
  explicit FindingsPanel(Document& document, QWidget* parent = nullptr);
  QSize sizeHint() const override { return {320, 200}; }

 signals:
  void frameJoint(zyga::anatomy::JointIndex joint);
  void frameContact(const zyga::range::ContactFinding& contact);

 private:
  void createList();
  void refresh(Changes what);
  void showSelection();
  void take(const QModelIndex& index);

  Document& document_;
  FindingsModel* model_;
  QLabel* count_;
  QLabel* under_;  ///< which assumptions
  QCheckBox* all_;
  QListView* list_;
  QLabel* quiet_;  ///< what is said when there is nothing to say
};

/// A verdict's shape and its sentence, wrapped to the width of the list; the joint's name stands out.
class FindingDelegate : public QStyledItemDelegate {
  Q_OBJECT
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace zyga::ui
