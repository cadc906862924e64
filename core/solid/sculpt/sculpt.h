#pragma once

#include <filesystem>
#include <memory>
#include <vector>

#include "core/anatomy/specimen.h"
#include "core/solid/mesh/triangle_mesh.h"
#include "core/task/task.h"

namespace zyga::solid {

struct SculptOptions {
  /// Triangles of the finest level, about.
  std::size_t triangleBudget = 12000;
  std::filesystem::path cacheFolder;  ///< empty: nothing is kept on disk
  task::Task task;
  std::vector<bool> wanted = {};  ///< by bone; empty: all of them
};

/// Meshes by bone (empty pointer for a bone that has grown into another), in the bones' frames. The same specimen gives
/// the same meshes to the bit. Empty result when cancelled.
std::vector<std::shared_ptr<const BoneMesh>> sculptAll(const anatomy::Specimen& specimen, const SculptOptions& options);

struct PreviewMeshes {
  std::vector<std::shared_ptr<const BoneMesh>> meshes;  ///< as sculptAll's
  bool rough = false;  ///< some are only rough; otherwise these are what sculptAll gives
};

/// For a first look: bones kept in the cache folder as they are, a rough preview (previewMesh) of the others, not kept.
PreviewMeshes previewAll(const anatomy::Specimen& specimen, const SculptOptions& options);

/// One bone, without cache.
BoneMesh sculptBone(const anatomy::Specimen& specimen, anatomy::BoneIndex bone, std::size_t triangleBudget);

}  // namespace zyga::solid
