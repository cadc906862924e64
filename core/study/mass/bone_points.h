#pragma once

#include <Eigen/Core>
#include <vector>

#include "core/anatomy/specimen.h"

namespace zyga::study {

/// Points on the outside of a bone in its own frame, m, from its landmarks and measures: enough to wrap a hull around.
std::vector<Eigen::Vector3d> bonePoints(const anatomy::Bone& bone);

}  // namespace zyga::study
