#include "ui/words/numbers.h"

#include <cmath>
#include <numbers>

namespace zyga::ui {
namespace {

using reason::Unit;

const QString kMinus = QStringLiteral("\u2212");
const QString kDegree = QStringLiteral("\u00B0");
const QString kNoBreak = QStringLiteral("\u00A0");

struct Style {
  double size;  ///< of the unit told, in SI
  QString sign;
  int decimals;
};

Style styleOf(Unit unit) {
  switch (unit) {
    case Unit::Length:
      return {0.001, kNoBreak + "mm", 1};
    case Unit::Distance:
      return {1, kNoBreak + "m", 2};
    case Unit::Angle:
      return {std::numbers::pi / 180, kDegree, 1};
    case Unit::Share:
      return {0.01, kNoBreak + "%", 0};
    case Unit::Mass:
      return {1, kNoBreak + "kg", 0};
    case Unit::Speed:
      return {1, kNoBreak + "m/s", 2};
    case Unit::Pressure:
      return {133.322, kNoBreak + "mmHg", 0};
    case Unit::Bytes:
      return {1e6, kNoBreak + "MB", 1};
    case Unit::Plain:
      break;
  }
  return {1, QString(), 2};
}

QString written(double value, Unit unit, int decimals) {
  const Style style = styleOf(unit);
  return plain(value / style.size, decimals) + style.sign;
}

}  // namespace

QString plain(double value, int decimals) {
  if (!std::isfinite(value)) return QStringLiteral("?");
  // Halves go up as people round them by hand: 100.05 is 100.1, though its nearest double lies below the half.
  const double power = std::pow(10, decimals);
  const QString figures = QString::number(std::round(std::abs(value) * power) / power, 'f', decimals);
  return (value < 0 && figures.toDouble() != 0 ? kMinus : QString()) + figures;
}

QString plainDegrees(double angle, int decimals) { return plain(angle / styleOf(Unit::Angle).size, decimals); }

QString degrees(double angle, int decimals) { return written(angle, Unit::Angle, decimals); }

QString signedDegrees(double angle, int decimals) {
  const QString figures = degrees(std::abs(angle), decimals);
  const bool zero = figures == degrees(0, decimals);
  return (zero ? QString() : angle > 0 ? QStringLiteral("+") : kMinus) + figures;
}

QString percent(double share, int decimals) { return written(share, Unit::Share, decimals); }
QString millimetres(double length, int decimals) { return written(length, Unit::Length, decimals); }
QString metres(double length, int decimals) { return written(length, Unit::Distance, decimals); }
QString plainKilograms(double mass) { return mass < 10 ? roughly(mass) : plain(mass, 0); }
QString kilograms(double mass) { return plainKilograms(mass) + kNoBreak + QStringLiteral("kg"); }
QString bytes(double count) {
  constexpr double kMega = 1 << 20, kGiga = 1 << 30;
  return count < kGiga ? plain(count / kMega, 1) + kNoBreak + "MB" : plain(count / kGiga, 1) + kNoBreak + "GB";
}
QString roughly(double value) {
  if (!std::isfinite(value) || value == 0) return plain(value, 0);
  const int decimals = 1 - static_cast<int>(std::floor(std::log10(std::abs(value))));
  const double step = std::pow(10, -decimals);
  return plain(std::round(value / step) * step, std::max(0, decimals));
}
QString tonnes(double mass) { return plain(mass / 1000, 1) + kNoBreak + QStringLiteral("t"); }
QString squareMetres(double area) { return plain(area, 1) + kNoBreak + QStringLiteral("m\u00B2"); }
QString cubicMetres(double volume) { return plain(volume, 1) + kNoBreak + QStringLiteral("m\u00B3"); }
QString millimetresOfMercury(double pressure) { return plain(pressure, 0) + kNoBreak + QStringLiteral("mmHg"); }
QString megapascals(double stress) { return plain(stress / 1e6, 2) + kNoBreak + QStringLiteral("MPa"); }
QString kilonewtons(double force) { return plain(force / 1000, 1) + kNoBreak + QStringLiteral("kN"); }
QString kilonewtonMetres(double moment) {
  return plain(moment / 1000, 1) + kNoBreak + QStringLiteral("kN") + kNoBreak + QStringLiteral("m");
}
QString quantity(double value, Unit unit) {
  if (unit == Unit::Bytes) return bytes(value);
  // No mass of an animal is known to the kilogram.
  if (unit == Unit::Mass && std::abs(value) >= 1000) return tonnes(value);
  return written(value, unit, styleOf(unit).decimals);
}

Apart apart(double measured, double limit, Unit unit) {
  const int decimals = styleOf(unit).decimals;
  Apart pair;
  for (int more = 0; more <= 2; ++more) {
    pair = {written(measured, unit, decimals + more), written(limit, unit, decimals + more)};
    if (pair.measured != pair.limit) break;
  }
  return pair;
}

}  // namespace zyga::ui
