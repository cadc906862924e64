#pragma once

#include <memory>
#include <vector>

#include "core/anatomy/signed_distance.h"
#include "core/solid/levelset/level_set.h"
#include "core/solid/sdf/shape.h"
#include "core/solid/watertight/watertight.h"
#include "core/task/task.h"

/// Level sets of a posed skeleton's bones, whatever state their meshes are in.
/// Bones as they lie in the world, as one shape.
namespace zyga::solid {

struct BoneDistanceFields {
  SignedDistances fields;  ///< by bone; empty where a bone has no mesh or was left out, all empty when cancelled
  std::size_t holesClosed = 0;
  std::vector<anatomy::BoneIndex> leftOut;
};

/// At most `triangles` triangles a bone are looked at. Holes are closed first; a bone that still encloses nothing is
/// left out.
BoneDistanceFields boneDistanceFields(const PosedSkeleton& skeleton, std::size_t triangles,
                                      const LevelSetOptions& options);

/// Surface of all bones, m^2, from their finest levels.
double surfaceOf(const PosedSkeleton& skeleton);

/// A bone's space, where the bone lies.
struct PosedBone {
  std::shared_ptr<const anatomy::SignedDistance> field;
  Frame X_WB = Frame::Identity();
  double grow = 0;  ///< m, added all around; no more than the field's reach
};

/// What fills a joint: every point whose distances from the two bones sum to less than `width` (m). Where the bones
/// face each other it is a disc that ends where the gap grows wider than that.
struct Bridge {
  PosedBone a, b;
  double width = 0;
};

/// Leaves an evaluation of a shape whose task has been cancelled.
struct Stopped {};

/// The task that evaluates a shape. How many blocks of points it will come to is known only about; the share told nears
/// 1 without reaching it.
struct Evaluation {
  task::Task task;
  double blocks = 0;  ///< expected, about; 0: nothing is told
};

/// Union of the bones and bridges; surfaces flow together over `blend` (m; 0 leaves creases). Evaluating it throws
/// Stopped once the task is cancelled.
Shape posedShape(const std::vector<PosedBone>& bones, const std::vector<Bridge>& bridges, double blend = 0,
                 Evaluation evaluation = {});

struct JointBridges {
  std::vector<Bridge> bridges;
  std::vector<anatomy::JointIndex> unfilled;  ///< the gap is wider than `widest`
};

/// Fillings of the joints between bones that have fields. Each is a little wider than the joint's narrowest gap:
/// `overlap` (m) is what the surface's grid needs to see it.
JointBridges jointBridges(const PosedSkeleton& skeleton, const SignedDistances& fields, double overlap, double widest);

}  // namespace zyga::solid
