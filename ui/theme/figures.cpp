#include "ui/theme/figures.h"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QStringList>
#include <QtMath>
#include <cmath>

namespace zyga::ui {
namespace {

const QString kMinus = QStringLiteral("\u2212");
const QString kDegree = QStringLiteral("\u00B0");

QString withMinus(double value, int decimals) {
  const QString figures = QString::number(std::abs(value), 'f', decimals);
  const bool zero = figures.toDouble() == 0;
  return (value < 0 && !zero ? kMinus : QString()) + figures;
}

}  // namespace

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

QString plainDegrees(double angle) { return withMinus(qRadiansToDegrees(angle), 1) + kDegree; }

QFont smallFont(const QFont& base) {
  QFont font = base;
  font.setPointSizeF(base.pointSizeF() * 0.88);
  return font;
}

QString signedDegrees(double angle) {
  const QString plain = plainDegrees(angle);
  const bool positive = angle > 0 && !plain.startsWith(QStringLiteral("0.0"));
  return positive ? QLatin1Char('+') + plain : plain;
}

QString metres(double length) { return withMinus(length, 2) + QStringLiteral(" m"); }

QString millimetres(double length, int decimals) { return withMinus(length * 1000, decimals) + QStringLiteral(" mm"); }

}  // namespace zyga::ui
