#pragma once

#include <algorithm>

#include "core/anatomy/specimen.h"

namespace zyga::anatomy {

/// How far behind its base the ball of a centrum turns, m, from how far its centre of curvature lies there and how deep
/// the ball is. A low swelling has that centre far behind, where no joint turns: facets and ligaments hold it near the
/// rim. So it turns no farther behind than two thirds of its depth (judgement); balls of 0.3 centrum heights and more
/// are left alone.
inline double turningDepth(double curvature, double depth) { return std::min(curvature, 0.66 * depth); }

/// Whether a vertebra carries its condyle behind, as the tails of titanosaurs do (its landmark condyleTip).
inline bool hasCondyleBehind(const Bone& bone) {
  const auto tip = bone.landmarks.find("condyleTip");
  return tip != bone.landmarks.end() && tip->second.x() < 0;
}

}  // namespace zyga::anatomy
