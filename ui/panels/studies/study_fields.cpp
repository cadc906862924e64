#include "ui/panels/studies/study_fields.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QSettings>
#include <QVBoxLayout>

#include "ui/panels/studies/spread_fields.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/figures.h"
#include "ui/theme/unit_spin_box.h"

namespace zyga::ui {
namespace {

constexpr char kSpaceKey[] = "studies/space";
constexpr char kDrawnKey[] = "studies/envelopeDrawn";
constexpr char kHeartKey[] = "studies/heartPercent";
constexpr char kSpreadKey[] = "studies/spread";

/// Pages in the order of StudyKind; those without settings are empty.
constexpr int kEmptyPage = 0, kEnvelopePage = 1, kSpreadPage = 2, kPressurePage = 3;

int pageOf(StudyKind kind) {
  switch (kind) {
    case StudyKind::Envelope:
      return kEnvelopePage;
    case StudyKind::Spread:
      return kSpreadPage;
    case StudyKind::Pressure:
      return kPressurePage;
    default:
      return kEmptyPage;
  }
}

/// Numbers of a spread in the order they are kept in.
QVariantList listOf(const study::SpreadOptions& o) {
  return {o.draws,           QVariant::fromValue(o.seed), o.errors.measured,
          o.errors.inferred, o.varyAssumptions,           o.overlap.least,
          o.overlap.most,    o.cartilagePercent.least,    o.cartilagePercent.most};
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

}  // namespace

StudyFields::StudyFields(QWidget* parent) : QStackedWidget(parent), spread_(new SpreadFields) {
  addWidget(new QWidget);
  addWidget(envelopePage());
  addWidget(spread_);
  addWidget(pressurePage());
  recall();
  connect(space_, &QCheckBox::toggled, this, &StudyFields::edited);
  connect(heart_, &QDoubleSpinBox::valueChanged, this, &StudyFields::edited);
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

void StudyFields::showFor(StudyKind kind) {
  setCurrentIndex(pageOf(kind));
  setVisible(pageOf(kind) != kEmptyPage);
  updateGeometry();
}

StudySettings StudyFields::settings() const {
  return {space_->isChecked(), spread_->options(), study::HeartPlace{heart_->value() / 100}};
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
  settings.setValue(kSpreadKey, listOf(spread_->options()));
}

void StudyFields::recall() {
  const QSettings settings;
  space_->setChecked(settings.value(kSpaceKey, false).toBool());
  drawn_->setChecked(settings.value(kDrawnKey, true).toBool());
  heart_->setValue(settings.value(kHeartKey, 100 * study::HeartPlace{}.share).toDouble());
  spread_->setOptions(optionsOf(settings.value(kSpreadKey).toList()));
}

}  // namespace zyga::ui
