#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "core/files/project.h"
#include "core/kinematics/placement.h"
#include "core/solid/sculpt.h"

namespace zyga::files {

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

/// Writes the posed skeleton at the finest level of detail; the format follows the ending: glb, gltf, obj, ply, stl,
/// dae. In glTF and COLLADA the nodes are named by bone and nested as the joints are. Throws FileError.
void exportMeshes(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB, const BoneMeshes& meshes,
                  const std::filesystem::path& path, const ExportOptions& options);

}  // namespace zyga::files
