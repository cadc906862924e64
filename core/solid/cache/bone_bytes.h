#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/solid/sculpt/sculpt.h"

namespace zyga::solid {

/// A bone's meshes as the cache keeps them.
std::vector<char> bytesOf(const BoneMesh& bone);
/// None when the bytes are no meshes: triangles of vertices that are not there, lists of the wrong length.
std::optional<BoneMesh> boneMeshFrom(std::span<const char> bytes);

}  // namespace zyga::solid
