#include "ui/panels/studies/spread_fields.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <algorithm>

#include "ui/parts/panel_parts.h"
#include "ui/theme/figures.h"
#include "ui/theme/unit_spin_box.h"

namespace zyga::ui {
namespace {

UnitSpinBox* numberField(const char* name, const QString& spoken, const QString& unit, double most, int decimals) {
  auto* box = new UnitSpinBox(unit);
  box->setObjectName(name);
  box->setAccessibleName(spoken);
  box->setRange(0, most);
  box->setDecimals(decimals);
  return box;
}

study::Between ordered(double a, double b) { return {std::min(a, b), std::max(a, b)}; }

}  // namespace

SpreadFields::SpreadFields(QWidget* parent) : QWidget(parent), vary_(new QCheckBox(tr("Vary the assumptions"))) {
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(kGap);
  grid->setVerticalSpacing(kGridStep);
  grid->setColumnStretch(1, 1);
  grid->setColumnStretch(2, 1);
  draws_ = field(*grid, 0, "spreadDraws", tr("Draws"), tr("Animals that might have been; more give steadier numbers"),
                 {}, 20000, 0);
  draws_->setMinimum(20);
  seed_ = field(*grid, 1, "spreadSeed", tr("Seed"), tr("The same seed gives the same numbers on every machine"), {},
                4294967295.0, 0);
  measured_ = field(*grid, 2, "spreadMeasured", tr("Measured"),
                    tr("Standard error of a length that was measured, each by itself"), "%", 50, 1);
  inferred_ =
      field(*grid, 3, "spreadInferred", tr("Inferred"),
            tr("Standard error of lengths that a rule has filled in; those of one rule err together"), "%", 50, 1);
  vary_->setObjectName("spreadVary");
  grid->addWidget(vary_, 4, 0, 1, 3);
  const auto pair = [&](int row, const QString& title, const char* least, const char* most, double top, int decimals,
                        UnitSpinBox*& low, UnitSpinBox*& high) {
    auto* words = mutedLabel(title);
    words->setWordWrap(false);
    low = numberField(least, tr("%1, from").arg(title), "%", top, decimals);
    high = numberField(most, tr("%1, to").arg(title), "%", top, decimals);
    grid->addWidget(words, row, 0);
    grid->addWidget(low, row, 1);
    grid->addWidget(high, row, 2);
  };
  pair(5, tr("Least overlap"), "overlapFrom", "overlapTo", 100, 0, leastOverlap_, mostOverlap_);
  pair(6, tr("Cartilage"), "cartilageFrom", "cartilageTo", 100, 2, leastCartilage_, mostCartilage_);
  for (UnitSpinBox* box : findChildren<UnitSpinBox*>()) {
    connect(box, &QDoubleSpinBox::valueChanged, this, &SpreadFields::edited);
  }
  connect(vary_, &QCheckBox::toggled, this, [this](bool on) {
    for (UnitSpinBox* box : {leastOverlap_, mostOverlap_, leastCartilage_, mostCartilage_}) box->setEnabled(on);
    emit edited();
  });
}

UnitSpinBox* SpreadFields::field(QGridLayout& grid, int row, const char* name, const QString& title, const QString& tip,
                                 const QString& unit, double most, int decimals) {
  auto* words = mutedLabel(title);
  words->setWordWrap(false);
  words->setToolTip(tip);
  auto* box = numberField(name, title, unit, most, decimals);
  box->setToolTip(tip);
  grid.addWidget(words, row, 0);
  grid.addWidget(box, row, 1, 1, 2);
  return box;
}

study::SpreadOptions SpreadFields::options() const {
  study::SpreadOptions options;
  options.draws = static_cast<int>(draws_->value());
  options.seed = static_cast<std::uint64_t>(seed_->value());
  options.errors.measured = measured_->value() / 100;
  options.errors.inferred = inferred_->value() / 100;
  options.varyAssumptions = vary_->isChecked();
  const study::Between overlap = ordered(leastOverlap_->value(), mostOverlap_->value());
  options.overlap = {overlap.least / 100, overlap.most / 100};
  options.cartilagePercent = ordered(leastCartilage_->value(), mostCartilage_->value());
  return options;
}

void SpreadFields::setOptions(const study::SpreadOptions& options) {
  const QSignalBlocker quiet(this);
  draws_->setValue(options.draws);
  seed_->setValue(static_cast<double>(options.seed));
  measured_->setValue(100 * options.errors.measured);
  inferred_->setValue(100 * options.errors.inferred);
  vary_->setChecked(options.varyAssumptions);
  leastOverlap_->setValue(100 * options.overlap.least);
  mostOverlap_->setValue(100 * options.overlap.most);
  leastCartilage_->setValue(options.cartilagePercent.least);
  mostCartilage_->setValue(options.cartilagePercent.most);
}

}  // namespace zyga::ui
