#include "ui/panels/readouts.h"

#include <QPainter>
#include <algorithm>

#include "core/anatomy/summary.h"
#include "core/kinematics/stand_readings.h"
#include "ui/theme/figures.h"
#include "ui/theme/theme.h"

namespace zyga::ui {
namespace {

constexpr int kShapeSize = 11;

int count(const range::Assessment& assessment, range::Level level) {
  return static_cast<int>(std::count_if(assessment.joints.begin(), assessment.joints.end(),
                                        [&](const range::JointVerdict& v) { return v.level == level; }));
}

QString metresWithoutUnit(double length) { return QString::number(length, 'f', 2); }

}  // namespace

QString verdictCount(const range::Assessment& assessment) {
  const int beyond = count(assessment, range::Level::Beyond);
  const int near = count(assessment, range::Level::Near);
  const int blank = count(assessment, range::Level::NotJudged);
  const int all = static_cast<int>(assessment.joints.size());
  QStringList parts;
  if (beyond > 0) parts += QObject::tr("%1 beyond").arg(beyond);
  if (near > 0) parts += QObject::tr("%1 near").arg(near);
  QString text = QObject::tr("%1 of %2 joints").arg(parts.join(", ")).arg(all);
  if (parts.empty())
    text = blank > 0 ? QObject::tr("%1 of %2 joints supported").arg(all - blank).arg(all)
                     : QObject::tr("all %1 joints supported").arg(all);
  if (blank > 0) text += QObject::tr(", %1 not judged").arg(blank);
  const auto touching = static_cast<int>(assessment.contacts.size());
  if (touching > 0) text += touching == 1 ? QObject::tr(", 1 contact") : QObject::tr(", %1 contacts").arg(touching);
  return text;
}

QString assumptionsInShort(const range::Assumptions& assumptions) {
  const auto thickness = [](const range::Cartilage& cartilage) {
    const bool percent = cartilage.in == range::Cartilage::In::PercentOfCentrum;
    return QString("%1 %2").arg(cartilage.amount).arg(percent ? "%" : "mm");
  };
  const QString by =
      assumptions.overlapBy == range::OverlapBy::Length ? QObject::tr("by length") : QObject::tr("by area");
  const QString neck = thickness(assumptions.neck), trunk = thickness(assumptions.trunk),
                tail = thickness(assumptions.tail);
  const QString cartilage = neck == trunk && trunk == tail ? neck : QStringList{neck, trunk, tail}.join(" / ");
  QString words = QObject::tr("%1 % %2, %3 cartilage").arg(assumptions.leastOverlap * 100).arg(by, cartilage);
  // The usual definition goes without saying; which one is in use is told in full in the joint view.
  if (assumptions.neutralBy == range::NeutralBy::FacetsAndCentra) words += QObject::tr(", centrum faces parallel");
  return words;
}

double headHeight(const Document& document) {
  return kinematics::snoutHeight(document.specimen(), document.placement()).value_or(0);
}

VerdictReadout::VerdictReadout(Document& document, QWidget* parent) : QWidget(parent), document_(document) {
  setObjectName("verdict");
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  connect(&document_, &Document::changed, this, &VerdictReadout::refresh);
  connect(&ThemeSwitch::instance(), &ThemeSwitch::changed, this, qOverload<>(&QWidget::update));
  refresh(Change::Everything);
}

void VerdictReadout::refresh(Changes what) {
  if (!(what & (Changes(Change::Pose) | Change::Assumptions))) return;
  text_ = document_.hasProject() ? verdictCount(document_.assessment()) : QString();
  setAccessibleName(text_);
  setToolTip(document_.hasProject() ? tr("Under %1").arg(assumptionsInShort(document_.assumptions())) : QString());
  updateGeometry();
  update();
}

QSize VerdictReadout::sizeHint() const {
  const int words = fontMetrics().horizontalAdvance(text_);
  return {text_.isEmpty() ? 0 : kShapeSize + kGap + words, fontMetrics().height() + kGridStep};
}

void VerdictReadout::paintEvent(QPaintEvent*) {
  if (text_.isEmpty()) return;
  QPainter painter(this);
  const range::Assessment& assessment = document_.assessment();
  const QPointF centre(kShapeSize / 2.0 + 1, height() / 2.0);
  // The shape of what is worst: bones that enter each other where no joint is as bad.
  if (!assessment.contacts.empty() && count(assessment, assessment.level) == 0)
    paintContact(painter, centre, kShapeSize);
  else
    paintVerdict(painter, centre, kShapeSize, assessment.level);
  painter.setPen(theme().text);
  painter.drawText(rect().adjusted(kShapeSize + kGap, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, text_);
}

LengthsReadout::LengthsReadout(Document& document, QWidget* parent) : QLabel(parent), document_(document) {
  setObjectName("lengths");
  setProperty("role", "muted");
  setToolTip(
      tr("Lengths along the column, from snout to tail tip; the head's height is that of the snout over the "
         "ground"));
  connect(&document_, &Document::changed, this, &LengthsReadout::refresh);
  refresh(Change::Everything);
}

void LengthsReadout::refresh(Changes what) {
  if (!(what & (Changes(Change::Pose) | Change::Assumptions))) return;
  if (!document_.hasProject()) return clear();
  const anatomy::Summary sizes = anatomy::summarise(document_.specimen());
  setText(tr("neck %1 · trunk %2 · tail %3 · total %4 · head at %5 m")
              .arg(metresWithoutUnit(sizes.neck), metresWithoutUnit(sizes.trunk), metresWithoutUnit(sizes.tail),
                   metresWithoutUnit(sizes.total), metresWithoutUnit(headHeight(document_))));
}

}  // namespace zyga::ui
