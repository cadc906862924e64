#include "ui/panels/finding_delegate.h"

#include <QAbstractItemView>
#include <QPainter>
#include <QStyle>
#include <QTextLayout>

#include "ui/panels/findings_model.h"
#include "ui/theme/figures.h"
#include "ui/theme/theme.h"

namespace zyga::ui {
namespace {

constexpr int kShapeSize = 10;
constexpr int kTextLeft = kGridStep + kShapeSize + kGap;

/// Lays the sentence out in `width` and returns its height. A joint's sentence begins with its name.
qreal layOut(QTextLayout& layout, qreal width, bool named) {
  const int space = named ? static_cast<int>(layout.text().indexOf(' ')) : 0;
  QTextCharFormat strong;
  strong.setFontWeight(QFont::DemiBold);
  layout.setFormats({{0, space > 0 ? space : 0, strong}});
  layout.beginLayout();
  qreal height = 0;
  for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
    line.setLineWidth(width);
    line.setPosition({0, height});
    height += line.height();
  }
  layout.endLayout();
  return height;
}

/// Leaves room for the scroll bar whether it is there or not, so that sentences keep their height when it comes.
qreal textWidth(const QStyleOptionViewItem& option) {
  const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
  const int full = view ? view->contentsRect().width() - view->style()->pixelMetric(QStyle::PM_ScrollBarExtent)
                        : option.rect.width();
  return std::max(80, full - kTextLeft - kGridStep);
}

}  // namespace

void FindingDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  const bool selected = option.state & QStyle::State_Selected;
  if (selected || (option.state & QStyle::State_MouseOver)) {
    painter->setPen(Qt::NoPen);
    painter->setBrush(selected ? mixed(theme().panel, theme().choice, 0.20) : mixed(theme().panel, theme().text, 0.07));
    painter->drawRoundedRect(option.rect, 4, 4);
  }
  const QPointF top = option.rect.topLeft() + QPointF(0, kGridStep);
  const QPointF shape = top + QPointF(kGridStep + kShapeSize / 2.0, option.fontMetrics.height() / 2.0);
  if (index.data(FindingsModel::kContactRole).toBool())
    paintContact(*painter, shape, kShapeSize);
  else
    paintVerdict(*painter, shape, kShapeSize, static_cast<range::Level>(index.data(FindingsModel::kLevelRole).toInt()));
  QTextLayout layout(index.data().toString(), option.font);
  layOut(layout, textWidth(option), !index.data(FindingsModel::kContactRole).toBool());
  painter->setPen(theme().text);
  layout.draw(painter, top + QPointF(kTextLeft, 0));
  painter->restore();
}

QSize FindingDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  QTextLayout layout(index.data().toString(), option.font);
  const qreal height = layOut(layout, textWidth(option), !index.data(FindingsModel::kContactRole).toBool());
  return {static_cast<int>(textWidth(option)) + kTextLeft, static_cast<int>(std::ceil(height)) + 2 * kGridStep};
}

}  // namespace zyga::ui
