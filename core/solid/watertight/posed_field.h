#pragma once

#include <atomic>
#include <functional>
#include <memory>
#include <vector>

#include "core/anatomy/plan/bone_field.h"
#include "core/solid/sdf/shape.h"

/// Bones as they lie in the world, as one shape.
namespace zyga::solid {

/// A bone's space, where the bone lies.
struct PosedBone {
  std::shared_ptr<const anatomy::BoneField> field;
  Frame X_WB = Frame::Identity();
  double grow = 0;  ///< m, added all around; no more than the field's reach
};

/// What fills a joint: every point whose distances from the two bones sum to less than `width` (m). Where the bones
/// face each other it is a disc that ends where the gap grows wider than that.
struct Bridge {
  PosedBone a, b;
  double width = 0;
};

/// Looked at while a shape is evaluated; leaves by throwing Stopped.
struct Watch {
  const std::atomic<bool>* cancel = nullptr;
  std::function<void()> visited;  ///< called once for each small block of points
};
struct Stopped {};

/// Union of the bones and bridges; surfaces flow together over `blend` (m; 0 leaves creases). The watch must outlive
/// the shape.
Shape posedShape(const std::vector<PosedBone>& bones, const std::vector<Bridge>& bridges, double blend = 0,
                 const Watch* watch = nullptr);

}  // namespace zyga::solid
