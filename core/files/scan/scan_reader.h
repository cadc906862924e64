#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/files/disk/file_error.h"
#include "core/solid/mesh/triangle_mesh.h"
#include "core/task/task.h"

/// Reading of meshes nobody vouches for. The file is opened by a process of its own, which may crash, hang or eat
/// memory without harm: this program starts itself again with the word `read-scan`, under limits, and takes the mesh
/// back in a file of its own format that is checked like any other.
namespace zyga::files {

struct ScanLimits {
  // Program defaults, no source: ten times and more what reading was measured to take, 0.2 to 0.9 s a million.
  double seconds = 18;            ///< of processor time; the process is ended after them, rounded up
  double secondsPerMillion = 10;  ///< more for every million triangles that the file declares or has room for
  double clockTimes = 10;         ///< as many times that by the clock end a process that only waits
  std::uint64_t memory = std::uint64_t{4} << 30;    ///< bytes, everything the reading process maps
  std::uint64_t fileSize = std::uint64_t{1} << 30;  ///< bytes of the scan; larger ones are refused unread
  std::size_t triangles = 2'000'000;                ///< of a bone; one of more is thinned to so many
};

struct ScanReader {
  std::filesystem::path program = "/proc/self/exe";  ///< a program whose verb `read-scan` is `readScanProcess`
  ScanLimits limits;
  task::Task task;  ///< told from the thread that reads
};

/// A piece of a file that is placed and named by itself.
struct ScanPart {
  std::string name;  ///< of its node, else of its mesh; empty where the file names neither
  std::uint64_t triangles = 0;
};

/// A mesh as its file holds it, in the file's own unit and axes; dirty. All parts of the file as one mesh, in one
/// frame.
struct RawScan {
  solid::TriangleMesh mesh;
  std::uint64_t facesDeclared = 0;   ///< what the file says it holds; 0 where it does not say
  std::uint64_t facesRead = 0;       ///< polygons that came out
  std::uint64_t badFaces = 0;        ///< polygons that name vertices which are not there, left out
  std::uint64_t pointsAndLines = 0;  ///< primitives without area, left out
  std::optional<double> unit;        ///< m, where the format fixes it
  bool yUp = false;                  ///< the format fixes Y as up
  std::vector<ScanPart> parts;       ///< which triangles are whose: each has those that follow the one before
  /// What the file has and a scan does not keep.
  struct Looks {
    bool vertexColours = false, faceColours = false, textures = false;
    bool operator==(const Looks&) const = default;
  } looks;
};

/// Throws FileError naming the file and the cause: not there, not a file, too large, no mesh in it, cut short,
/// compressed in a way that is not read, crashed the reader, took too long or too much memory, or would by what it
/// declares. Empty when cancelled.
std::optional<RawScan> readScan(const std::filesystem::path& path, const ScanReader& reader);

}  // namespace zyga::files
