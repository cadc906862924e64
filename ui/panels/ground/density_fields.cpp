#include "ui/panels/ground/density_fields.h"

#include <QGridLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QToolButton>

#include "ui/commands/ground_edits.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/figures.h"
#include "ui/theme/unit_spin_box.h"
#include "ui/theme/words.h"

namespace zyga::ui {
namespace {

constexpr int kMergeKey = 2100;  // and one more for each part

QString nameOf(study::BodyPart part) {
  const auto words = title(part);
  return capital(text(words));
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
         "spaces, 1000 for limbs: author's choice"));
  connect(usual_, &QToolButton::clicked, this, [this] { changeDensities(document_, {}, tr("Usual densities")); });
  grid->addWidget(heading, 0, 0);
  grid->addWidget(usual_, 0, 1, Qt::AlignRight);
  for (const auto part : study::kAllBodyParts) {
    auto* field = new UnitSpinBox(tr("kg/m³"));
    field->setObjectName("density" + nameOf(part).remove(' '));
    field->setAccessibleName(tr("Density of the %1").arg(nameOf(part).toLower()));
    field->setRange(study::kLeastDensity, study::kMostDensity);
    field->setDecimals(0);
    field->setSingleStep(50);
    field->setKeyboardTracking(false);
    auto* label = new QLabel(nameOf(part));
    label->setBuddy(field);
    const int row = grid->rowCount();
    grid->addWidget(label, row, 0);
    grid->addWidget(field, row, 1);
    connect(field, &QDoubleSpinBox::valueChanged, this, [this, part](double density) { change(part, density); });
    fields_.at(static_cast<std::size_t>(part)) = field;
  }
  grid->setColumnStretch(1, 1);
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & Change::Ground) refresh();
  });
  refresh();
}

void DensityFields::change(study::BodyPart part, double density) {
  auto densities = document_.project().densities;
  densities[part] = density;
  changeDensities(document_, densities, tr("Density of the %1").arg(nameOf(part).toLower()),
                  kMergeKey + static_cast<int>(part));
}

void DensityFields::refresh() {
  setEnabled(document_.hasProject());
  if (!document_.hasProject()) return;
  const auto& densities = document_.project().densities;
  for (const auto part : study::kAllBodyParts) {
    auto* field = fields_.at(static_cast<std::size_t>(part));
    const QSignalBlocker quiet(field);
    field->setValue(densities[part]);
  }
  usual_->setEnabled(!(densities == study::Densities{}));
}

}  // namespace zyga::ui
