#include "ui/panels/evidence_delegate.h"

#include <QComboBox>
#include <QPainter>

#include "ui/panels/bones_model.h"
#include "ui/parts/evidence_mark.h"
#include "ui/theme/figures.h"
#include "ui/theme/theme.h"

namespace zyga::ui {

QWidget* EvidenceDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex&) const {
  QComboBox* box = evidenceChoice(parent);
  connect(box, &QComboBox::activated, this, [this, box] {
    auto* self = const_cast<EvidenceDelegate*>(this);
    emit self->commitData(box);
    emit self->closeEditor(box);
  });
  return box;
}

void EvidenceDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  auto* box = static_cast<QComboBox*>(editor);
  box->setCurrentIndex(box->findData(index.data(Qt::EditRole)));
}

void EvidenceDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
  model->setData(index, static_cast<QComboBox*>(editor)->currentData());
}

void BoneTitleDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  QStyledItemDelegate::paint(painter, option, index);
  const QString id = index.data(BonesModel::kIdRole).toString();
  const QString title = index.data().toString();
  if (id.isEmpty() || title.compare(id, Qt::CaseInsensitive) == 0) return;
  const QRect area = option.rect.adjusted(kGap, 0, -kGap, 0);
  if (option.fontMetrics.horizontalAdvance(title + "  " + id) + kGap > area.width()) return;
  painter->save();
  painter->setFont(option.font);
  painter->setPen(theme().muted);
  painter->drawText(area, Qt::AlignRight | Qt::AlignVCenter, id);
  painter->restore();
}

}  // namespace zyga::ui
