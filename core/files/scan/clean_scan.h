#pragma once

#include "core/anatomy/marks/scan_guess.h"
#include "core/files/scan/scan_reader.h"
#include "core/solid/mesh/repair.h"

namespace zyga::files {

/// A scan read and repaired, in its file's own unit and axes.
struct CleanScan {
  solid::TriangleMesh mesh;
  solid::Flaws flaws;
  solid::Repairs repairs;
  /// What never came as far as the repair, counted.
  struct LeftOut {
    std::uint64_t facesDeclared = 0;   ///< what the file says it holds; 0 where it does not say
    std::uint64_t facesLost = 0;       ///< of those declared, which could not be used
    std::uint64_t badFaces = 0;        ///< that name vertices which are not there
    std::uint64_t pointsAndLines = 0;  ///< primitives without area
    RawScan::Looks looks;              ///< what is not kept
  } leftOut;
  double extent = 0;             ///< greatest side of its box, in its own unit
  anatomy::UnitGuess unitGuess;  ///< sure where the format fixes it
  bool unitFixed = false;        ///< by the format; the size was not asked
  anatomy::ScanUp up = anatomy::ScanUp::Z;
  std::string part;  ///< name of the part of the file that it is; empty when it is the whole file
  /// Of one that had more triangles than ScanLimits::triangles.
  struct Thinned {
    std::size_t from = 0, to = 0;  ///< triangles, repaired
    double error = 0;              ///< greatest distance of a vertex it had from the surface it has, in its own unit
    bool operator==(const Thinned&) const = default;
  };
  std::optional<Thinned> thinned;
};

/// readScan, then solid::repair, then as few triangles as are allowed. `expected` is the extent the bone should have,
/// m, if anything is known. Throws FileError as readScan does, and when nothing usable is left. Empty when cancelled.
std::optional<CleanScan> readCleanScan(const std::filesystem::path& path, const ScanReader& reader,
                                       double expected = anatomy::kUsualExtent);

/// What a file holds: one bone, or many in one frame.
struct CleanScans {
  std::vector<CleanScan> bones;
  std::vector<std::string> partsLeftOut;  ///< names of parts that tell no bone, beside such that do
};

/// As readCleanScan; but a file in which the names of two parts or more tell different bones (anatomy::guessBone, at
/// least half sure) comes as one mesh a bone, parts of the same bone together. What never came as far as the repair is
/// told with the first. `asOne`: never mind the parts.
std::optional<CleanScans> readCleanScans(const std::filesystem::path& path, const ScanReader& reader,
                                         bool asOne = false, double expected = anatomy::kUsualExtent);

}  // namespace zyga::files
