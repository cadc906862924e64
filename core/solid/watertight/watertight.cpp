#include "core/solid/watertight/watertight.h"

#include <algorithm>
#include <cmath>

#include "core/solid/mesh/components.h"
#include "core/solid/mesh/simplify.h"
#include "core/solid/sdf/mesher.h"
#include "core/solid/watertight/posed_field.h"

namespace zyga::solid {
namespace {

constexpr std::size_t kSampledTriangles = 40000;
constexpr double kFieldMemory = 400e6;  ///< bytes for all level sets, about
constexpr double kWidestJoint = 0.15;   ///< m: no cartilage is thicker

/// Bytes of level sets on samples `voxel` apart: bricks of 125 samples of two bytes, about 2.6 times as many as squares
/// of four samples cover the surface.
double fieldBytes(double surface, double voxel) { return 2.6 * 250 * surface / (16 * voxel * voxel); }

/// Bytes of the grid's index, of its blocks near the surface, and of the mesh with all that carries it to its end;
/// measured on both samples.
double gridBytes(const Eigen::Vector3d& size, double surface, double voxel) {
  const double blocks = (size / (4 * voxel) + Eigen::Vector3d::Constant(2)).prod();
  return 4 * blocks + 430 * surface / (voxel * voxel);
}

double spacingOfFields(double surface, double voxel) {
  return std::clamp(std::sqrt(2.6 * 250 * surface / (16 * kFieldMemory)), voxel / 2, std::max(voxel / 2, 0.01));
}

struct Extent {
  Eigen::Vector3d size;
  double surface;  ///< m^2

  explicit Extent(const PosedSkeleton& skeleton) : size(boundsOf(skeleton).sizes()), surface(surfaceOf(skeleton)) {}
  double bytesFor(double voxel) const {
    return gridBytes(size, surface, voxel) + fieldBytes(surface, spacingOfFields(surface, voxel));
  }
};

reason::Quantity length(double metres) { return {metres, reason::Unit::Length}; }
reason::Quantity bytes(double count) { return {count, reason::Unit::Bytes}; }

void checkMemory(const PosedSkeleton& skeleton, double voxel, std::size_t memory) {
  const double needed = Extent(skeleton).bytesFor(voxel);
  if (needed <= static_cast<double>(memory)) return;
  throw reason::Failure(
      {fault::kVoxelTooFine,
       {length(voxel), bytes(needed), bytes(static_cast<double>(memory)), length(smallestVoxel(skeleton, memory))}});
}

/// The shares of the whole work, by the clock on both samples.
constexpr double kFieldsDone = 0.25, kMeshDone = 0.75;

class Work {
 public:
  Work(const PosedSkeleton& skeleton, const WatertightOptions& options) : skeleton_(skeleton), options_(options) {
    out_.voxel = options.voxel > 0 ? options.voxel : naturalVoxel(skeleton);
  }

  Watertight run() {
    checkMemory(skeleton_, out_.voxel, options_.memory);
    const std::vector<PosedBone> bones = posedBones();
    if (cancelled()) return {};
    if (bones.empty()) throw reason::Failure(fault::kNoClosedBone);
    try {
      const TriangleMesh all = meshAllSurfaces(shapeOf(bones), out_.voxel);
      return cancelled() ? Watertight() : finished(all);
    } catch (const Stopped&) {
      return {};
    }
  }

 private:
  bool cancelled() const { return options_.task.cancelled(); }

  std::vector<PosedBone> posedBones() {
    surface_ = surfaceOf(skeleton_);
    LevelSetOptions levels;
    levels.voxel = spacingOfFields(surface_, out_.voxel);
    levels.task = options_.task.part(0, kFieldsDone);
    spaces_ = boneDistanceFields(skeleton_, kSampledTriangles, levels);
    out_.leftOut = spaces_.leftOut;
    out_.holesClosed = spaces_.holesClosed;
    std::vector<PosedBone> bones;
    for (std::size_t i = 0; i < spaces_.fields.size(); ++i)
      if (spaces_.fields[i]) bones.push_back({spaces_.fields[i], skeleton_.X_WB[i]});
    return bones;
  }

  Shape shapeOf(const std::vector<PosedBone>& bones) {
    std::vector<Bridge> bridges;
    if (options_.fillJoints) {
      JointBridges joints = jointBridges(skeleton_, spaces_.fields, 2.5 * out_.voxel, kWidestJoint);
      bridges = std::move(joints.bridges);
      out_.unfilled = std::move(joints.unfilled);
    }
    const double blocks = 3 * surface_ / (16 * out_.voxel * out_.voxel);
    return posedShape(bones, bridges, 0, {options_.task.part(kFieldsDone, kMeshDone), blocks});
  }

  Watertight finished(const TriangleMesh& all) {
    options_.task.tell(kMeshDone);
    Components pieces = solidComponents(all, 8 * std::pow(out_.voxel, 3));
    if (pieces.count == 0)
      throw reason::Failure({fault::kVoxelTooCoarse, {length(out_.voxel), length(naturalVoxel(skeleton_))}});
    out_.pieces = pieces.count;
    out_.hollows = pieces.hollows;
    out_.specks = pieces.specks;
    out_.mesh = options_.triangles > 0 ? simplified(pieces.mesh, options_.triangles, options_.task.quiet())
                                       : std::move(pieces.mesh);
    if (cancelled()) return {};
    out_.volume = volume(out_.mesh);
    options_.task.tell(1);
    return std::move(out_);
  }

  const PosedSkeleton& skeleton_;
  const WatertightOptions& options_;
  Watertight out_;
  BoneDistanceFields spaces_;
  double surface_ = 0;
};

}  // namespace

Eigen::AlignedBox3d boundsOf(const PosedSkeleton& skeleton) {
  Eigen::AlignedBox3d box;
  for (std::size_t i = 0; i < skeleton.meshes.size(); ++i) {
    if (!skeleton.meshes[i] || skeleton.meshes[i]->levels.empty()) continue;
    for (const Eigen::Vector3f& p : skeleton.meshes[i]->levels.front().positions)
      box.extend(skeleton.X_WB[i] * p.cast<double>());
  }
  return box;
}

double naturalVoxel(const PosedSkeleton& skeleton) {
  const Eigen::AlignedBox3d box = boundsOf(skeleton);
  if (box.isEmpty()) throw reason::Failure(fault::kNoBoneMeshes);
  return std::max(std::round(box.sizes().maxCoeff() / 2000 * 1e4) / 1e4, 1e-4);
}

double smallestVoxel(const PosedSkeleton& skeleton, std::size_t memory) {
  const Extent extent(skeleton);
  double low = 1e-5, high = 10;
  for (int i = 0; i < 30; ++i) {
    const double middle = std::sqrt(low * high);
    (extent.bytesFor(middle) > static_cast<double>(memory) ? low : high) = middle;
  }
  return std::ceil(high * 1e4) / 1e4;
}

Watertight watertight(const PosedSkeleton& skeleton, const WatertightOptions& options) {
  return Work(skeleton, options).run();
}

}  // namespace zyga::solid
