#include "ui/dialogs/picture/picture_fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLocale>
#include <QSignalBlocker>
#include <cmath>
#include <numbers>

#include "ui/theme/unit_spin_box.h"

namespace zyga::ui {
namespace {

using picture::StandardView;

constexpr double kDegree = std::numbers::pi / 180;
constexpr int kParallel = 0, kThroughLens = 1;  // of the projections

/// As the field for the turn has it: more than -180 and up to 180.
double wholeDegrees(double turn) {
  const double d = std::remainder(turn / kDegree, 360);
  return d <= -180 + 1e-9 ? 180 : d;
}

}  // namespace

bool PictureFields::onScreen() const {
  return view_->currentIndex() >= 0 && view_->currentData().toInt() == kViewOnScreen;
}

bool PictureFields::throughLens() const { return !onScreen() && lensWanted_ && picture::turnOf(side_); }

void PictureFields::select(std::optional<StandardView> view) {
  view_->setCurrentIndex(view ? view_->findData(static_cast<int>(*view)) : -1);
  if (view) side_ = *view;
}

void PictureFields::setValue(const PictureChoice& choice) {
  const QSignalBlocker quiet(this);
  lensWanted_ = choice.lens;
  lens_->setValue(choice.shot.lens);
  eye_->setValue(choice.shot.eyeHeight);
  nearest_->setChecked(!choice.shot.distance);
  if (choice.shot.distance) distance_->setValue(*choice.shot.distance);
  horizon_->setChecked(choice.horizon);
  width_->setValue(choice.width);
  transparent_->setChecked(choice.transparentGround);
  grid_->setChecked(choice.groundGrid);
  {
    const QSignalBlocker still(turn_);
    turn_->setValue(wholeDegrees(choice.shot.turn));
  }
  select(choice.view.value_or(side_));
  if (!choice.view) view_->setCurrentIndex(view_->findData(kViewOnScreen));
  if (throughLens()) select(picture::sideAt(turn_->value() * kDegree));
  fit();
}

void PictureFields::addTo(PictureChoice& choice) const {
  choice.view = onScreen() ? std::nullopt : std::optional(side_);
  choice.lens = lensWanted_;
  choice.shot.lens = lens_->value();
  choice.shot.eyeHeight = eye_->value();
  // A standard side is exact where the field is rounded.
  const auto side = picture::sideAt(turn_->value() * kDegree);
  choice.shot.turn = side ? *picture::turnOf(*side) : turn_->value() * kDegree;
  choice.shot.distance = nearest_->isChecked() ? std::nullopt : std::optional(distance_->value());
  choice.horizon = horizon_->isChecked();
  choice.width = qRound(width_->value());
  choice.transparentGround = transparent_->isChecked();
  choice.groundGrid = grid_->isChecked();
}

void PictureFields::chooseView() {
  leftScreen_ = false;
  if (!onScreen()) {
    side_ = static_cast<StandardView>(view_->currentData().toInt());
    const QSignalBlocker still(turn_);
    if (const auto turn = picture::turnOf(side_)) turn_->setValue(wholeDegrees(*turn));
  }
  fit();
  emit changed();
}

/// What is on screen has a projection of its own. To choose another one is to leave it: a lens looks from the same
/// side.
void PictureFields::chooseProjection(int index) {
  lensWanted_ = index == kThroughLens;
  leftScreen_ = leftScreen_ || onScreen();
  if (leftScreen_ && lensWanted_) {
    const QSignalBlocker still(turn_);
    turn_->setValue(wholeDegrees(screenTurn_));
    side_ = StandardView::ThreeQuarter;
    select(picture::sideAt(turn_->value() * kDegree));
  } else if (onScreen() || view_->currentIndex() < 0) {
    select(side_);
  }
  fit();
  emit changed();
}

void PictureFields::turn() {
  leftScreen_ = false;
  select(picture::sideAt(turn_->value() * kDegree));
  emit changed();
}

void PictureFields::fit() {
  projection_->setCurrentIndex(onScreen() ? -1 : lensWanted_ ? kThroughLens : kParallel);
  for (QWidget* field : {static_cast<QWidget*>(lens_), static_cast<QWidget*>(eye_), static_cast<QWidget*>(turn_),
                         static_cast<QWidget*>(nearest_)})
    field->setEnabled(throughLens());
  distance_->setEnabled(throughLens() && !nearest_->isChecked());
}

void PictureFields::showFraming(const Framing& framing) {
  if (framing.distance && nearest_->isChecked()) {
    const QSignalBlocker still(distance_);
    distance_->setValue(*framing.distance);
  }
  horizon_->setEnabled(framing.horizon.has_value());
  const QLocale locale;
  const int width = qRound(width_->value());
  size_->setText(
      tr("%1 × %2 px").arg(locale.toString(width), locale.toString(picture::heightOf(width, framing.aspect))));
}

}  // namespace zyga::ui
