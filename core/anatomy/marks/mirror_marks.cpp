#include <stdexcept>

#include "core/anatomy/marks/mark_plan.h"

namespace zyga::anatomy {
namespace {

std::string partnerOf(const std::string& name) {
  if (name.ends_with(".L")) return name.substr(0, name.size() - 2) + ".R";
  if (name.ends_with(".R")) return name.substr(0, name.size() - 2) + ".L";
  return {};
}

}  // namespace

int mirrorMarks(Scan& scan, const Bone& sculpted, std::string_view only) {
  const std::string id = toId(scan.bone);
  if (scan.bone.side != Side::Midline) throw std::invalid_argument(id + " is a paired bone and has no mid-plane");
  if (!scan.placed)
    throw std::invalid_argument(id + " does not lie by its landmarks yet, so that its mid-plane is not known");
  const Eigen::Affine3d map = boneFromScan(scan);
  const Eigen::Affine3d across = map.inverse() * Eigen::Affine3d(Eigen::Vector3d(1, -1, 1).asDiagonal()) * map;
  int made = 0;
  const auto landmarks = scan.landmarks;
  for (const auto& [name, p] : landmarks) {
    const std::string partner = partnerOf(name);
    const bool wanted = only.empty() ? !partner.empty() && !landmarks.contains(partner) : only == name;
    if (partner.empty() || !wanted) continue;
    scan.landmarks[partner] = across * p;
    ++made;
  }
  const auto facets = scan.facets;
  for (const ScanFacet& marked : facets) {
    const FacetRole partner = mirrored(marked.facet.role);
    const bool wanted = only.empty() ? !facetOf(scan, partner) : only == toText(marked.facet.role);
    if (!wanted) continue;
    ScanFacet other{mapped(marked.facet, across), marked.residual};
    other.facet.role = partner;
    removeFacet(scan, partner);
    scan.facets.push_back(other);
    ++made;
  }
  // Pairs now tell the mid-plane; by construction they tell the same one.
  if (made > 0) placeByLandmarks(scan, sculpted);
  return made;
}

}  // namespace zyga::anatomy
