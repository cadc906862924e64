#include "app/window/picture_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include "ui/panels/panel_parts.h"
#include "ui/theme/figures.h"
#include "ui/theme/theme.h"

namespace zyga::ui {

using picture::StandardView;

PictureDialog::PictureDialog(QWidget* parent)
    : QDialog(parent),
      view_(new QComboBox),
      width_(new QSpinBox),
      transparent_(new QCheckBox(tr("Transparent ground, shadow kept"))),
      grid_(new QCheckBox(tr("Metre grid on the ground"))) {
  setObjectName("pictureDialog");
  setWindowTitle(tr("Save picture"));
  view_->addItem(tr("As on screen"), -1);
  view_->addItem(tr("From the left"), static_cast<int>(StandardView::Left));
  view_->addItem(tr("From the right"), static_cast<int>(StandardView::Right));
  view_->addItem(tr("Dorsal"), static_cast<int>(StandardView::Dorsal));
  view_->addItem(tr("Cranial"), static_cast<int>(StandardView::Cranial));
  view_->addItem(tr("Caudal"), static_cast<int>(StandardView::Caudal));
  view_->addItem(tr("Three-quarter"), static_cast<int>(StandardView::ThreeQuarter));
  width_->setObjectName("pictureWidth");
  width_->setRange(100, 12000);
  width_->setSingleStep(100);
  width_->setValue(2400);
  width_->setSuffix(tr(" px"));
  connect(transparent_, &QCheckBox::toggled, grid_, &QWidget::setDisabled);
  auto* form = new QFormLayout;
  form->setVerticalSpacing(kGap);
  form->addRow(tr("View"), view_);
  form->addRow(tr("Width"), width_);
  form->addRow(tr("Ground"), transparent_);
  form->addRow(QString(), grid_);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  QPushButton* go = buttons->addButton(tr("Choose a file…"), QDialogButtonBox::AcceptRole);
  go->setDefault(true);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  layout->setSpacing(kWideGap);
  layout->addWidget(mutedLabel(tr("Traced with soft light, beside the window; you can go on posing meanwhile.")));
  layout->addLayout(form);
  layout->addStretch(1);
  layout->addWidget(buttons);
  setMinimumWidth(scaledWithText(400));
}

PictureChoice PictureDialog::choice() const {
  PictureChoice choice;
  const int view = view_->currentData().toInt();
  if (view >= 0) choice.view = static_cast<StandardView>(view);
  choice.width = width_->value();
  choice.transparentGround = transparent_->isChecked();
  choice.groundGrid = grid_->isChecked() && !choice.transparentGround;
  return choice;
}

}  // namespace zyga::ui
