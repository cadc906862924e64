#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "core/files/project/project.h"
#include "core/kinematics/placement.h"
#include "core/solid/sculpt/sculpt.h"

namespace zyga::files {

namespace fault {

inline constexpr Id kUnknownMeshEnding{"export.unknown-ending"};
inline constexpr Id kLibraryLeftOut{"export.library-left-out", 1};  ///< what should be in the file

}  // namespace fault

enum class LengthUnit { Metre, Centimetre, Millimetre };
enum class UpAxis { Y, Z };

struct ExportOptions {
  bool joined = false;                  ///< all bones as one mesh
  LengthUnit unit = LengthUnit::Metre;  ///< glTF is always in metres
  UpAxis up = UpAxis::Z;                ///< glTF is always Y up
};

/// Throws the FileError that exportMeshes would end in for want of a known ending or a folder, before any work is done.
void checkExport(const std::filesystem::path& path);

using BoneMeshes = std::vector<std::shared_ptr<const solid::BoneMesh>>;

/// A surface in the world, m, that is no bone: the skeleton as one surface, a body guide.
struct NamedSurface {
  std::string name;
  std::string note;  ///< what it is, for the file's header
  solid::TriangleMesh mesh;
};

/// Writes the posed skeleton at the finest level of detail, and the surfaces beside it; the format follows the ending:
/// glb, gltf, obj, ply, stl, dae. In glTF and COLLADA the nodes are named by bone and nested as the joints are. PLY and
/// STL hold a single mesh: what comes after the first goes into files of its own, "beast.body_guide.ply". Bones may be
/// missing (empty `meshes`) when there are surfaces. Throws FileError.
void exportMeshes(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB, const BoneMeshes& meshes,
                  const std::filesystem::path& path, const ExportOptions& options,
                  const std::vector<NamedSurface>& surfaces = {});

/// The file that the surface called `name` goes to when `path` holds a single mesh that is another one.
std::filesystem::path companionPath(const std::filesystem::path& path, const std::string& name);
/// Whether files of this ending hold one mesh and no more.
bool holdsSingleMesh(const std::filesystem::path& path);

}  // namespace zyga::files
