#pragma once

#include "core/anatomy/plan/build_specimen.h"
#include "core/kinematics/placement.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
#include "core/solid/sculpt/sculpt.h"
#include "core/solid/watertight/watertight.h"
#include "tests/core/solid/mesh_library.h"

namespace zyga::solid {

/// Loose bones with meshes, for tests: each where it is told to lie, each after the first hung on the one before.
struct LooseBones {
  anatomy::Specimen specimen;
  std::vector<std::shared_ptr<const BoneMesh>> meshes;
  std::vector<Eigen::Isometry3d> X_WB;

  void add(TriangleMesh mesh, const Eigen::Vector3d& at) {
    const std::size_t i = specimen.bones.size();
    anatomy::Bone bone;
    bone.id = "bone" + std::to_string(i);
    specimen.bones.push_back(bone);
    if (i > 0) {
      anatomy::Joint joint;
      joint.id = "joint" + std::to_string(i);
      joint.proximal = {i - 1};
      joint.distal = {i};
      specimen.joints.push_back(joint);
    }
    meshes.push_back(std::make_shared<const BoneMesh>(BoneMesh{{std::move(mesh)}}));
    X_WB.emplace_back(Eigen::Translation3d(at));
  }
  PosedSkeleton posed() const { return {specimen, meshes, X_WB}; }
};

/// A sample animal's bones, sculpted coarsely, every joint at rest with the cartilage of a grown animal.
struct RestingAnimal {
  anatomy::Specimen specimen;
  std::vector<std::shared_ptr<const BoneMesh>> meshes;
  std::vector<Eigen::Isometry3d> X_WB;

  RestingAnimal(anatomy::Specimen animal, std::size_t triangles) : specimen(std::move(animal)) {
    SculptOptions options;
    options.triangleBudget = triangles;
    meshes = sculptAll(specimen, options);
    const auto articulation = range::articulate(specimen, range::grownAnimal());
    X_WB = kinematics::forwardKinematics(specimen, articulation, kinematics::Pose::neutral(specimen));
  }
  PosedSkeleton posed() const { return {specimen, meshes, X_WB}; }
};

}  // namespace zyga::solid
