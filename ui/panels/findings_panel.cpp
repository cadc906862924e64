#include "ui/panels/findings_panel.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QListView>

#include "ui/panels/finding_delegate.h"
#include "ui/panels/findings_model.h"
#include "ui/panels/readouts.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/figures.h"
#include "ui/theme/theme.h"

namespace zyga::ui {

FindingsPanel::FindingsPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      model_(new FindingsModel(document, this)),
      count_(mutedLabel()),
      under_(mutedLabel()),
      all_(new QCheckBox(tr("All joints"))),
      list_(new QListView),
      quiet_(mutedLabel(tr("The bones support every joint as it is posed."))) {
  count_->setObjectName("findingsCount");
  under_->setObjectName("findingsUnder");
  under_->setFont(smallFont(font()));
  all_->setObjectName("findingsAll");
  all_->setToolTip(tr("Also list the joints that are supported or not judged"));
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
  if (what & (Changes(Change::Pose) | Change::Assumptions)) {
    count_->setText(document_.hasProject() ? verdictCount(document_.assessment()) : QString());
    under_->setText(document_.hasProject() ? tr("under %1").arg(assumptionsInShort(document_.assumptions()))
                                           : QString());
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

}  // namespace zyga::ui
