#pragma once

#include <QString>

#include "core/reason/reason.h"

namespace zyga::ui {

// The one place that writes numbers for people: SI in; the decimals are those of the unit, so that numbers stand still
// while they change; a no-break space before the unit, a true minus sign. "?" for what is not finite.

/// "7.1°" from rad.
QString degrees(double angle, int decimals = 1);
/// "+7.1°", "−3.2°", "0.0°".
QString signedDegrees(double angle, int decimals = 1);
/// "38 %" from 0.38.
QString percent(double share, int decimals = 0);
/// "12.3 mm" from m.
QString millimetres(double length, int decimals = 1);
/// "4.99 m".
QString metres(double length, int decimals = 2);
/// "4200 kg", "1.3 kg": no decimals from ten on, two figures below.
QString kilograms(double mass);
QString plainKilograms(double mass);
/// "1.5 GB", "20.0 MB": GB is 2^30, MB 2^20.
QString bytes(double count);
/// "22.8 t" from kg.
QString tonnes(double mass);
/// "12.3 m²", "45.6 m³".
QString squareMetres(double area);
QString cubicMetres(double volume);
/// "155 mmHg" from mmHg.
QString millimetresOfMercury(double pressure);
/// "0.45 MPa" from Pa.
QString megapascals(double stress);
/// "12.3 kN" from N, "4.5 kN m" from N m.
QString kilonewtons(double force);
QString kilonewtonMetres(double moment);
/// A bare number with so many decimals.
QString plain(double value, int decimals);
/// "5700" from 5680.2: an estimate, with no more than its two figures that count.
QString roughly(double value);
/// "7.1" from rad: a cell of a table whose head says degrees.
QString plainDegrees(double angle, int decimals = 1);
QString quantity(double value, reason::Unit unit);

/// Two values of a unit to be compared, with as many decimals as it takes to tell them apart, two more at most.
struct Apart {
  QString measured, limit;
};
Apart apart(double measured, double limit, reason::Unit unit);

}  // namespace zyga::ui
