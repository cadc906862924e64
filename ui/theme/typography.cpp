#include "ui/theme/typography.h"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QStringList>
#include <cmath>

namespace zyga::ui {

bool hasTabularFigures(const QFont& font) {
  const QFontMetricsF metrics(font);
  const qreal first = metrics.horizontalAdvance(QLatin1Char('0'));
  for (char digit = '1'; digit <= '9'; ++digit)
    if (std::abs(metrics.horizontalAdvance(QLatin1Char(digit)) - first) > 0.01) return false;
  return true;
}

QFont figureFont(const QFont& base) {
  if (hasTabularFigures(base)) return base;
  const QStringList installed = QFontDatabase::families();
  for (const char* family : {"Noto Sans", "Source Sans 3", "Liberation Sans", "DejaVu Sans"}) {
    QFont font = base;
    font.setFamily(QString::fromLatin1(family));
    if (installed.contains(font.family()) && hasTabularFigures(font)) return font;
  }
  return base;
}

QFont titleFont(const QFont& base) {
  QFont font = base;
  font.setWeight(QFont::DemiBold);
  font.setPointSizeF(base.pointSizeF() * 1.15);
  return font;
}

QFont smallFont(const QFont& base) {
  QFont font = base;
  font.setPointSizeF(base.pointSizeF() * 0.88);
  return font;
}

}  // namespace zyga::ui
