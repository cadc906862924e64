#include "ui/strip/strip_key.h"

#include <QPainter>
#include <array>

#include "ui/theme/figures.h"
#include "ui/theme/theme.h"
#include "ui/theme/words.h"

namespace zyga::ui {
namespace {

constexpr std::array kLevels{range::Level::Supported, range::Level::Near, range::Level::Beyond,
                             range::Level::NotJudged};
constexpr qreal kShape = 8;

QString words(range::Level level) { return text(range::toText(level)); }

}  // namespace

StripKey::StripKey(QWidget* parent) : QWidget(parent) {
  setAttribute(Qt::WA_TransparentForMouseEvents);
  setAccessibleName(tr("Key to the marks"));
}

QSize StripKey::sizeHint() const {
  int width = 0;
  for (const range::Level level : kLevels) width = std::max(width, fontMetrics().horizontalAdvance(words(level)));
  return {width + kWideGap, fontMetrics().height() * static_cast<int>(kLevels.size())};
}

void StripKey::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const int line = fontMetrics().height();
  int top = 0;
  for (const range::Level level : kLevels) {
    paintVerdict(painter, QPointF(kShape / 2 + 1, top + line / 2.0), kShape, level);
    painter.setPen(theme().muted);
    painter.drawText(QRectF(kWideGap, top, width() - kWideGap, line), Qt::AlignLeft | Qt::AlignVCenter, words(level));
    top += line;
  }
}

}  // namespace zyga::ui
