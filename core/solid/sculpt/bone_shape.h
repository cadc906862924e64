#pragma once

#include "core/anatomy/specimen.h"
#include "core/solid/sdf/mesher.h"
#include "core/solid/sdf/shape.h"

namespace zyga::solid {

/// The solid of one bone in its own frame; no solid for a bone that has grown into another. A right bone is the mirror
/// image of the left bone that its own measures and landmarks give. Throws std::out_of_range when a landmark or measure
/// the bone needs is missing.
Shape shapeOf(const anatomy::Specimen& specimen, anatomy::BoneIndex bone);

/// The flat parts of the solid that shapeOf gives: the bone's facets.
std::vector<FlatPart> flatPartsOf(const anatomy::Bone& bone);

/// Levels of detail of a left or midline bone.
BoneMesh meshBone(const anatomy::Specimen& specimen, anatomy::BoneIndex bone, std::size_t triangleBudget);
/// The same for a first look, see meshLikeness.
BoneMesh likenessOf(const anatomy::Specimen& specimen, anatomy::BoneIndex bone);

/// The animal seen in a mirror across y = 0: what was right is left. Bones and joints keep their places in the lists.
anatomy::Specimen mirroredSpecimen(const anatomy::Specimen& specimen);

}  // namespace zyga::solid
