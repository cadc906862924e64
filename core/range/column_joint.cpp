#include "core/range/column_joint.h"

namespace zyga::range {

using anatomy::FacetRole;

std::array<SideFacets, 2> facetsOf(const anatomy::Specimen& specimen, anatomy::JointIndex joint) {
  if (!specimen[joint].hasFacets()) return {};
  const anatomy::Bone& caudal = specimen[specimen.caudalBone(joint)];
  const anatomy::Bone& cranial = specimen[specimen.cranialBone(joint)];
  const auto pair = [&](FacetRole prezyg, FacetRole postzyg) {
    SideFacets side{caudal.facet(prezyg), cranial.facet(postzyg)};
    const auto usable = [](const anatomy::Facet* facet) { return facet && facet->outline.size() >= 3; };
    return usable(side.prezyg) && usable(side.postzyg) ? side : SideFacets{};
  };
  return {pair(FacetRole::PrezygLeft, FacetRole::PostzygLeft), pair(FacetRole::PrezygRight, FacetRole::PostzygRight)};
}

}  // namespace zyga::range
