#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "core/files/disk/container.h"
#include "core/files/project/project_scan.h"

/// Where the meshes of scans are kept: beside the project in the folder `scans`, or in the project file itself.
namespace zyga::files {

namespace fault {

// In ProjectScan: bone, file of the mesh, cause and mend; bone, file, where the same mesh was found.
inline constexpr reason::Id kScanUnusable{"project.scan-unusable", 4};
inline constexpr reason::Id kScanMoved{"project.scan-moved", 3};

// Mends.
inline constexpr reason::Id kPutScanBack{"project.put-scan-back"};
inline constexpr reason::Id kAllowReading{"project.allow-reading"};
inline constexpr reason::Id kPutPlainFile{"project.put-plain-file"};
inline constexpr reason::Id kTakeFromCopy{"project.take-from-copy"};
inline constexpr reason::Id kOpenAgain{"project.open-again"};

}  // namespace fault

/// What saving did with the meshes of scans.
struct ScansSaved {
  std::size_t kept = 0;           ///< scans whose mesh is kept
  std::vector<std::string> lost;  ///< ids of bones whose mesh could not be read, so that there is nothing to keep
  std::filesystem::path folder;   ///< where they are; empty when they are in the project file itself
  bool folderMade = false;        ///< it was not there before
  /// Files that stood under the name of a mesh and held something else: they were renamed to these.
  std::vector<std::filesystem::path> setAside;
};

/// Writes the meshes that are not yet beside the project, which has a folder already. Throws FileError.
ScansSaved saveScanMeshes(const std::vector<ProjectScan>& scans, const std::filesystem::path& project);
/// As entries of a container, each once, by name.
std::vector<ContainerEntry> scanEntries(const std::vector<ProjectScan>& scans);

/// Reads the meshes that are not there yet from beside the project. One that is not in its place is looked for by its
/// checksum in the folder of the project and in `scans`, and told in `moved`; what cannot be used is told in `trouble`.
/// Only plain files are opened.
void loadScanMeshes(std::vector<ProjectScan>& scans, const std::filesystem::path& project);
/// The same from a container; `name` is what it is called.
void loadScanMeshes(std::vector<ProjectScan>& scans, const Container& container, const std::filesystem::path& name);
/// Looks for the meshes that could not be read, by their checksums, in a folder and those in it. How many it found.
std::size_t findScanMeshes(std::vector<ProjectScan>& scans, const std::filesystem::path& folder);

}  // namespace zyga::files
