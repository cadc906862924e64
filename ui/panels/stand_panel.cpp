#include "ui/panels/stand_panel.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/kinematics/stand_readings.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"
#include "ui/theme/unit_spin_box.h"
#include "ui/words/assumption_words.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using anatomy::Side;
using kinematics::Foot;

constexpr double kDegree = std::numbers::pi / 180;
constexpr int kBladeMergeKey = 2300;
constexpr double kTilted = 3 * kDegree;  // a sole that does not lie flat

QLabel* heading(const QString& text) {
  auto* label = new QLabel(text);
  label->setProperty("role", "title");
  return label;
}

/// Fore feet first, left before right.
constexpr std::array<Foot, 4> kRows{Foot::LeftFore, Foot::RightFore, Foot::LeftHind, Foot::RightHind};

}  // namespace

StandPanel::StandPanel(Document& document, QWidget* parent) : QWidget(parent), document_(document) {
  setObjectName("standPanel");
  auto* content = new QWidget;
  auto* layout = new QVBoxLayout(content);
  setPanelMargins(*layout);
  layout->addLayout(createReadings());
  layout->addSpacing(kGap);
  layout->addWidget(heading(tr("Feet")));
  layout->addLayout(createFeet());
  layout->addSpacing(kGap);
  layout->addWidget(heading(tr("Shoulder blades")));
  layout->addLayout(createBlades());
  layout->addStretch(1);
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->addWidget(scrolling(content));
  connect(&document_, &Document::changed, this, &StandPanel::refresh);
  refresh(Change::Everything);
}

QLayout* StandPanel::createReadings() {
  struct Row {
    QString name, tip;
    const char* id;
  };
  const std::array<Row, 6> rows{
      {{tr("Trunk"),
        tr("Slope of the line through the dorsal centra to the horizontal, positive when it rises forwards; and the "
           "turn "
           "about its length, positive with the left side raised"),
        "trunkSlope"},
       {tr("Hip height"), tr("Mean height of the two hip sockets over the ground"), "hipHeight"},
       {tr("Shoulder height"), tr("Mean height of the two shoulder sockets over the ground"), "shoulderHeight"},
       {tr("Hip to shoulder"), tr("Glenoacetabular distance: straight from socket to socket, mean of both sides"),
        "glenoacetabular"},
       {tr("Base of the neck"), {}, "neckBase"},
       {tr("Base of the tail"),
        tr("Slope of the line through the first five caudals, positive when it rises backwards"), "tailBase"}}};
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(kGap);
  grid->setVerticalSpacing(kGridStep);
  grid->setColumnStretch(1, 1);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    auto* name = mutedLabel(rows[i].name);
    name->setWordWrap(false);
    name->setToolTip(rows[i].tip);
    readings_[i] = new QLabel;
    readings_[i]->setObjectName(rows[i].id);
    readings_[i]->setFont(figureFont(readings_[i]->font()));
    readings_[i]->setToolTip(rows[i].tip);
    grid->addWidget(name, static_cast<int>(i), 0);
    grid->addWidget(readings_[i], static_cast<int>(i), 1);
  }
  return grid;
}

QLayout* StandPanel::createFeet() {
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(kGap);
  grid->setVerticalSpacing(kGridStep);
  for (std::size_t i = 0; i < kRows.size(); ++i) {
    const Foot foot = kRows[i];
    FootRow& row = feet_[i];
    row.state = mutedLabel();
    row.state->setWordWrap(false);
    row.state->setFont(figureFont(row.state->font()));
    row.button = new QPushButton;
    row.button->setObjectName("foot." + footName(foot).replace(' ', '.'));
    connect(row.button, &QPushButton::clicked, this, [this, foot] {
      telling_ = true;
      tell(liftOrPlant(document_, foot));
      telling_ = false;
    });
    const int line = static_cast<int>(i);
    grid->addWidget(new QLabel(capital(footName(foot))), line, 0);
    grid->addWidget(row.state, line, 1);
    grid->addWidget(row.button, line, 2);
  }
  miss_ = mutedLabel();
  miss_->setObjectName("footMiss");
  grid->setColumnStretch(1, 1);
  grid->addWidget(miss_, 4, 0, 1, 3);
  return grid;
}

QLayout* StandPanel::createBlades() {
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(kGap);
  grid->setVerticalSpacing(kGridStep);
  grid->addWidget(mutedLabel(tr("Left")), 0, 1);
  grid->addWidget(mutedLabel(tr("Right")), 0, 2);
  grid->addWidget(new QLabel(tr("Slope")), 1, 0);
  grid->addWidget(new QLabel(tr("Along the ribs")), 2, 0);
  for (std::size_t i = 0; i < 2; ++i) {
    const bool left = i == 0;
    const QString side = left ? tr("left") : tr("right");
    slopes_[i] = new UnitSpinBox(QStringLiteral("°"));
    slopes_[i]->setObjectName(left ? "bladeSlopeLeft" : "bladeSlopeRight");
    slopes_[i]->setAccessibleName(tr("Slope of the %1 shoulder blade to the horizontal").arg(side));
    slopes_[i]->setDecimals(1);
    slides_[i] = new UnitSpinBox(tr("mm"));
    slides_[i]->setObjectName(left ? "bladeSlideLeft" : "bladeSlideRight");
    slides_[i]->setAccessibleName(tr("How far the %1 shoulder blade is slid up along the ribs").arg(side));
    slides_[i]->setDecimals(0);
    slides_[i]->setSingleStep(5);
    for (UnitSpinBox* field : {slopes_[i], slides_[i]}) {
      field->setKeyboardTracking(false);
      connect(field, &QDoubleSpinBox::valueChanged, this, [this, left] { placeBlades(left); });
    }
    grid->addWidget(slopes_[i], 1, 1 + static_cast<int>(i));
    grid->addWidget(slides_[i], 2, 1 + static_cast<int>(i));
    grid->setColumnStretch(1 + static_cast<int>(i), 1);
  }
  together_ = new QCheckBox(tr("Both together"));
  together_->setObjectName("bladesTogether");
  together_->setChecked(true);
  grid->addWidget(together_, 3, 0, 1, 3);
  bladeNote_ = mutedLabel();
  bladeNote_->setObjectName("bladeNote");
  grid->addWidget(bladeNote_, 4, 0, 1, 3);
  return grid;
}

void StandPanel::placeBlades(bool left) {
  const std::size_t i = left ? 0 : 1;
  std::vector<Side> sides{left ? Side::Left : Side::Right};
  if (together_->isChecked()) sides = {Side::Left, Side::Right};
  telling_ = true;
  tell(ui::placeBlades(document_, sides, {slopes_[i]->value() * kDegree, slides_[i]->value() / 1000},
                       kBladeMergeKey + static_cast<int>(i)));
  telling_ = false;
}

void StandPanel::tell(const kinematics::FeetAnswer& answer) {
  miss_->setText(capital(missWords(document_, answer.fits)));
}

void StandPanel::refresh(Changes what) {
  if (!(what & (Changes(Change::Pose) | Change::Assumptions))) return;
  setEnabled(document_.hasProject());
  if (!document_.hasProject()) {
    for (QLabel* reading : readings_) reading->setText(QChar(0x2013));
    return;
  }
  if (!telling_) miss_->clear();
  showReadings();
  showFeet();
  showBlades();
}

void StandPanel::showReadings() {
  const kinematics::StandReadings r =
      kinematics::readStand(document_.specimen(), document_.placement(), document_.assumptions().horizontalBy);
  readings_[0]->setText(tr("%1, roll %2").arg(signedDegrees(r.trunkSlope), signedDegrees(r.roll)));
  readings_[1]->setText(metres(r.hipHeight));
  readings_[2]->setText(metres(r.shoulderHeight));
  readings_[3]->setText(metres(r.glenoacetabular));
  readings_[4]->setText(signedDegrees(r.neckBaseSlope));
  const auto by = document_.assumptions().horizontalBy;
  readings_[4]->setToolTip(
      tr("Slope of the hindmost cervical by its %1, positive when it rises forwards").arg(horizontalName(by)) + '\n' +
      horizontalSources(by));
  readings_[5]->setText(signedDegrees(r.tailBaseSlope));
  const QString words = std::isnan(r.hipHeight)
                            ? tr("trunk %1").arg(signedDegrees(r.trunkSlope))
                            : tr("trunk %1, hip %2").arg(signedDegrees(r.trunkSlope), metres(r.hipHeight));
  if (words != short_) emit shortChanged(short_ = words);
}

void StandPanel::showFeet() {
  const auto places = kinematics::footPlaces(document_.specimen(), document_.placement());
  for (std::size_t i = 0; i < kRows.size(); ++i) {
    const auto at = std::find_if(places.begin(), places.end(), [&](const auto& p) { return p.foot == kRows[i]; });
    feet_[i].button->setEnabled(at != places.end());
    if (at == places.end()) continue;
    const bool stands = std::abs(at->height) < kinematics::kOnGround;
    QString state =
        stands
            ? tr("on the ground")
            : (at->height > 0 ? tr("%1 over ground") : tr("%1 under ground")).arg(millimetres(std::abs(at->height), 0));
    if (stands && at->tilt > kTilted) state = tr("tilted %1").arg(degrees(at->tilt));
    feet_[i].state->setText(state);
    feet_[i].button->setText(stands ? tr("Lift") : tr("Plant"));
    feet_[i].button->setAccessibleName((stands ? tr("Lift the %1") : tr("Plant the %1")).arg(footName(kRows[i])));
  }
}

void StandPanel::showBlades() {
  const auto& specimen = document_.specimen();
  bool inside = true;
  for (std::size_t i = 0; i < 2; ++i) {
    const Side side = i == 0 ? Side::Left : Side::Right;
    const auto at = kinematics::bladePlace(specimen, document_.pose(), document_.placement(), side);
    const bool known = std::isfinite(at.slope);
    slopes_[i]->setEnabled(known);
    slides_[i]->setEnabled(known);
    if (!known) continue;
    const auto range = kinematics::bladeRange(specimen, document_.articulation(), document_.pose(), side);
    const QSignalBlocker quietSlope(slopes_[i]), quietSlide(slides_[i]);
    slopes_[i]->setRange(std::floor(range.slope.min / kDegree), std::ceil(range.slope.max / kDegree));
    slopes_[i]->setValue(at.slope / kDegree);
    slides_[i]->setRange(std::floor(range.slide.min * 1000), std::ceil(range.slide.max * 1000));
    slides_[i]->setValue(at.slide * 1000);
    inside = inside && at.slope >= kinematics::kPublishedBladeSlope.min - 1e-6;
  }
  // What is published is meant for a standing animal, not for one that rears or bows.
  constexpr double kStanding = 20 * kDegree;
  const double trunk = kinematics::readStand(specimen, document_.placement()).trunkSlope;
  const QString published =
      tr("Published: at least 55° to the horizontal, 55° to 65° in three genera (Schwarz, Frey & Meyer 2007).");
  bladeNote_->setText(inside || std::abs(trunk) > kStanding ? published
                                                            : tr("Flatter than what is published. ") + published);
}

}  // namespace zyga::ui
