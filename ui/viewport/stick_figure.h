#pragma once

#include <utility>
#include <vector>

#include "core/anatomy/specimen.h"

namespace zyga::ui {

/// A bone as a few lines between its landmarks, in its own frame, m: what is shown, and picked, until it has a mesh.
using Sticks = std::vector<std::pair<Eigen::Vector3d, Eigen::Vector3d>>;

Sticks sticksOf(const anatomy::Bone& bone);

}  // namespace zyga::ui
