#pragma once

#include <span>

#include "core/anatomy/tables/measurement_table.h"
#include "core/files/scan/clean_scan.h"

namespace zyga::files {

/// How the unit of a scan is known.
enum class UnitBy {
  Size,    ///< of all bones of the set together, against the animal's
  Format,  ///< which fixes it
  Person   ///< who said it
};
/// "size", "format", "person".
std::string_view toText(UnitBy by);

/// Files of bones that belong together.
struct ScanSetWish {
  std::vector<std::filesystem::path> paths;  ///< files; folders stand for the meshes in them
  std::vector<anatomy::BoneName> bones;      ///< what the first of the files are; these are one bone each
  std::optional<anatomy::ScanUnit> unit;
};

/// A bone of the set, read and repaired, in its file's own unit and axes.
struct ScanOfSet {
  std::filesystem::path file;
  CleanScan clean;  ///< clean.part names the part of the file that it is
  anatomy::BoneGuess bone;
  anatomy::ScanUnit unit = anatomy::ScanUnit::Metre;
  UnitBy unitBy = UnitBy::Size;
  bool unitSure = false;
};

struct LeftOutOfSet {
  std::filesystem::path file;
  std::string part;  ///< empty: the whole file
  reason::Reason why;
  bool asked = false;  ///< the file was named, rather than found in a folder
};

struct ScanSet {
  std::vector<ScanOfSet> bones;
  std::vector<LeftOutOfSet> leftOut;
  /// The one unit of all whose format does not fix theirs, and how many times as large as the animal's bones they are
  /// in the units taken.
  anatomy::SetUnitGuess unit;
  /// Of a set that makes an animal of its own: its counts, nothing measured yet.
  std::optional<anatomy::MeasurementTable> table;
};

/// Endings of mesh files that are read, in lower case: ".stl".
std::span<const std::string_view> meshEndings();
/// The mesh files that lie in a folder itself, by their endings, in the order of their names.
std::vector<std::filesystem::path> meshFilesIn(const std::filesystem::path& folder);

/// Reads all files of a set, several at once, each in a process of its own; a file of many bones gives many, see
/// readCleanScans. Which bone each is follows from its name, as anatomy::guessBones does for all together; a file found
/// in a folder has to be at least half sure. What cannot be read, named, or placed in `animal` is told in `leftOut`,
/// and of two scans of one bone the second. Throws FileError for a path that is not there and a folder without meshes.
/// Empty when cancelled.
std::optional<ScanSet> readScanSet(const ScanSetWish& wish, const anatomy::Specimen& animal, const ScanReader& reader);
/// The same for a set that makes an animal of its own, as the plan has it and with as many vertebrae as the names say
/// (anatomy::countsFrom).
std::optional<ScanSet> readScanSet(const ScanSetWish& wish, anatomy::BodyPlan plan, const ScanReader& reader);

}  // namespace zyga::files
