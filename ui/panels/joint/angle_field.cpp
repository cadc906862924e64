#include "ui/panels/joint/angle_field.h"

#include <QGridLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QtMath>

#include "ui/panels/joint/interval_bar.h"
#include "ui/panels/joint/joint_words.h"
#include "ui/theme/figures.h"
#include "ui/theme/unit_spin_box.h"

namespace zyga::ui {
namespace {

QLabel* mutedLabel(QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setProperty("role", "muted");
  label->setWordWrap(true);
  return label;
}

}  // namespace

AngleField::AngleField(int motion, QWidget* parent)
    : QWidget(parent),
      motion_(motion),
      name_(new QLabel(this)),
      way_(mutedLabel(this)),
      field_(new UnitSpinBox(QStringLiteral("\u00B0"), this)),
      bar_(new IntervalBar(this)),
      interval_(mutedLabel(this)),
      stops_(mutedLabel(this)) {
  field_->setRange(-180, 180);
  field_->setSingleStep(0.5);
  field_->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  field_->setObjectName(QStringLiteral("angle%1").arg(motion));
  interval_->setObjectName(QStringLiteral("interval%1").arg(motion));
  interval_->setWordWrap(false);
  way_->setWordWrap(false);
  name_->setBuddy(field_);
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setVerticalSpacing(kGridStep / 2);
  grid->addWidget(name_, 0, 0);
  grid->addWidget(way_, 0, 1);
  grid->addWidget(field_, 0, 2, Qt::AlignRight);
  grid->addWidget(bar_, 1, 0, 1, 2);
  grid->addWidget(interval_, 1, 2, Qt::AlignRight);
  grid->addWidget(stops_, 2, 0, 1, 3);
  grid->setColumnStretch(1, 1);
  connect(field_, &QDoubleSpinBox::valueChanged, this,
          [this](double degrees) { emit edited(qDegreesToRadians(degrees)); });
}

void AngleField::show(const anatomy::Joint& joint, const range::Band& band, double angle, range::Level level) {
  const QSignalBlocker quiet(field_);
  const QString title = motionTitleOf(joint, motion_);
  name_->setText(title);
  way_->setText(positiveWay(joint, motion_));
  field_->setAccessibleName(title);
  field_->setValue(qRadiansToDegrees(angle));
  field_->setEnabled(joint.kind != anatomy::JointKind::Fixed);
  bar_->show(band, angle, level, joint.typed.has_value() && !joint.hasFacets());
  interval_->setText(intervalWords(band));
  field_->setAccessibleDescription(interval_->text());
  stops_->setText(stopWords(joint, band));
  stops_->setVisible(!stops_->text().isEmpty());
}

}  // namespace zyga::ui
