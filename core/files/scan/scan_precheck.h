#pragma once

#include <cstdint>
#include <filesystem>

namespace zyga::files {

/// What the head of a mesh file tells before anything of it is believed.
struct ScanHead {
  std::uint64_t facesDeclared = 0;  ///< 0 where the format does not say
  bool gltf = false;
  bool stl = false;             ///< binary
  bool declares = false;        ///< `vertices` and `triangles` are what the file says
  std::uint64_t vertices = 0;   ///< 0 where the format does not say
  std::uint64_t triangles = 0;  ///< as declared, faces taken for triangles; else what the file's size has room for
  bool vertexColours = false, faceColours = false;  ///< declared
};

/// Looks at the head of a PLY, OFF, binary STL or glTF file: counts that its size cannot hold, a container that is cut
/// short, JSON that is none, and meshes compressed in a way that is not read end in a FileError that names the cause
/// alone, without the file. Other formats pass unseen.
ScanHead checkScanHead(const std::filesystem::path& path);

}  // namespace zyga::files
