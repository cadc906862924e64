#pragma once

#include <optional>

#include "core/anatomy/specimen.h"
#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// True for a bone on the mid-plane whose landmarks and facets are their own mirror images, within `tolerance` (m). A
/// sculpted bone's surface then is too; simplified levels of its mesh are not quite.
bool mirrorsItself(const anatomy::Bone& bone, double tolerance = 1e-6);

/// By bone.
std::vector<bool> bonesThatMirrorThemselves(const anatomy::Specimen& specimen);

/// A closed mesh made of the part of `mesh` at y >= 0 and its mirror image, without normals. None when that is not
/// closed, or when the halves of `mesh` differ in volume by more than `share`, so that it is no mirror image of itself.
std::optional<TriangleMesh> mirroredHalf(const TriangleMesh& mesh, double share = 0.03);

}  // namespace zyga::solid
