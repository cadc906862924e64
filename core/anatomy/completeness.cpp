#include "core/anatomy/completeness.h"

namespace zyga::anatomy {
namespace {

bool isFound(const Bone& bone) { return bone.evidence == Evidence::Found || bone.evidence == Evidence::FoundDeformed; }

}  // namespace

Completeness completeness(const Specimen& specimen) {
  Completeness count;
  count.bones = specimen.bones.size();
  for (const Bone& bone : specimen.bones) {
    const auto other = specimen.findBone(toId(mirrored(bone.name)));
    if (isFound(bone)) ++count.found;
    if (isFound(bone) || (other && isFound(specimen[*other]))) ++count.withMirrored;
  }
  return count;
}

}  // namespace zyga::anatomy
