#include "ui/panels/ground/balance_panel.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QSettings>
#include <QSignalBlocker>
#include <QToolButton>

#include "ui/commands/project_edits.h"
#include "ui/parts/panel_parts.h"
#include "ui/parts/verdict_mark.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/theme/unit_spin_box.h"
#include "ui/words/ground_words.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

constexpr char kBalanceDrawnKey[] = "ground/balanceDrawn";
constexpr int kDensityMergeKey = 2100;  // and one more for each part
constexpr int kFactorMergeKey = 2110;   // likewise

QLabel* figureLabel(const char* name) {
  auto* label = new QLabel;
  label->setObjectName(name);
  label->setWordWrap(true);
  label->setFont(figureFont(label->font()));
  return label;
}

}  // namespace

DensityFields::DensityFields(Document& document, QWidget* parent) : QWidget(parent), document_(document) {
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(kGap);
  grid->setVerticalSpacing(kGridStep);
  auto* heading = new QLabel(tr("Densities"));
  heading->setProperty("role", "title");
  usual_ = new QToolButton;
  usual_->setObjectName("usualDensities");
  usual_->setText(tr("Usual values"));
  usual_->setFocusPolicy(Qt::TabFocus);
  usual_->setToolTip(
      tr("800 kg/m³ for the trunk (used with hulls by Sellers et al. 2012), less for the neck's air "
         "spaces, 1000 for limbs: program default, no source. Flesh outside the hull of the bones: 1.21 times its "
         "volume, of whole bodies (Sellers et al. 2012)"));
  connect(usual_, &QToolButton::clicked, this, [this] { changeDensities(document_, {}, tr("Usual densities")); });
  grid->addWidget(heading, 0, 0);
  grid->addWidget(usual_, 0, 1, Qt::AlignRight);
  for (const auto part : study::kAllBodyParts) {
    auto* label = new QLabel(capital(bodyPartName(part)));
    QWidget* density = createDensity(part);
    label->setBuddy(density);
    const int row = grid->rowCount();
    grid->addWidget(label, row, 0);
    grid->addWidget(density, row, 1);
  }
  // Below the densities: a panel at the side has no room for a third column.
  auto* flesh = new QLabel(tr("Volume over the hull of the bones"));
  flesh->setProperty("role", "title");
  grid->addWidget(flesh, grid->rowCount(), 0, 1, 2);
  for (const auto part : study::kAllBodyParts) {
    auto* label = new QLabel(capital(bodyPartName(part)));
    QWidget* factor = createFactor(part);
    label->setBuddy(factor);
    const int row = grid->rowCount();
    grid->addWidget(label, row, 0);
    grid->addWidget(factor, row, 1);
  }
  grid->setColumnStretch(1, 1);
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & Change::Ground) refresh();
  });
  refresh();
}

QWidget* DensityFields::createDensity(study::BodyPart part) {
  auto* field = new UnitSpinBox(tr("kg/m³"));
  field->setObjectName("density" + QString(capital(bodyPartName(part))).remove(' '));
  field->setAccessibleName(tr("Density of the %1").arg(bodyPartName(part)));
  field->setToolTip(tr("May be off by %1 either way; program default, no source")
                        .arg(percent(study::kDensityErrors[static_cast<std::size_t>(part)])));
  field->setRange(study::kLeastDensity, study::kMostDensity);
  field->setDecimals(0);
  field->setSingleStep(50);
  field->setKeyboardTracking(false);
  connect(field, &QDoubleSpinBox::valueChanged, this, [this, part](double density) { change(part, density); });
  return fields_.at(static_cast<std::size_t>(part)) = field;
}

QWidget* DensityFields::createFactor(study::BodyPart part) {
  auto* field = new UnitSpinBox(tr("× hull"));
  field->setObjectName("hullFactor" + QString(capital(bodyPartName(part))).remove(' '));
  field->setAccessibleName(tr("Volume of the %1 over the hull of its bones").arg(bodyPartName(part)));
  field->setToolTip(tr("Living volume over that of the hull around the bones; may be off by %1 either way; program "
                       "default, no source")
                        .arg(percent(study::kHullFactorErrors[static_cast<std::size_t>(part)])));
  field->setRange(study::kLeastHullFactor, study::kMostHullFactor);
  field->setDecimals(2);
  field->setSingleStep(0.05);
  field->setKeyboardTracking(false);
  connect(field, &QDoubleSpinBox::valueChanged, this, [this, part](double factor) { changeFactor(part, factor); });
  return factors_.at(static_cast<std::size_t>(part)) = field;
}

void DensityFields::changeFactor(study::BodyPart part, double factor) {
  auto densities = document_.project().densities;
  densities.hullFactors.at(static_cast<std::size_t>(part)) = factor;
  changeDensities(document_, densities, tr("Flesh of the %1").arg(bodyPartName(part)),
                  kFactorMergeKey + static_cast<int>(part));
}

void DensityFields::change(study::BodyPart part, double density) {
  auto densities = document_.project().densities;
  densities[part] = density;
  changeDensities(document_, densities, tr("Density of the %1").arg(bodyPartName(part)),
                  kDensityMergeKey + static_cast<int>(part));
}

void DensityFields::refresh() {
  setEnabled(document_.hasProject());
  if (!document_.hasProject()) return;
  const auto& densities = document_.project().densities;
  for (const auto part : study::kAllBodyParts) {
    auto* field = fields_.at(static_cast<std::size_t>(part));
    const QSignalBlocker quiet(field);
    field->setValue(densities[part]);
    auto* factor = factors_.at(static_cast<std::size_t>(part));
    const QSignalBlocker quietToo(factor);
    factor->setValue(densities.hullFactors.at(static_cast<std::size_t>(part)));
  }
  usual_->setEnabled(!(densities == study::Densities{}));
}

BalancePanel::BalancePanel(GroundState& ground, QWidget* parent)
    : QWidget(parent), ground_(ground), mark_(new VerdictMark), sentence_(new QLabel), drawn_(new QCheckBox) {
  sentence_->setObjectName("balanceSentence");
  sentence_->setWordWrap(true);
  drawn_->setObjectName("balanceDrawn");
  drawn_->setText(tr("Draw on the ground"));
  drawn_->setToolTip(tr("The centre of mass, its plumb line, and the polygon of what touches the ground"));
  drawn_->setChecked(QSettings().value(kBalanceDrawnKey, true).toBool());
  connect(drawn_, &QCheckBox::toggled, this, [this](bool drawn) {
    QSettings().setValue(kBalanceDrawnKey, drawn);
    emit drawnChanged(drawn);
  });
  auto* heading = new QLabel(tr("Mass and balance, an estimate"));
  heading->setProperty("role", "title");
  auto* verdict = new QHBoxLayout;
  verdict->setSpacing(kGap);
  verdict->addWidget(mark_, 0, Qt::AlignTop);
  verdict->addWidget(sentence_, 1);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(kGap);
  layout->addWidget(heading);
  layout->addLayout(verdict);
  layout->addLayout(createNumbers());
  layout->addWidget(drawn_);
  layout->addWidget(new DensityFields(ground.document()));
  auto* caution = mutedLabel(tr("Not an engineering document: a mount needs an engineer's own reckoning."));
  layout->addWidget(caution);
  connect(&ground.document(), &Document::changed, this, &BalancePanel::refresh);
  refresh(Change::Everything);
}

bool BalancePanel::drawn() const { return drawn_->isChecked(); }

QLayout* BalancePanel::createNumbers() {
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(kGap);
  grid->setVerticalSpacing(kGridStep);
  grid->setColumnStretch(1, 1);
  volume_ = figureLabel("massByVolume");
  circumference_ = figureLabel("massByCircumference");
  centre_ = figureLabel("centreHeight");
  fore_ = figureLabel("foreShare");
  tail_ = mutedLabel();
  tail_->setObjectName("tailLoad");
  apart_ = mutedLabel();
  apart_->setObjectName("massesApart");
  flesh_ = mutedLabel();
  flesh_->setObjectName("tailFlesh");
  volume_->setToolTip(
      tr("Hulls around the bones × 1.21 (or the part's own factor) × density; %1").arg(say(study::kHullSource)));
  circumference_->setToolTip(
      tr("From humerus and femur, %1; %2").arg(say(study::kCircumferenceSource), circumferenceErrorWords()));
  const std::pair<QString, QLabel*> rows[] = {{tr("By volume"), volume_},
                                              {tr("By circumference"), circumference_},
                                              {tr("Centre of mass"), centre_},
                                              {tr("On the fore feet"), fore_}};
  int row = 0;
  for (const auto& [name, label] : rows) {
    auto* title = mutedLabel(name);
    title->setWordWrap(false);
    title->setToolTip(label->toolTip());
    grid->addWidget(title, row, 0, Qt::AlignTop);
    grid->addWidget(label, row++, 1);
  }
  for (QLabel* words : {apart_, tail_, flesh_}) grid->addWidget(words, row++, 0, 1, 2);
  return grid;
}

void BalancePanel::refresh(Changes what) {
  if (!(what & (Changes(Change::Pose) | Change::Assumptions | Change::Ground | Change::Bones))) return;
  if (!ground_.document().hasProject()) {
    sentence_->setText(tr("Open an animal to weigh it."));
    mark_->setLevel(range::Level::NotJudged);
    for (QLabel* label : {volume_, circumference_, centre_, fore_}) label->setText(QChar(0x2013));
    for (QLabel* label : {apart_, tail_, flesh_}) label->hide();
    return;
  }
  const auto& balance = ground_.balance();
  auto level = balance.inside() ? range::Level::Supported : range::Level::Beyond;
  if (!balance.margin) level = range::Level::NotJudged;
  mark_->setLevel(level);
  sentence_->setText(balanceWords(balance, ground_.forward()));
  volume_->setText(massWords(balance.body.mass));
  const auto circumference = study::massFromCircumferences(ground_.document().project().table);
  circumference_->setText(circumferenceWords(circumference));
  const reason::Reason apart =
      circumference ? study::disagreement(balance.body.mass, circumference->mass) : reason::Reason();
  apart_->setText(apart.empty() ? QString() : say(apart));
  tail_->setText(tailLoadWords(balance));
  flesh_->setText(tailFleshWords(balance.body, ground_.forward()));
  for (QLabel* label : {apart_, tail_, flesh_}) label->setVisible(!label->text().isEmpty());
  centre_->setText(tr("%1 over the ground").arg(metres(balance.body.p_WCentre.z())));
  fore_->setText(balance.foreShare ? tr("%1 of the weight").arg(percent(*balance.foreShare))
                                   : tr("not told by mechanics alone"));
}

}  // namespace zyga::ui
