#include "core/anatomy/landmarks.h"
#include "core/solid/sculpt/axial/vertebra.h"
#include "core/solid/sculpt/bone_shape.h"

namespace zyga::solid {

using anatomy::Bone;

namespace {

// Subtracting leaves a plain zero where the sign would only be changed.
Point flipped(const Point& p) { return {p.x(), 0.0 - p.y(), p.z()}; }

void mirrorBone(Bone& bone) {
  bone.name = anatomy::mirrored(bone.name);
  bone.id = anatomy::toId(bone.name);
  decltype(bone.landmarks) landmarks;
  for (const auto& [name, place] : bone.landmarks) landmarks[anatomy::otherSide(name)] = flipped(place);
  bone.landmarks = std::move(landmarks);
  for (anatomy::Facet& facet : bone.facets) facet = mirrored(facet);
}

}  // namespace

anatomy::Specimen mirroredSpecimen(const anatomy::Specimen& specimen) {
  anatomy::Specimen out = specimen;
  for (Bone& bone : out.bones) mirrorBone(bone);
  for (anatomy::Joint& joint : out.joints) {
    joint.centreProximal = flipped(joint.centreProximal);
    joint.centreDistal = flipped(joint.centreDistal);
  }
  return out;
}

}  // namespace zyga::solid
