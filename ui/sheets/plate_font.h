#pragma once

#include <QFont>

namespace zyga::ui {

/// Plates are painted in hundredths of a millimetre, so that sizes of type are whole numbers of units and are laid out
/// the same way whatever the device.
inline constexpr double kPlateUnits = 100;  ///< a millimetre

/// The type of plates for a painter that counts in plate units.
QFont plateFont(double size, bool bold);
QString plateFamily();

}  // namespace zyga::ui
