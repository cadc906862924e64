#include "ui/panels/readouts.h"

#include <QPainter>
#include <algorithm>

#include "core/anatomy/summary.h"
#include "core/kinematics/stand_readings.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"

namespace zyga::ui {
namespace {

constexpr int kShapeSize = 11;

QString metresWithoutUnit(double length) { return QString::number(length, 'f', 2); }

}  // namespace

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
  if (!(what & (Changes(Change::Pose) | Change::Assumptions | Change::Contact))) return;
  const bool pending = document_.contactPending();
  text_ = document_.hasProject() ? provisionally(verdictCount(document_.assessment()), pending) : QString();
  setAccessibleName(text_);
  QString tip = document_.hasProject() ? tr("Assuming %1").arg(assumptionsInShort(document_.assumptions())) : QString();
  if (pending) tip += '\n' + provisionalReason();
  setToolTip(tip);
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
  const bool ofAJoint =
      std::any_of(assessment.joints.begin(), assessment.joints.end(),
                  [&](const range::JointVerdict& v) { return v.level == assessment.level && !v.onlyCollides(); });
  if (!assessment.contacts.empty() && !ofAJoint)
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
  if (!document_.specimen().findBone("skull")) {
    setText(tr("neck %1 · trunk %2 · tail %3 · column %4 m")
                .arg(metresWithoutUnit(sizes.neck), metresWithoutUnit(sizes.trunk), metresWithoutUnit(sizes.tail),
                     metresWithoutUnit(sizes.column)));
    return;
  }
  setText(tr("neck %1 · trunk %2 · tail %3 · total %4 · head at %5 m")
              .arg(metresWithoutUnit(sizes.neck), metresWithoutUnit(sizes.trunk), metresWithoutUnit(sizes.tail),
                   metresWithoutUnit(sizes.total), metresWithoutUnit(headHeight(document_))));
}

}  // namespace zyga::ui
