#pragma once

#include <QString>

#include "core/files/scan/scan_set.h"

/// What is said of the unit and the size of scans that belong together: by the verb `scan` and by the list of files to
/// import.
namespace zyga::ui {

/// "0.108", "0.98", "12.3": how many times as large.
QString sizeFactorText(double factor);
/// "mm"
QString unitText(anatomy::ScanUnit unit);
/// "unit of all guessed mm, in which the middle one of 7 bones is 0.98 times the animal's; no other unit comes near".
/// Empty where nothing is known.
QString unitOfSetSaid(const anatomy::SetUnitGuess& unit, files::UnitBy by);
/// "these bones are about 4.2 times as large as the animal's"; the other way round of smaller ones.
QString sizeOfSetSaid(double factor);
/// Of a bone so many times as large as the others of its set, held against the animal: "beside the others about 12.0
/// times too large: another unit, or another bone?"
QString oddSizeSaid(double factor);

}  // namespace zyga::ui
