#include "core/range/mixed_ground.h"

#include "core/anatomy/facet.h"

namespace zyga::range {

std::optional<anatomy::BoneIndex> inferredNeighbour(const anatomy::Specimen& specimen, anatomy::JointIndex joint) {
  using anatomy::FacetRole;
  if (!specimen[joint].hasFacets()) return std::nullopt;
  const anatomy::BoneIndex cranial = specimen.cranialBone(joint), caudal = specimen.caudalBone(joint);
  if (specimen[cranial].scanned == specimen[caudal].scanned) return std::nullopt;
  const bool ofCranial = specimen[cranial].scanned;
  const anatomy::Bone& scan = specimen[ofCranial ? cranial : caudal];
  const bool marked = ofCranial ? scan.facet(FacetRole::PostzygLeft) || scan.facet(FacetRole::PostzygRight)
                                : scan.facet(FacetRole::PrezygLeft) || scan.facet(FacetRole::PrezygRight);
  return marked ? std::optional(ofCranial ? caudal : cranial) : std::nullopt;
}

}  // namespace zyga::range
