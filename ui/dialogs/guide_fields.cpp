#include "ui/dialogs/guide_fields.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <cmath>

#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"
#include "ui/theme/unit_spin_box.h"

namespace zyga::ui {
namespace {

using solid::GuideThickness;

struct Row {
  const char* words;
  const char* name;
  double GuideThickness::*field;
};
constexpr std::array<Row, 7> kRows{
    {{QT_TRANSLATE_NOOP("GuideFields", "Head and feet"), "guideHeadAndFeet", &GuideThickness::headAndFeet},
     {QT_TRANSLATE_NOOP("GuideFields", "Neck"), "guideNeck", &GuideThickness::neck},
     {QT_TRANSLATE_NOOP("GuideFields", "Neck base"), "guideNeckBase", &GuideThickness::neckBase},
     {QT_TRANSLATE_NOOP("GuideFields", "Trunk"), "guideTrunk", &GuideThickness::trunk},
     {QT_TRANSLATE_NOOP("GuideFields", "Tail base"), "guideTailBase", &GuideThickness::tailBase},
     {QT_TRANSLATE_NOOP("GuideFields", "Upper arm, thigh"), "guideUpperLimbs", &GuideThickness::upperLimbs},
     {QT_TRANSLATE_NOOP("GuideFields", "Forearm, shank"), "guideLowerLimbs", &GuideThickness::lowerLimbs}}};

constexpr const char* kPresetWords[] = {
    QT_TRANSLATE_NOOP("GuideFields", "Lean: tail as the least seen in living reptiles"),
    QT_TRANSLATE_NOOP("GuideFields", "Usual: tail as often in living reptiles"),
    QT_TRANSLATE_NOOP("GuideFields", "Full: tail as in crocodiles")};
static_assert(std::size(kPresetWords) == solid::kBuildPresets.size());

UnitSpinBox* field(const char* name, const QString& unit, double least, double most, double step) {
  auto* box = new UnitSpinBox(unit);
  box->setObjectName(name);
  box->setDecimals(0);
  box->setRange(least, most);
  box->setSingleStep(step);
  return box;
}

}  // namespace

GuideFields::GuideFields(QWidget* parent)
    : QWidget(parent),
      tailWidth_(field("guideTailWidth", tr("% of bone"), 100 * solid::kLeastTail, 100 * solid::kMostTail, 5)),
      tailHeight_(field("guideTailHeight", tr("% of bone"), 100 * solid::kLeastTail, 100 * solid::kMostTail, 5)),
      muscle_(field("guideMuscle", tr("% of usual"), 0, 100 * solid::kMostMuscle, 5)),
      preset_(calmComboBox()) {
  auto* form = new QFormLayout(this);
  form->setContentsMargins(0, 0, 0, 0);
  form->setVerticalSpacing(kGridStep);
  for (std::size_t i = 0; i < kRows.size(); ++i) {
    thickness_[i] = field(kRows[i].name, tr("mm"), 0, 1000 * solid::kMostThickness, 5);
    form->addRow(tr(kRows[i].words), thickness_[i]);
  }
  preset_->setObjectName("guideBuild");
  for (const char* words : kPresetWords) preset_->addItem(tr(words));
  preset_->addItem(tr("My own"));
  form->addRow(tr("Build"), preset_);
  form->addRow(tr("Tail width"), tailWidth_);
  form->addRow(tr("Tail height"), tailHeight_);
  form->addRow(tr("Limb muscles"), muscle_);
  form->addRow(mutedLabel(tr("Tail presets: %1. The other values are a choice, not a finding.")
                              .arg(QString::fromUtf8(solid::kTailSource.data()))));
  connect(preset_, &QComboBox::activated, this, &GuideFields::choosePreset);
  for (UnitSpinBox* box : {tailWidth_, tailHeight_, muscle_})
    connect(box, &QDoubleSpinBox::valueChanged, this, &GuideFields::showPreset);
  setValue({});
}

GuideThickness GuideFields::value() const {
  GuideThickness value;
  for (std::size_t i = 0; i < kRows.size(); ++i) value.*kRows[i].field = thickness_[i]->value() / 1000;
  value.tailWidth = tailWidth_->value() / 100;
  value.tailHeight = tailHeight_->value() / 100;
  value.muscle = muscle_->value() / 100;
  return value;
}

void GuideFields::setValue(const GuideThickness& value) {
  for (std::size_t i = 0; i < kRows.size(); ++i) thickness_[i]->setValue(value.*kRows[i].field * 1000);
  tailWidth_->setValue(value.tailWidth * 100);
  tailHeight_->setValue(value.tailHeight * 100);
  muscle_->setValue(value.muscle * 100);
  showPreset();
}

void GuideFields::choosePreset(int index) {
  if (index >= static_cast<int>(solid::kBuildPresets.size())) return;
  const solid::BuildPreset& preset = solid::kBuildPresets[static_cast<std::size_t>(index)];
  tailWidth_->setValue(preset.tailWidth * 100);
  tailHeight_->setValue(preset.tailHeight * 100);
  muscle_->setValue(preset.muscle * 100);
  showPreset();
}

void GuideFields::showPreset() {
  const auto& presets = solid::kBuildPresets;
  const auto shows = [](const UnitSpinBox* box, double share) { return std::abs(share * 100 - box->value()) < 0.5; };
  int index = static_cast<int>(presets.size());
  for (std::size_t i = 0; i < presets.size(); ++i)
    if (shows(tailWidth_, presets[i].tailWidth) && shows(tailHeight_, presets[i].tailHeight) &&
        shows(muscle_, presets[i].muscle))
      index = static_cast<int>(i);
  preset_->setCurrentIndex(index);
}

}  // namespace zyga::ui
