#include "ui/panels/reach_panel.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QSignalBlocker>

#include "ui/commands/pose_edits.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"

namespace zyga::ui {
namespace {

using kinematics::BendStyle;

constexpr int kMostNamed = 6;

QString idOf(const Document& document, JointIndex joint) {
  return QString::fromStdString(document.specimen()[joint].id);
}

bool movable(const Document& document, JointIndex joint) {
  return document.specimen()[joint].kind != anatomy::JointKind::Fixed;
}

std::vector<JointIndex> lockedIn(const Document& document) {
  return document.hasProject() ? document.project().lockedJoints : std::vector<JointIndex>{};
}

}  // namespace

ReachPanel::ReachPanel(Document& document, ReachSettings& settings, QWidget* parent)
    : QWidget(parent), document_(document), settings_(settings) {
  setObjectName("reachPanel");
  auto* content = new QWidget;
  auto* layout = new QVBoxLayout(content);
  setPanelMargins(*layout);
  layout->addLayout(createStyles());
  layout->addSpacing(kGap);
  layout->addLayout(createJoints());
  layout->addStretch(1);
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->addWidget(scrolling(content));
  connect(&settings_, &ReachSettings::changed, this, &ReachPanel::refresh);
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & (Changes(Change::Selection) | Change::Bones | Change::Locks)) refresh();
  });
  refresh();
}

QLayout* ReachPanel::createStyles() {
  auto* column = new QVBoxLayout;
  column->setSpacing(kGridStep);
  even_ = new QRadioButton(tr("Bend evenly"));
  even_->setObjectName("reachEven");
  even_->setToolTip(tr("Each joint gives the same share of its own range"));
  base_ = new QRadioButton(tr("Bend from the base"));
  base_->setObjectName("reachBase");
  base_->setToolTip(
      tr("The base and the head's joints bend most and the neck between keeps its shape, as in living tetrapods "
         "(Taylor, Wedel & Naish 2009; Vidal, Graf & Berthoz 1986)"));
  past_ = new QCheckBox(tr("Past the ranges"));
  past_->setObjectName("reachPast");
  past_->setToolTip(tr("A drag goes on where the bones would stop it; the joints that break are marked"));
  gaze_ = new QCheckBox(tr("Keep the gaze"));
  gaze_->setObjectName("reachGaze");
  gaze_->setToolTip(tr("A dragged head goes on looking in the same direction as far as its joints allow"));
  for (QWidget* widget : std::initializer_list<QWidget*>{even_, base_, past_, gaze_}) column->addWidget(widget);
  connect(base_, &QRadioButton::toggled, this,
          [this](bool on) { settings_.setStyle(on ? BendStyle::FromTheBase : BendStyle::Even); });
  connect(past_, &QCheckBox::toggled, &settings_, &ReachSettings::setPastRanges);
  connect(gaze_, &QCheckBox::toggled, &settings_, &ReachSettings::setKeepsGaze);
  return column;
}

QLayout* ReachPanel::createJoints() {
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(kGap);
  grid->setVerticalSpacing(kGridStep);
  grid->setColumnStretch(0, 1);
  begins_ = mutedLabel();
  begins_->setObjectName("reachBegins");
  begin_ = new QPushButton;
  begin_->setObjectName("reachBegin");
  locked_ = mutedLabel();
  locked_->setObjectName("reachLocked");
  lock_ = new QPushButton;
  lock_->setObjectName("reachLock");
  unlockAll_ = new QPushButton(tr("Unlock all"));
  unlockAll_->setObjectName("reachUnlockAll");
  grid->addWidget(begins_, 0, 0, 1, 2);
  grid->addWidget(begin_, 1, 0, 1, 2);
  grid->addWidget(locked_, 2, 0, 1, 2);
  grid->addWidget(lock_, 3, 0);
  grid->addWidget(unlockAll_, 3, 1);
  connect(begin_, &QPushButton::clicked, this, &ReachPanel::beginHere);
  connect(lock_, &QPushButton::clicked, this, [this] {
    if (const auto joint = document_.selectedJoint()) lockOrUnlock(document_, *joint);
  });
  connect(unlockAll_, &QPushButton::clicked, this, [this] { unlockAllJoints(document_); });
  return grid;
}

void ReachPanel::beginHere() {
  const auto joint = document_.selectedJoint();
  document_.setBendBase(document_.bendBase() || !joint ? std::nullopt : joint);
}

void ReachPanel::refresh() {
  const QSignalBlocker quietEven(even_), quietBase(base_), quietPast(past_), quietGaze(gaze_);
  const bool fromBase = settings_.style() == BendStyle::FromTheBase;
  even_->setChecked(!fromBase);
  base_->setChecked(fromBase);
  past_->setChecked(settings_.pastRanges());
  gaze_->setChecked(settings_.keepsGaze());
  const bool project = document_.hasProject();
  std::optional<JointIndex> chosen = project ? document_.selectedJoint() : std::nullopt;
  if (chosen && !movable(document_, *chosen)) chosen.reset();
  const auto base = project ? document_.bendBase() : std::nullopt;
  begins_->setText(base ? tr("The bend begins at %1").arg(idOf(document_, *base))
                        : tr("The bend begins at the base of neck or tail"));
  begin_->setText(base     ? tr("Begin at the base again")
                  : chosen ? tr("Begin at %1").arg(idOf(document_, *chosen))
                           : tr("Begin at the chosen joint"));
  begin_->setEnabled(base || chosen);
  QStringList names;
  for (const JointIndex joint : lockedIn(document_)) names << idOf(document_, joint);
  if (names.size() > kMostNamed) names = names.mid(0, kMostNamed) << tr("%1 more").arg(names.size() - kMostNamed);
  locked_->setText(names.isEmpty() ? tr("No joint is locked") : tr("Locked: %1").arg(names.join(", ")));
  const bool isLocked = chosen && document_.isLocked(*chosen);
  lock_->setText(chosen ? (isLocked ? tr("Unlock %1") : tr("Lock %1")).arg(idOf(document_, *chosen))
                        : tr("Lock the chosen joint"));
  lock_->setEnabled(chosen.has_value());
  unlockAll_->setEnabled(!names.isEmpty());
  emit shortChanged(inShort());
}

QString ReachPanel::inShort() const {
  QStringList parts;
  if (settings_.style() == BendStyle::FromTheBase) parts << tr("from the base");
  if (settings_.pastRanges()) parts << tr("past the ranges");
  if (settings_.keepsGaze()) parts << tr("gaze kept");
  if (const auto locked = lockedIn(document_).size()) parts << tr("%1 locked").arg(locked);
  return parts.join(", ");
}

}  // namespace zyga::ui
