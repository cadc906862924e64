#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "core/anatomy/marks/scan.h"
#include "core/reason/reason.h"
#include "core/solid/mesh/open_borders.h"
#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::files {

struct CleanScan;

/// A scanned bone of a project: its record, and its mesh in the scan's axes, m. The mesh is kept in a file of our own
/// (binary PLY in the folder `scans`, named by bone and content), beside the project or in a container with it; see
/// project_scan_files.h.
struct ProjectScan {
  anatomy::Scan scan;
  std::shared_ptr<const solid::TriangleMesh> mesh;  ///< none when its file could not be read
  reason::Reason trouble;                           ///< why there is no mesh; empty when there is one
  reason::Reason moved;                             ///< where it was found instead of in its place; else empty
  solid::OpenBorders borders;                       ///< of the mesh: how much of its surface is missing
};

/// The record and mesh of a scan that was just read: taken to `unit` (m), laid by a guess (up axis, middle on the
/// middle of the sculpted bone's landmarks) until landmarks say better.
ProjectScan projectScan(const CleanScan& clean, const anatomy::Bone& sculpted, anatomy::ScanUnit unit,
                        const std::filesystem::path& original);

/// The mesh as PLY: little-endian, single precision, triangles.
std::string scanPly(const solid::TriangleMesh& mesh);
std::uint64_t scanPlySize(const solid::TriangleMesh& mesh);  ///< bytes of it
/// Bytes that hold the whole header of such a file, and whether they begin one.
inline constexpr std::size_t kScanPlyHead = 512;
bool looksLikeScanPly(std::string_view head);
/// SHA-256 in hexadecimal digits, as a record names the bytes of its mesh by.
std::string scanChecksum(std::string_view bytes);
/// Exactly what scanPly writes; anything else is a FileError with the cause alone.
solid::TriangleMesh parseScanPly(std::string_view bytes);

std::vector<anatomy::Scan> recordsOf(const std::vector<ProjectScan>& scans);

}  // namespace zyga::files
