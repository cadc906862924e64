#pragma once

#include <string>

#include "core/anatomy/specimen.h"
#include "core/solid/sdf/levels.h"
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
/// The same for a first look, see previewMesh.
BoneMesh previewBone(const anatomy::Specimen& specimen, anatomy::BoneIndex bone);

/// The animal seen in a mirror across y = 0: what was right is left. Bones and joints keep their places in the lists.
anatomy::Specimen mirroredSpecimen(const anatomy::Specimen& specimen);

/// Changes whenever the same bone would come out with another mesh: raise it with every change to kernel or bones.
inline constexpr int kSculptVersion = 11;

/// 32 hexadecimal digits that stand for everything a left or midline bone's meshes depend on: its own measures,
/// landmarks and facets, those of the bones it has to fit, the triangle budget and the version above.
std::string shapeKey(const anatomy::Specimen& specimen, anatomy::BoneIndex bone, std::size_t triangleBudget);

}  // namespace zyga::solid
