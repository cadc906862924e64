#include "ui/panels/findings_panel.h"

#include <QAbstractItemView>
#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QPainter>
#include <QStyle>
#include <QTextLayout>
#include <algorithm>
#include <cmath>

#include "ui/panels/findings_model.h"
#include "ui/panels/readouts.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/words/say.h"

namespace zyga::ui {

FindingsPanel::FindingsPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      model_(new FindingsModel(document, this)),
      count_(mutedLabel()),
      under_(mutedLabel()),
      all_(new QCheckBox(tr("All joints"))),
      list_(new QListView),
      quiet_(mutedLabel(tr("Every joint is within its range as it is posed."))) {
  count_->setObjectName("findingsCount");
  under_->setObjectName("findingsUnder");
  under_->setFont(smallFont(font()));
  all_->setObjectName("findingsAll");
  all_->setToolTip(tr("Also list the joints that are within range or not assessed"));
  createList();
  auto* head = new QHBoxLayout;
  head->addWidget(count_, 1);
  head->addWidget(all_);
  auto* layout = new QVBoxLayout(this);
  setPanelMargins(*layout);
  layout->setSpacing(kGridStep);
  layout->addLayout(head);
  layout->addWidget(under_);
  layout->addWidget(quiet_);
  layout->addWidget(list_, 1);
  layout->addStretch(0);
  connect(all_, &QCheckBox::toggled, this, [this](bool all) {
    model_->setShowAll(all);
    refresh(Change::Pose);
  });
  connect(&document_, &Document::changed, this, &FindingsPanel::refresh);
  connect(&ThemeSwitch::instance(), &ThemeSwitch::changed, list_->viewport(), qOverload<>(&QWidget::update));
  refresh(Change::Everything);
}

void FindingsPanel::createList() {
  list_->setObjectName("findingsList");
  list_->setModel(model_);
  list_->setItemDelegate(new FindingDelegate(list_));
  list_->setResizeMode(QListView::Adjust);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  list_->setMouseTracking(true);
  list_->setAccessibleName(tr("Findings, worst first"));
  connect(list_, &QListView::clicked, this, &FindingsPanel::take);
  connect(list_, &QListView::activated, this, &FindingsPanel::take);
}

void FindingsPanel::refresh(Changes what) {
  if (what & (Changes(Change::Pose) | Change::Assumptions | Change::Contact)) {
    const bool pending = document_.contactPending();
    count_->setText(document_.hasProject() ? provisionally(verdictCount(document_.assessment()), pending) : QString());
    under_->setText(document_.hasProject() ? tr("assuming %1").arg(assumptionsInShort(document_.assumptions()))
                                           : QString());
    under_->setToolTip(pending ? provisionalReason() : capital(bendingRibsWords()));
    quiet_->setVisible(document_.hasProject() && model_->rowCount() == 0);
    list_->setVisible(!quiet_->isVisibleTo(this));
  }
  if (what & (Changes(Change::Selection) | Change::Pose)) showSelection();
}

void FindingsPanel::showSelection() {
  const auto joint = document_.hasProject() ? document_.selectedJoint() : std::nullopt;
  // A contact that has been chosen stays chosen while its bone is.
  if (const auto contact = model_->contactAt(list_->currentIndex());
      contact && contact->bone == document_.selectedBone())
    return;
  const QModelIndex index = joint ? model_->indexOf(*joint) : QModelIndex();
  if (index == list_->currentIndex()) return;
  list_->setCurrentIndex(index);
}

void FindingsPanel::take(const QModelIndex& index) {
  if (const auto joint = model_->jointAt(index)) {
    document_.selectJoint(joint);
    emit frameJoint(*joint);
  } else if (const auto contact = model_->contactAt(index)) {
    document_.selectBone(contact->bone);
    emit frameContact(*contact);
  }
}

namespace {

constexpr int kShapeSize = 10;
constexpr int kTextLeft = kGridStep + kShapeSize + kGap;

/// How much of a row's text stands out: the joint's name, with which its sentence begins; in lists without names the
/// first word.
qsizetype strongLength(const QModelIndex& index, const QString& text) {
  const QVariant name = index.data(FindingsModel::kNameRole);
  const qsizetype length = name.isValid() ? name.toString().size() : text.indexOf(QLatin1Char(' '));
  return std::max<qsizetype>(0, length);
}

/// Lays the sentence out in `width` and returns its height.
qreal layOut(QTextLayout& layout, qreal width, const QModelIndex& index) {
  QTextCharFormat strong;
  strong.setFontWeight(QFont::DemiBold);
  layout.setFormats({{0, static_cast<int>(strongLength(index, layout.text())), strong}});
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
  layOut(layout, textWidth(option), index);
  painter->setPen(theme().text);
  layout.draw(painter, top + QPointF(kTextLeft, 0));
  painter->restore();
}

QSize FindingDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const QVariant room = index.data(FindingsModel::kRoomRole);
  QTextLayout layout((room.isValid() ? room : index.data()).toString(), option.font);
  const qreal height = layOut(layout, textWidth(option), index);
  return {static_cast<int>(textWidth(option)) + kTextLeft, static_cast<int>(std::ceil(height)) + 2 * kGridStep};
}

}  // namespace zyga::ui
