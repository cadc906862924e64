#include "core/solid/levelset/bone_spaces.h"

#include <Eigen/Geometry>

#include "core/solid/mesh/close_holes.h"

namespace zyga::solid {
namespace {

bool sound(const TriangleMesh& mesh) {
  const MeshHealth health = examine(mesh);
  return health.closed && health.oriented;
}

}  // namespace

BoneSpaces boneSpaces(const PosedSkeleton& skeleton, std::size_t triangles, const LevelSetOptions& options) {
  BoneSpaces spaces;
  std::vector<std::shared_ptr<const BoneMesh>> closed(skeleton.meshes.size());
  for (std::size_t i = 0; i < closed.size(); ++i) {
    if (options.cancel && *options.cancel) return spaces;
    const auto& mesh = skeleton.meshes[i];
    if (!mesh || mesh->levels.empty()) continue;
    const TriangleMesh& level = sampledLevel(*mesh, triangles);
    if (sound(level)) {
      closed[i] = mesh;
      continue;
    }
    TriangleMesh filled = withHolesClosed(level);
    if (sound(filled)) {
      ++spaces.holesClosed;
      closed[i] = std::make_shared<const BoneMesh>(BoneMesh{{std::move(filled)}});
    } else {
      spaces.leftOut.push_back({i});
    }
  }
  LevelSetOptions own = options;
  own.triangles = triangles;
  spaces.fields = levelSets(closed, std::vector<bool>(closed.size(), true), own);
  return spaces;
}

double surfaceOf(const PosedSkeleton& skeleton) {
  double twice = 0;
  for (const auto& bone : skeleton.meshes) {
    if (!bone || bone->levels.empty()) continue;
    const TriangleMesh& mesh = sampledLevel(*bone, 20000);
    for (const auto& t : mesh.triangles)
      twice += (mesh.positions[t[1]] - mesh.positions[t[0]]).cross(mesh.positions[t[2]] - mesh.positions[t[0]]).norm();
  }
  return twice / 2;
}

}  // namespace zyga::solid
