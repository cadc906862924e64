#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "core/anatomy/marks/scan.h"
#include "core/reason/reason.h"
#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::files {

struct CleanScan;

/// A scanned bone of a project: its record, and its mesh in the scan's axes, m. The mesh is kept in a file of our own
/// beside the project (binary PLY in the folder `scans`, named by bone and content), never in the project file.
struct ProjectScan {
  anatomy::Scan scan;
  std::shared_ptr<const solid::TriangleMesh> mesh;  ///< none when its file could not be read
  reason::Reason trouble;                           ///< why there is no mesh; empty when there is one
};

/// The record and mesh of a scan that was just read: taken to `unit` (m), laid by a guess (up axis, middle on the
/// middle of the sculpted bone's landmarks) until landmarks say better.
ProjectScan projectScan(const CleanScan& clean, const anatomy::Bone& sculpted, anatomy::ScanUnit unit,
                        const std::filesystem::path& original);

/// The mesh as PLY: little-endian, single precision, triangles.
std::string scanPly(const solid::TriangleMesh& mesh);
/// Exactly what scanPly writes; anything else is a FileError with the cause alone.
solid::TriangleMesh parseScanPly(std::string_view bytes);

/// Writes the meshes that are not yet beside the project. Throws FileError.
void saveScanMeshes(const std::vector<ProjectScan>& scans, const std::filesystem::path& project);
/// Reads the meshes beside the project; what is missing, changed or damaged is told in `trouble`.
void loadScanMeshes(std::vector<ProjectScan>& scans, const std::filesystem::path& project);

std::vector<anatomy::Scan> recordsOf(const std::vector<ProjectScan>& scans);

}  // namespace zyga::files
