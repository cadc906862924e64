#include "ui/panels/poses_panel.h"

#include <QHBoxLayout>
#include <QListView>
#include <QSignalBlocker>
#include <QToolButton>

#include "ui/commands/pose_edits.h"
#include "ui/panels/poses_model.h"
#include "ui/parts/panel_parts.h"

namespace zyga::ui {

PosesPanel::PosesPanel(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), model_(new PosesModel(document, this)), list_(new QListView) {
  list_->setObjectName("poseList");
  list_->setModel(model_);
  list_->setEditTriggers(QAbstractItemView::EditKeyPressed);
  list_->setAccessibleName(tr("Named poses"));
  auto* layout = new QVBoxLayout(this);
  setPanelMargins(*layout);
  layout->addLayout(createButtons());
  layout->addWidget(list_, 1);
  list_->setMinimumHeight(leastListHeight());
  connect(list_, &QListView::doubleClicked, this, &PosesPanel::apply);
  connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, &PosesPanel::refreshButtons);
  connect(&document_, &Document::changed, this, &PosesPanel::refreshButtons);
  refreshButtons();
}

QLayout* PosesPanel::createButtons() {
  add_ = iconButton("add-pose", tr("Keep the present pose under a name"));
  apply_ = iconButton("apply", tr("Take this pose"));
  update_ = iconButton("update", tr("Put the present pose in its place"));
  rename_ = iconButton("rename", tr("Rename"));
  delete_ = iconButton("delete", tr("Delete"));
  compare_ = iconButton("compare", tr("Show as a ghost beside the present pose"));
  compare_->setCheckable(true);
  connect(add_, &QToolButton::clicked, this, &PosesPanel::addPose);
  connect(apply_, &QToolButton::clicked, this, &PosesPanel::apply);
  connect(update_, &QToolButton::clicked, this, &PosesPanel::update);
  connect(rename_, &QToolButton::clicked, this, &PosesPanel::rename);
  connect(delete_, &QToolButton::clicked, this, &PosesPanel::remove);
  connect(compare_, &QToolButton::toggled, this, &PosesPanel::compare);
  auto* row = new QHBoxLayout;
  row->setSpacing(4);
  row->setContentsMargins(-4, 0, 0, 0);
  for (QToolButton* button : {add_, apply_, compare_, update_, rename_, delete_}) row->addWidget(button);
  row->addStretch(1);
  return row;
}

std::optional<std::size_t> PosesPanel::chosen() const {
  const QModelIndex index = list_->currentIndex();
  return index.isValid() ? std::optional(static_cast<std::size_t>(index.row())) : std::nullopt;
}

void PosesPanel::addPose() {
  if (!document_.hasProject()) return;
  addNamedPose(document_, tr("New pose"));
  const QModelIndex added = model_->index(model_->rowCount() - 1);
  list_->setCurrentIndex(added);
  list_->edit(added);
}

void PosesPanel::apply() {
  if (const auto i = chosen()) {
    const files::NamedPose& named = document_.project().poses[*i];
    document_.changePose(named.pose, tr("Take pose “%1”").arg(QString::fromStdString(named.name)));
  }
}

void PosesPanel::rename() { list_->edit(list_->currentIndex()); }

void PosesPanel::remove() {
  if (const auto i = chosen()) deleteNamedPose(document_, *i);
}

void PosesPanel::update() {
  if (const auto i = chosen()) replaceNamedPose(document_, *i);
}

void PosesPanel::compare(bool shown) { document_.comparePose(shown ? chosen() : std::nullopt); }

void PosesPanel::refreshButtons() {
  const bool open = document_.hasProject();
  const int row = list_->currentIndex().row();
  const bool known = open && row >= 0 && row < static_cast<int>(document_.project().poses.size());
  const auto index = static_cast<std::size_t>(std::max(row, 0));
  const bool same = known && document_.project().poses[index].pose == document_.pose();
  add_->setEnabled(open);
  for (QToolButton* button : {rename_, delete_, compare_}) button->setEnabled(known);
  for (QToolButton* button : {apply_, update_}) button->setEnabled(known && !same);
  const QSignalBlocker quiet(compare_);
  compare_->setChecked(known && document_.comparedPose() == index);
}

}  // namespace zyga::ui
