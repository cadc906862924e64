#include "ui/panels/joint/angle_field.h"

#include <QBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QtMath>

#include "ui/panels/joint/interval_bar.h"
#include "ui/panels/joint/joint_words.h"
#include "ui/theme/figures.h"
#include "ui/theme/theme.h"
#include "ui/theme/unit_spin_box.h"

namespace zyga::ui {
namespace {

constexpr int kFieldWidth = 96;  // px

QLabel* mutedLabel(QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setProperty("role", "muted");
  label->setWordWrap(true);
  label->setFont(smallFont(parent->font()));
  return label;
}

}  // namespace

AngleField::AngleField(int motion, QWidget* parent)
    : QWidget(parent),
      motion_(motion),
      name_(new QLabel(this)),
      field_(new UnitSpinBox(QStringLiteral("\u00B0"), this)),
      bar_(new IntervalBar(this)),
      interval_(mutedLabel(this)),
      stops_(mutedLabel(this)) {
  field_->setRange(-180, 180);
  field_->setSingleStep(0.5);
  field_->setFixedWidth(scaledWithText(kFieldWidth));
  field_->setObjectName(QStringLiteral("angle%1").arg(motion));
  interval_->setObjectName(QStringLiteral("interval%1").arg(motion));
  interval_->setWordWrap(false);
  stops_->setObjectName(QStringLiteral("stops%1").arg(motion));
  name_->setBuddy(field_);
  name_->setMinimumWidth(fontMetrics().horizontalAdvance(tr("Lateral flexion")));
  auto* row = new QHBoxLayout;
  row->setSpacing(kGap);
  row->addWidget(name_);
  row->addWidget(bar_, 1);
  row->addWidget(field_);
  auto* words = new QHBoxLayout;
  words->setSpacing(kGap);
  words->addWidget(interval_, 0, Qt::AlignTop);
  words->addWidget(stops_, 1, Qt::AlignTop);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kGridStep / 2);
  column->addLayout(row);
  column->addLayout(words);
  connect(field_, &QDoubleSpinBox::valueChanged, this,
          [this](double degrees) { emit edited(qDegreesToRadians(degrees)); });
}

void AngleField::show(const anatomy::Joint& joint, const range::Band& band, double angle, range::Level level) {
  const QSignalBlocker quiet(field_);
  const QString title = motionTitleOf(joint, motion_);
  name_->setText(title);
  name_->setToolTip(positiveWay(joint, motion_));
  field_->setAccessibleName(title);
  field_->setValue(qRadiansToDegrees(angle));
  field_->setEnabled(joint.kind != anatomy::JointKind::Fixed);
  bar_->show(band, angle, level, joint.typed.has_value() && !joint.hasFacets());
  interval_->setText(intervalWords(band));
  field_->setAccessibleDescription(interval_->text());
  stops_->setText(stopWords(joint, band));
  const QString both = stopSentences(joint, motion_, band);
  setToolTip(both);
  bar_->setAccessibleDescription(both);
  stops_->setVisible(!stops_->text().isEmpty());
}

}  // namespace zyga::ui
