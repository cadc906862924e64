#include "ui/panels/claims/claim_editor.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <numbers>

#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"
#include "ui/theme/unit_spin_box.h"
#include "ui/words/claim_words.h"

namespace zyga::ui {
namespace {

constexpr double kDegree = std::numbers::pi / 180;

UnitSpinBox* field(const QString& unit, int decimals, double step, const char* name) {
  auto* box = new UnitSpinBox(unit);
  box->setObjectName(name);
  box->setDecimals(decimals);
  box->setSingleStep(step);
  return box;
}

}  // namespace

ClaimEditor::ClaimEditor(QWidget* parent) : QWidget(parent) {
  createFields();
  layOut();
  connect(kind_, &QComboBox::activated, this, [this] { read(kKind); });
  connect(bound_, &QComboBox::activated, this, [this] { read(kBound); });
  for (UnitSpinBox* value : {metres_, degrees_})
    connect(value, &QDoubleSpinBox::valueChanged, this, [this] { read(kValue); });
  connect(ahead_, &QDoubleSpinBox::valueChanged, this, [this] { read(kAhead); });
  connect(source_, &QLineEdit::editingFinished, this, [this] { read(kSource); });
}

void ClaimEditor::createFields() {
  kind_ = calmComboBox();
  kind_->setObjectName("claimKind");
  kind_->setAccessibleName(tr("What is claimed"));
  for (const study::ClaimKind kind : study::kClaimKinds) kind_->addItem(claimKindName(kind));
  bound_ = calmComboBox();
  bound_->setObjectName("claimBound");
  bound_->setAccessibleName(tr("Lower or upper bound"));
  bound_->addItems({boundWord(study::Bound::AtLeast), boundWord(study::Bound::AtMost)});
  // Names in lists are long; the panel is not.
  for (QComboBox* box : {kind_, bound_}) {
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(8);
  }
  metres_ = field(tr("m"), 2, 0.1, "claimMetres");
  degrees_ = field(QStringLiteral("°"), 1, 1, "claimDegrees");
  ahead_ = field(tr("m"), 2, 0.1, "claimAhead");
  for (UnitSpinBox* value : {metres_, degrees_}) value->setAccessibleName(tr("Value of the claim"));
  ahead_->setAccessibleName(tr("Distance ahead of the forefeet"));
  ahead_->setRange(-30, 30);
  source_ = new QLineEdit;
  source_->setObjectName("claimSource");
  source_->setAccessibleName(tr("Source of the claim"));
  source_->setPlaceholderText(tr("Who claims it"));
  tells_ = mutedLabel();
  tells_->setObjectName("claimTells");
  tells_->setFont(smallFont(font()));
}

void ClaimEditor::layOut() {
  const auto name = [](const QString& words) {
    auto* label = mutedLabel(words);
    label->setWordWrap(false);
    return label;
  };
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(kGap);
  grid->setVerticalSpacing(kGridStep);
  grid->setColumnStretch(1, 1);
  boundName_ = name(tr("Bound"));
  aheadName_ = name(tr("Ahead"));
  grid->addWidget(name(tr("Claim")), 0, 0);
  grid->addWidget(kind_, 0, 1);
  grid->addWidget(boundName_, 1, 0);
  grid->addWidget(bound_, 1, 1);
  grid->addWidget(name(tr("Value")), 2, 0);
  grid->addWidget(metres_, 2, 1);
  grid->addWidget(degrees_, 2, 1);
  grid->addWidget(aheadName_, 3, 0);
  grid->addWidget(ahead_, 3, 1);
  grid->addWidget(name(tr("Source")), 4, 0);
  grid->addWidget(source_, 4, 1);
  grid->addWidget(tells_, 5, 0, 1, 2);
}

void ClaimEditor::setClaim(const study::Claim& claim) {
  claim_ = claim;
  fill();
}

void ClaimEditor::editValue() {
  UnitSpinBox* value = traitsOf(claim_.kind).angle ? degrees_ : metres_;
  value->setFocus(Qt::OtherFocusReason);
  value->selectAll();
}

void ClaimEditor::fill() {
  const QSignalBlocker quiet[] = {QSignalBlocker(kind_),    QSignalBlocker(bound_), QSignalBlocker(metres_),
                                  QSignalBlocker(degrees_), QSignalBlocker(ahead_), QSignalBlocker(source_)};
  const study::ClaimKindTraits& traits = traitsOf(claim_.kind);
  kind_->setCurrentIndex(static_cast<int>(claim_.kind));
  bound_->setCurrentIndex(static_cast<int>(claim_.bound));
  metres_->setRange(traits.min, traits.max);
  degrees_->setRange(traits.min / kDegree, traits.max / kDegree);
  (traits.angle ? degrees_ : metres_)->setValue(traits.angle ? claim_.value / kDegree : claim_.value);
  ahead_->setValue(claim_.ahead);
  const QString source = QString::fromStdString(claim_.source);
  if (source_->text() != source) source_->setText(source);
  metres_->setVisible(!traits.angle);
  degrees_->setVisible(traits.angle);
  for (QWidget* part : {static_cast<QWidget*>(boundName_), static_cast<QWidget*>(bound_)})
    part->setVisible(traits.bounds);
  for (QWidget* part : {static_cast<QWidget*>(aheadName_), static_cast<QWidget*>(ahead_)})
    part->setVisible(traits.ahead);
  tells_->setText(claimKindMeaning(claim_.kind));
}

void ClaimEditor::read(Field field) {
  study::Claim claim = claim_;
  if (field == kKind) {
    claim = study::usualClaim(study::kClaimKinds[static_cast<std::size_t>(kind_->currentIndex())]);
    claim.source = claim_.source;
    if (claim.kind == claim_.kind) return;
  }
  const study::ClaimKindTraits& traits = traitsOf(claim.kind);
  if (field == kBound) claim.bound = static_cast<study::Bound>(bound_->currentIndex());
  if (field == kValue) claim.value = traits.angle ? degrees_->value() * kDegree : metres_->value();
  if (field == kAhead) claim.ahead = ahead_->value();
  if (field == kSource) claim.source = source_->text().trimmed().toStdString();
  if (claim == claim_) return;
  claim_ = claim;
  fill();
  emit edited(claim, field);
}

}  // namespace zyga::ui
