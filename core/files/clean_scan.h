#pragma once

#include "core/anatomy/scan_guess.h"
#include "core/files/scan_reader.h"
#include "core/solid/repair.h"

namespace zyga::files {

/// A scan read and repaired, in its file's own unit and axes.
struct CleanScan {
  solid::TriangleMesh mesh;
  solid::Flaws flaws;
  std::vector<std::string> repairs;  ///< sentences for people, what the reader left out included
  anatomy::UnitGuess unitGuess;      ///< sure where the format fixes it
  anatomy::ScanUp up = anatomy::ScanUp::Z;
};

/// readScan, then solid::repair. `expected` is the extent the bone should have, m, if anything is known. Throws
/// FileError as readScan does, and when nothing usable is left. Empty when cancelled.
std::optional<CleanScan> readCleanScan(const std::filesystem::path& path, const ScanReader& reader,
                                       double expected = 0.3);

}  // namespace zyga::files
