#include "ui/panels/ground/balance_panel.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QSettings>

#include "ui/panels/ground/density_fields.h"
#include "ui/panels/ground/ground_words.h"
#include "ui/parts/panel_parts.h"
#include "ui/parts/verdict_mark.h"
#include "ui/theme/figures.h"
#include "ui/theme/theme.h"
#include "ui/theme/words.h"

namespace zyga::ui {
namespace {

constexpr char kDrawnKey[] = "ground/balanceDrawn";

QLabel* figureLabel(const char* name) {
  auto* label = new QLabel;
  label->setObjectName(name);
  label->setWordWrap(true);
  label->setFont(figureFont(label->font()));
  return label;
}

}  // namespace

BalancePanel::BalancePanel(GroundState& ground, QWidget* parent)
    : QWidget(parent), ground_(ground), mark_(new VerdictMark), sentence_(new QLabel), drawn_(new QCheckBox) {
  sentence_->setObjectName("balanceSentence");
  sentence_->setWordWrap(true);
  drawn_->setObjectName("balanceDrawn");
  drawn_->setText(tr("Draw on the ground"));
  drawn_->setToolTip(tr("The centre of mass, its plumb line, and the polygon of what touches the ground"));
  drawn_->setChecked(QSettings().value(kDrawnKey, true).toBool());
  connect(drawn_, &QCheckBox::toggled, this, [this](bool drawn) {
    QSettings().setValue(kDrawnKey, drawn);
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
  volume_->setToolTip(tr("Hulls around the bones × 1.21 × density; %1").arg(text(study::kHullSource)));
  circumference_->setToolTip(
      tr("From humerus and femur, %1; mean error 25.63 %").arg(text(study::kCircumferenceSource)));
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
  return grid;
}

void BalancePanel::refresh(Changes what) {
  if (!(what & (Changes(Change::Pose) | Change::Assumptions | Change::Ground | Change::Bones))) return;
  if (!ground_.document().hasProject()) {
    sentence_->setText(tr("Open an animal to weigh it."));
    mark_->setLevel(range::Level::NotJudged);
    for (QLabel* label : {volume_, circumference_, centre_, fore_}) label->setText(QChar(0x2013));
    return;
  }
  const auto& balance = ground_.balance();
  auto level = balance.inside() ? range::Level::Supported : range::Level::Beyond;
  if (!balance.margin) level = range::Level::NotJudged;
  mark_->setLevel(level);
  sentence_->setText(text(study::sentence(balance, ground_.forward())));
  volume_->setText(massWords(balance.body.mass));
  circumference_->setText(circumferenceWords(ground_.document().project()));
  centre_->setText(tr("%1 m over the ground").arg(balance.body.p_WCentre.z(), 0, 'f', 2));
  fore_->setText(balance.foreShare ? tr("%1 % of the weight").arg(qRound(*balance.foreShare * 100))
                                   : tr("not told by mechanics alone"));
}

}  // namespace zyga::ui
