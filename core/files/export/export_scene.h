#pragma once

#include <assimp/scene.h>

#include <memory>

#include "core/files/export/mesh_export.h"

/// The posed skeleton as a scene of the mesh library. Private to the writers of mesh files.
namespace zyga::files {

/// What is written: world metres turned and scaled into the file's own frame.
struct ExportFrame {
  Eigen::Matrix3d R_FW = Eigen::Matrix3d::Identity();
  double perMetre = 1;  ///< file units in a metre

  Eigen::Isometry3d toFile(const Eigen::Isometry3d& X_WB) const;
};

/// Up Z: the world's axes. Up Y: Y up and Z forward, so X is the animal's left, as glTF 2.0 section 3.4 has it.
ExportFrame exportFrame(LengthUnit unit, UpAxis up);

struct ExportInput {
  const anatomy::Specimen& specimen;
  const kinematics::Placement& X_WB;
  const BoneMeshes& meshes;
  ExportFrame frame;
  const std::vector<NamedSurface>& surfaces;  ///< side by side with the bones, in the file's frame
};

/// Nodes named by bone and nested as the joints, meshes in the bones' frames. Bones without a mesh are nodes only where
/// another bone hangs on them.
std::unique_ptr<aiScene> nestedScene(const ExportInput& input);
/// A mesh a bone, all in the file's frame and side by side.
std::unique_ptr<aiScene> bakedScene(const ExportInput& input);
/// All bones as one mesh in the file's frame, where there are any.
std::unique_ptr<aiScene> joinedScene(const ExportInput& input);

}  // namespace zyga::files
