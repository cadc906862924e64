#pragma once

#include <memory>
#include <vector>

#include "core/anatomy/specimen.h"
#include "core/reason/reason.h"
#include "core/solid/sculpt/sculpt.h"

namespace zyga::solid {

/// Why a surface cannot be made.
namespace fault {

inline constexpr reason::Id kNoBoneMeshes{"mesh.no-bone-meshes"};
inline constexpr reason::Id kNoClosedBone{"mesh.no-closed-bone"};
inline constexpr reason::Id kNoBonesForGuide{"mesh.no-bones-for-guide"};
/// The voxel, the memory it needs, the memory allowed, the smallest voxel that fits.
inline constexpr reason::Id kVoxelTooFine{"mesh.voxel-too-fine", 4};
inline constexpr reason::Id kVoxelTooCoarse{"mesh.voxel-too-coarse", 2};  ///< the voxel, one that does

}  // namespace fault

/// A skeleton as it stands: meshes in the bones' frames (empty pointers where a bone has none), and those frames in the
/// world, m.
struct PosedSkeleton {
  const anatomy::Specimen& specimen;
  const std::vector<std::shared_ptr<const BoneMesh>>& meshes;
  const std::vector<Eigen::Isometry3d>& X_WB;
};

struct WatertightOptions {
  double voxel = 0;                 ///< m; 0 chooses with naturalVoxel
  std::size_t triangles = 0;        ///< about so many are left at the end; 0 leaves all
  bool fillJoints = false;          ///< joints are filled where cartilage was, so that bones hang together
  std::size_t memory = 3ULL << 30;  ///< bytes the work may take, about
  task::Task task;
};

struct Watertight {
  TriangleMesh mesh;            ///< in the world, m; closed, oriented, a 2-manifold; positions and triangles
  double voxel = 0;             ///< m, the one used
  double volume = 0;            ///< m^3 enclosed
  std::size_t pieces = 0;       ///< connected surfaces
  std::size_t hollows = 0;      ///< closed hollows that were filled
  std::size_t specks = 0;       ///< pieces of less than eight voxels that were dropped
  std::size_t holesClosed = 0;  ///< bones whose open surface was closed over its holes
  std::vector<anatomy::BoneIndex> leftOut;    ///< bones whose surface encloses nothing
  std::vector<anatomy::JointIndex> unfilled;  ///< with fillJoints: joints whose bones stand too far apart
};

/// One two-thousandth of the greatest extent, in whole tenths of a millimetre.
double naturalVoxel(const PosedSkeleton& skeleton);
/// The smallest voxel (m) for which the work fits in `memory` bytes, by an estimate from size and surface.
double smallestVoxel(const PosedSkeleton& skeleton, std::size_t memory);

/// The union of all bones as one closed surface, from the bones' level sets by a dual mesh (its vertices lie near the
/// surface; parts thinner than about a voxel may be lost). Empty mesh when cancelled. Throws reason::Failure that tells
/// what would do instead: a voxel that needs more memory than allowed, one too coarse for anything to be left,
/// or no bones.
Watertight watertight(const PosedSkeleton& skeleton, const WatertightOptions& options);

/// Extents in the world, m.
Eigen::AlignedBox3d boundsOf(const PosedSkeleton& skeleton);

}  // namespace zyga::solid
