#pragma once

#include <memory>

#include "core/anatomy/signed_distance.h"
#include "core/solid/cache/bytes.h"
#include "core/solid/levelset/level_set_grid.h"
#include "core/solid/mesh/triangle_mesh.h"
#include "core/solid/sculpt/sculpt.h"

namespace zyga::solid {

/// The space around a closed mesh: signed distances and points of its surface. Immutable and independent of the mesh.
class LevelSet : public anatomy::SignedDistance {
 public:
  /// `voxel` (m); 0 chooses a sixty-fourth of the largest extent, between 3 and 10 mm. Throws std::invalid_argument
  /// when the mesh is not closed and consistently oriented. `mirrorsItself`: the mesh is its own mirror image, and so
  /// are the points then.
  explicit LevelSet(const TriangleMesh& mesh, double voxel = 0, bool mirrorsItself = false);

  Estimate estimate(const Eigen::Vector3f& p_B) const override { return grid_.estimate(p_B); }
  float distance(const Eigen::Vector3f& p_B) const override { return grid_.distance(p_B); }
  float reach() const override { return grid_.reach(); }
  float resolution() const override { return grid_.voxel(); }
  const Eigen::AlignedBox3f& box() const override { return grid_.box(); }
  const std::vector<Eigen::Vector3f>& surfacePoints() const override { return points_; }
  /// To be kept and had back without the work. None when the bytes are no level set.
  std::vector<char> written() const;
  static std::shared_ptr<const LevelSet> from(std::span<const char> bytes);
  /// Memory held.
  std::size_t bytes() const { return grid_.bytes() + points_.size() * sizeof(Eigen::Vector3f); }

 private:
  LevelSet() = default;

  LevelSetGrid grid_;
  std::vector<Eigen::Vector3f> points_;
};

using SignedDistances = std::vector<std::shared_ptr<const anatomy::SignedDistance>>;

struct LevelSetOptions {
  /// By bone, or empty: these mirror themselves (mirrored_half.h), so the left half of the level that is sampled stands
  /// for both and the bone meets others alike on either side.
  std::vector<bool> mirrorsItself;
  /// The finest level of detail with no more triangles than this is sampled, or the coarsest there is.
  std::size_t triangles = 4000;
  double voxel = 0;                   ///< m; as in LevelSet
  std::filesystem::path cacheFolder;  ///< where level sets are kept; empty: nowhere
  task::Task task;
};

/// The level of detail of a bone that is sampled. The bone must have levels.
const TriangleMesh& sampledLevel(const BoneMesh& bone, std::size_t triangles = LevelSetOptions().triangles);

/// Level sets by bone, of the bones that are `wanted`; empty where a bone has no closed mesh. Empty result when
/// cancelled.
SignedDistances levelSets(const std::vector<std::shared_ptr<const BoneMesh>>& meshes, const std::vector<bool>& wanted,
                          const LevelSetOptions& options = {});

/// Points of the mesh, corners first: gaps are no wider than about `spacing` (m), and of points nearer to each other
/// than about half of that one is left.
std::vector<Eigen::Vector3f> samplePoints(const TriangleMesh& mesh, float spacing);

}  // namespace zyga::solid
