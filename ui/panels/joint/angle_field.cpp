#include "ui/panels/joint/angle_field.h"

#include <QBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QSignalBlocker>
#include <QtMath>
#include <algorithm>
#include <cmath>

#include "ui/panels/joint/joint_words.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
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

void AngleField::show(const anatomy::Specimen& specimen, anatomy::JointIndex index, const range::MotionRange& band,
                      double angle, range::Level level) {
  const anatomy::Joint& joint = specimen[index];
  const QSignalBlocker quiet(field_);
  const QString title = motionTitleOf(joint, motion_);
  name_->setText(title);
  name_->setToolTip(positiveWay(joint, motion_));
  field_->setAccessibleName(title);
  field_->setValue(qRadiansToDegrees(angle));
  field_->setEnabled(joint.kind != anatomy::JointKind::Fixed);
  const IntervalBar::Defaults defaults{range::byDefault(joint, band.minStop), range::byDefault(joint, band.maxStop)};
  bar_->show(band, angle, level, joint.typed.has_value() && !joint.hasFacets(), defaults);
  interval_->setText(intervalWords(band));
  field_->setAccessibleDescription(interval_->text());
  stops_->setText(bandStopWords(specimen, index, band));
  const QString both = stopSentences(specimen, index, motion_, band);
  setToolTip(both);
  bar_->setAccessibleDescription(both);
  stops_->setVisible(!stops_->text().isEmpty());
}

namespace {
constexpr qreal kMark = 9;
constexpr qreal kBarHeight = 8;
}  // namespace

IntervalBar::IntervalBar(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void IntervalBar::show(const range::MotionRange& band, double angle, range::Level level, bool typed,
                       const Defaults& defaults) {
  defaults_ = defaults;
  band_ = band;
  angle_ = angle;
  level_ = level;
  typed_ = typed;
  update();
}

double IntervalBar::reach() const {
  double reach = std::abs(angle_);
  if (band_.judged && !band_.empty) reach = std::max({reach, std::abs(band_.min), std::abs(band_.max)});
  return std::max(reach, 0.01) * 1.1;
}

qreal IntervalBar::xOf(double angle) const { return width() / 2.0 + angle / reach() * (width() - kMark) / 2; }

void IntervalBar::paintBand(QPainter& painter) {
  const QRectF whole(0, height() / 2.0 - kBarHeight / 2, width(), kBarHeight);
  if (!band_.judged) return paintHatching(painter, whole, withAlpha(theme().notJudged, 0.55), 3.5);
  if (band_.empty) return painter.fillRect(whole, withAlpha(theme().beyond, 0.12));
  const QRectF bar(QPointF(xOf(band_.min), whole.top()), QPointF(xOf(band_.max), whole.bottom()));
  const bool light = theme().scheme == Scheme::Light;
  painter.fillRect(bar, withAlpha(theme().supported, (light ? 0.3 : 0.4) * (typed_ ? 0.4 : 1)));
  const auto end = [&](bool byDefault, const QLineF& line) {
    painter.setPen(QPen(theme().supported, 1.5, byDefault ? Qt::DotLine : Qt::SolidLine));
    painter.drawLine(line);
  };
  end(defaults_.min, {bar.topLeft(), bar.bottomLeft()});
  end(defaults_.max, {bar.topRight(), bar.bottomRight()});
}

void IntervalBar::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paintBand(painter);
  const QPointF zero(xOf(0), height() / 2.0);
  painter.setPen(QPen(mixed(theme().line, theme().muted, 0.6), 1));
  painter.drawLine(QPointF(zero.x(), 1), QPointF(zero.x(), height() - 1));
  const QPointF place(xOf(angle_), height() / 2.0);
  painter.setPen(QPen(withAlpha(theme().verdict(level_), 0.75), 2));
  painter.drawLine(zero, place);
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme().panel);
  painter.drawEllipse(place, kMark / 2 + 1.2, kMark / 2 + 1.2);
  paintVerdict(painter, place, kMark, level_);
}

}  // namespace zyga::ui
