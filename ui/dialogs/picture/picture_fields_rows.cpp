#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>

#include "ui/dialogs/picture/picture_fields.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"
#include "ui/theme/unit_spin_box.h"

/// The fields themselves; what they do to each other is in picture_fields.cpp.
namespace zyga::ui {
namespace {

using picture::StandardView;

UnitSpinBox* number(const char* name, const QString& unit, double least, double most, double step, int decimals) {
  auto* box = new UnitSpinBox(unit);
  box->setObjectName(name);
  box->setDecimals(decimals);
  box->setRange(least, most);
  box->setSingleStep(step);
  box->setKeyboardTracking(true);  // the preview follows what is typed
  return box;
}

}  // namespace

PictureFields::PictureFields(double screenTurn, QWidget* parent)
    : QWidget(parent),
      screenTurn_(screenTurn),
      view_(calmComboBox()),
      projection_(calmComboBox()),
      lens_(number("pictureLens", tr("mm"), 8, 800, 5, 0)),
      eye_(number("pictureEye", tr("m"), 0.05, 100, 0.1, 2)),
      turn_(number("pictureTurn", tr("°"), -180, 180, 5, 1)),
      distance_(number("pictureDistance", tr("m"), 0.5, 10000, 0.5, 2)),
      width_(number("pictureWidth", tr("px"), PictureChoice::kNarrowest, PictureChoice::kWidest, 100, 0)),
      nearest_(new QCheckBox(tr("As near as shows all"))),
      horizon_(new QCheckBox(tr("Draw the horizon"))),
      transparent_(new QCheckBox(tr("Transparent ground, shadow kept"))),
      grid_(new QCheckBox(tr("Metre grid on the ground"))),
      size_(mutedLabel()) {
  view_->setObjectName("pictureView");
  view_->addItem(tr("As on screen"), kViewOnScreen);
  view_->addItem(tr("From the left"), static_cast<int>(StandardView::Left));
  view_->addItem(tr("From the right"), static_cast<int>(StandardView::Right));
  view_->addItem(tr("Dorsal"), static_cast<int>(StandardView::Dorsal));
  view_->addItem(tr("Ventral"), static_cast<int>(StandardView::Ventral));
  view_->addItem(tr("Cranial"), static_cast<int>(StandardView::Cranial));
  view_->addItem(tr("Caudal"), static_cast<int>(StandardView::Caudal));
  view_->addItem(tr("Three-quarter"), static_cast<int>(StandardView::ThreeQuarter));
  view_->setPlaceholderText(tr("Turned by hand"));
  projection_->setObjectName("pictureProjection");
  projection_->addItem(tr("Parallel"));
  projection_->addItem(tr("Through a lens"));
  projection_->setPlaceholderText(tr("As on screen"));
  auto* form = new QFormLayout(this);
  form->setContentsMargins(0, 0, 0, 0);
  form->setVerticalSpacing(kGap);
  form->addRow(tr("View"), view_);
  form->addRow(tr("Projection"), projection_);
  addLensRows(*form);
  addSizeRows(*form);
  connect(view_, &QComboBox::activated, this, &PictureFields::chooseView);
  connect(projection_, &QComboBox::activated, this, &PictureFields::chooseProjection);
}

void PictureFields::addLensRows(QFormLayout& form) {
  lens_->setToolTip(tr("For a picture 36 mm wide: 24 is wide, 50 as the eye sees, 135 narrow and flat"));
  eye_->setToolTip(tr("Over the ground; the camera is held level, so upright things stay upright"));
  turn_->setToolTip(tr("0 looks from in front, 90 from the left, −90 from the right"));
  turn_->setWrapping(true);
  distance_->setToolTip(tr("Level, from the eye to the middle of the animal"));
  nearest_->setObjectName("pictureNearest");
  horizon_->setObjectName("pictureHorizon");
  form.addRow(tr("Focal length"), lens_);
  form.addRow(tr("Eye height"), eye_);
  form.addRow(tr("Turn"), turn_);
  form.addRow(tr("Distance"), distance_);
  form.addRow(QString(), nearest_);
  form.addRow(tr("Horizon"), horizon_);
  for (UnitSpinBox* box : {lens_, eye_, distance_})
    connect(box, &QDoubleSpinBox::valueChanged, this, &PictureFields::changed);
  connect(turn_, &QDoubleSpinBox::valueChanged, this, &PictureFields::turn);
  connect(nearest_, &QCheckBox::toggled, this, [this] {
    fit();
    emit changed();
  });
  connect(horizon_, &QCheckBox::toggled, this, &PictureFields::changed);
}

void PictureFields::addSizeRows(QFormLayout& form) {
  size_->setObjectName("pictureSize");
  transparent_->setObjectName("pictureTransparent");
  grid_->setObjectName("pictureGrid");
  form.addRow(tr("Width"), width_);
  form.addRow(tr("Size"), size_);
  form.addRow(tr("Ground"), transparent_);
  form.addRow(QString(), grid_);
  connect(width_, &QDoubleSpinBox::valueChanged, this, &PictureFields::changed);
  connect(transparent_, &QCheckBox::toggled, grid_, &QWidget::setDisabled);
  for (QCheckBox* box : {transparent_, grid_}) connect(box, &QCheckBox::toggled, this, &PictureFields::changed);
}

}  // namespace zyga::ui
