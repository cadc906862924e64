#include "ui/panels/studies/study_fields.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QSettings>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"
#include "ui/theme/unit_spin_box.h"

namespace zyga::ui {
namespace {

constexpr char kSpaceKey[] = "studies/space";
constexpr char kDrawnKey[] = "studies/envelopeDrawn";
constexpr char kHeartKey[] = "studies/heartPercent";
constexpr char kTensionKey[] = "studies/tensionPercent";
constexpr char kSpreadKey[] = "studies/spread";

/// Pages in the order of StudyKind; those without settings are empty.
constexpr int kEmptyPage = 0, kEnvelopePage = 1, kSpreadPage = 2, kPressurePage = 3, kStressPage = 4;

int pageOf(StudyKind kind) {
  switch (kind) {
    case StudyKind::Envelope:
      return kEnvelopePage;
    case StudyKind::Spread:
      return kSpreadPage;
    case StudyKind::Pressure:
      return kPressurePage;
    case StudyKind::Stress:
      return kStressPage;
    default:
      return kEmptyPage;
  }
}

/// Numbers of a spread in the order they are kept in.
QVariantList listOf(const study::SpreadOptions& o) {
  return {o.draws,           QVariant::fromValue(o.seed), o.errors.measured,
          o.errors.inferred, o.varyAssumptions,           o.overlap.min,
          o.overlap.max,     o.cartilagePercent.min,      o.cartilagePercent.max};
}

study::SpreadOptions optionsOf(const QVariantList& list) {
  study::SpreadOptions o;
  if (list.size() != 9) return o;
  o.draws = list[0].toInt();
  o.seed = list[1].toULongLong();
  o.errors.measured = list[2].toDouble();
  o.errors.inferred = list[3].toDouble();
  o.varyAssumptions = list[4].toBool();
  o.overlap = {list[5].toDouble(), list[6].toDouble()};
  o.cartilagePercent = {list[7].toDouble(), list[8].toDouble()};
  return o;
}

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
  draws_ = field(*grid, 0, "spreadDraws", tr("Samples"), tr("Animals that might have been; more give steadier numbers"),
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
  pair(5, tr("Minimum overlap"), "overlapFrom", "overlapTo", 100, 0, leastOverlap_, mostOverlap_);
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
  options.overlap = {overlap.min / 100, overlap.max / 100};
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
  leastOverlap_->setValue(100 * options.overlap.min);
  mostOverlap_->setValue(100 * options.overlap.max);
  leastCartilage_->setValue(options.cartilagePercent.min);
  mostCartilage_->setValue(options.cartilagePercent.max);
}

StudyFields::StudyFields(QWidget* parent) : QStackedWidget(parent), spread_(new SpreadFields) {
  addWidget(new QWidget);
  addWidget(envelopePage());
  addWidget(spread_);
  addWidget(pressurePage());
  addWidget(stressPage());
  recall();
  connect(space_, &QCheckBox::toggled, this, &StudyFields::edited);
  connect(heart_, &QDoubleSpinBox::valueChanged, this, &StudyFields::edited);
  connect(tension_, &QDoubleSpinBox::valueChanged, this, &StudyFields::edited);
  connect(spread_, &SpreadFields::edited, this, &StudyFields::edited);
  connect(this, &StudyFields::edited, this, &StudyFields::remember);
  connect(drawn_, &QCheckBox::toggled, this, [this](bool draws) {
    QSettings().setValue(kDrawnKey, draws);
    emit drawsEnvelopeChanged(draws);
  });
}

QWidget* StudyFields::envelopePage() {
  auto* page = new QWidget;
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kGridStep);
  space_ = new QCheckBox(tr("Sideways too, with space and ground"));
  space_->setObjectName("envelopeSpace");
  space_->setToolTip(
      tr("Also the space that the snout reaches with the neck swung and twisted, and the strip on the ground; takes "
         "up to half a minute"));
  drawn_ = new QCheckBox(tr("Draw it in the view"));
  drawn_->setObjectName("envelopeDrawn");
  drawn_->setToolTip(tr("The side outline around the animal and the strip on the ground"));
  column->addWidget(space_);
  column->addWidget(drawn_);
  return page;
}

QWidget* StudyFields::pressurePage() {
  auto* page = new QWidget;
  auto* grid = new QGridLayout(page);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(kGap);
  grid->setColumnStretch(1, 1);
  auto* words = mutedLabel(tr("Heart in the chest"));
  words->setWordWrap(false);
  heart_ = new UnitSpinBox("%");
  heart_->setObjectName("heartPlace");
  heart_->setAccessibleName(tr("Height of the heart in the chest"));
  heart_->setToolTip(tr("0 % at the ends of the ribs, 100 % at the column; an assumption"));
  heart_->setRange(0, 100);
  heart_->setDecimals(0);
  grid->addWidget(words, 0, 0);
  grid->addWidget(heart_, 0, 1);
  return page;
}

QWidget* StudyFields::stressPage() {
  auto* page = new QWidget;
  auto* grid = new QGridLayout(page);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(kGap);
  grid->setColumnStretch(1, 1);
  auto* words = mutedLabel(tr("Tension at"));
  words->setWordWrap(false);
  tension_ = new UnitSpinBox("%");
  tension_->setObjectName("tensionPlace");
  tension_->setAccessibleName(tr("Height of the tension over the neck"));
  tension_->setToolTip(tr(
      "Where what holds the neck from above runs, in percent of the height of the neural spines over the axis of the "
      "centrum; an assumption. Densities are those of mass and balance"));
  tension_->setRange(100 * study::kLeastTension, 100 * study::kMostTension);
  tension_->setDecimals(0);
  grid->addWidget(words, 0, 0);
  grid->addWidget(tension_, 0, 1);
  return page;
}

void StudyFields::showFor(StudyKind kind) {
  setCurrentIndex(pageOf(kind));
  setVisible(pageOf(kind) != kEmptyPage);
  updateGeometry();
}

StudySettings StudyFields::settings() const {
  StudySettings settings;
  settings.space = space_->isChecked();
  settings.spread = spread_->options();
  settings.heart.share = heart_->value() / 100;
  settings.tension.share = tension_->value() / 100;
  return settings;
}

bool StudyFields::drawsEnvelope() const { return drawn_->isChecked(); }

void StudyFields::setDrawsEnvelope(bool draws) { drawn_->setChecked(draws); }

/// Only the page in sight takes room.
QSize StudyFields::sizeHint() const { return currentWidget()->sizeHint(); }
QSize StudyFields::minimumSizeHint() const { return currentWidget()->minimumSizeHint(); }

void StudyFields::remember() const {
  QSettings settings;
  settings.setValue(kSpaceKey, space_->isChecked());
  settings.setValue(kHeartKey, heart_->value());
  settings.setValue(kTensionKey, tension_->value());
  settings.setValue(kSpreadKey, listOf(spread_->options()));
}

void StudyFields::recall() {
  const QSettings settings;
  space_->setChecked(settings.value(kSpaceKey, false).toBool());
  drawn_->setChecked(settings.value(kDrawnKey, true).toBool());
  heart_->setValue(settings.value(kHeartKey, 100 * study::HeartPlace{}.share).toDouble());
  tension_->setValue(settings.value(kTensionKey, 100 * study::TensionPlace{}.share).toDouble());
  spread_->setOptions(optionsOf(settings.value(kSpreadKey).toList()));
}

}  // namespace zyga::ui
