#pragma once

#include "core/anatomy/marks/scan_guess.h"
#include "core/files/scan/scan_reader.h"
#include "core/solid/mesh/repair.h"

namespace zyga::files {

/// A scan read and repaired, in its file's own unit and axes.
struct CleanScan {
  solid::TriangleMesh mesh;
  solid::Flaws flaws;
  std::vector<std::string> repairs;  ///< sentences for people, what the reader left out included
  double extent = 0;                 ///< greatest side of its box, in its own unit
  anatomy::UnitGuess unitGuess;      ///< sure where the format fixes it
  bool unitFixed = false;            ///< by the format; the size was not asked
  anatomy::ScanUp up = anatomy::ScanUp::Z;
};

/// readScan, then solid::repair. `expected` is the extent the bone should have, m, if anything is known. Throws
/// FileError as readScan does, and when nothing usable is left. Empty when cancelled.
std::optional<CleanScan> readCleanScan(const std::filesystem::path& path, const ScanReader& reader,
                                       double expected = anatomy::kUsualExtent);

}  // namespace zyga::files
