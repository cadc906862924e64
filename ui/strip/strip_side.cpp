#include "ui/strip/strip_side.h"

#include <QPainter>
#include <QToolButton>
#include <QVBoxLayout>
#include <array>

#include "ui/strip/strip_words.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/words/range_words.h"

namespace zyga::ui {

MotionChoice::MotionChoice(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kGridStep / 2);
  for (int motion = 0; motion < 3; ++motion) {
    auto* button = new QToolButton(this);
    button->setText(motionTitle(motion));
    button->setCheckable(true);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    button->setToolTip(tr("Show and bend this motion of every joint (%1)").arg(motion + 1));
    group_.addButton(button, motion);
    column->addWidget(button);
  }
  column->addStretch();
  setMotion(0);
  setAccessibleName(tr("Motion shown by the range strip"));
  connect(&group_, &QButtonGroup::idToggled, this, [this](int id, bool on) {
    if (on) emit chosen(id);
  });
}

void MotionChoice::setMotion(int motion) { group_.button(motion)->setChecked(true); }

namespace {

constexpr std::array kLevels{range::Level::Supported, range::Level::Near, range::Level::Beyond,
                             range::Level::NotJudged};
constexpr qreal kShape = 8;

}  // namespace

StripKey::StripKey(QWidget* parent) : QWidget(parent) {
  setAttribute(Qt::WA_TransparentForMouseEvents);
  setAccessibleName(tr("Key to the marks"));
}

QSize StripKey::sizeHint() const {
  int width = 0;
  for (const range::Level level : kLevels) width = std::max(width, fontMetrics().horizontalAdvance(levelWords(level)));
  return {width + kWideGap, fontMetrics().height() * static_cast<int>(kLevels.size())};
}

void StripKey::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const int line = fontMetrics().height();
  int top = 0;
  for (const range::Level level : kLevels) {
    paintVerdict(painter, QPointF(kShape / 2 + 1, top + line / 2.0), kShape, level);
    painter.setPen(theme().muted);
    painter.drawText(QRectF(kWideGap, top, width() - kWideGap, line), Qt::AlignLeft | Qt::AlignVCenter,
                     levelWords(level));
    top += line;
  }
}

}  // namespace zyga::ui
