#pragma once

#include <atomic>
#include <filesystem>
#include <functional>
#include <memory>
#include <vector>

#include "core/anatomy/specimen.h"
#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// One bone at several levels of detail, finest first; all closed and consistently oriented.
struct BoneMesh {
  std::vector<TriangleMesh> levels;
};

struct SculptOptions {
  /// Triangles of the finest level, about.
  std::size_t triangleBudget = 12000;
  std::filesystem::path cacheFolder;                                  ///< empty: nothing is kept on disk
  unsigned threads = 0;                                               ///< 0: all cores
  std::function<void(std::size_t done, std::size_t total)> progress;  ///< called from worker threads
  const std::atomic<bool>* cancel = nullptr;
};

/// Meshes by bone (empty pointer for a bone that has grown into another), in the bones' frames. The same specimen gives
/// the same meshes to the bit. Empty result when cancelled.
std::vector<std::shared_ptr<const BoneMesh>> sculptAll(const anatomy::Specimen& specimen, const SculptOptions& options);

struct Sketch {
  std::vector<std::shared_ptr<const BoneMesh>> meshes;  ///< as sculptAll's
  bool rough = false;  ///< some are only rough; otherwise these are what sculptAll gives
};

/// For a first look: bones kept in the cache folder as they are, a likeness (meshLikeness) of the others, not kept.
Sketch sketchAll(const anatomy::Specimen& specimen, const SculptOptions& options);

/// One bone, without cache.
BoneMesh sculptBone(const anatomy::Specimen& specimen, anatomy::BoneIndex bone, std::size_t triangleBudget);

}  // namespace zyga::solid
