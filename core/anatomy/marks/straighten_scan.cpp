#include "core/anatomy/marks/straighten_scan.h"

#include <stdexcept>

namespace zyga::anatomy {

Straightening straightening(const Scan& scan, DeformedBy by) {
  if (scan.bone.side != Side::Midline)
    throw std::invalid_argument(toId(scan.bone) + " is a paired bone: it has no symmetry to go by");
  std::vector<std::pair<Eigen::Vector3d, Eigen::Vector3d>> pairs;
  std::vector<Eigen::Vector3d> midline;
  for (const auto& [name, p] : scan.landmarks) {
    if (name.ends_with(".R")) continue;
    if (!name.ends_with(".L")) {
      midline.push_back(p);
    } else if (const auto right = scan.landmarks.find(name.substr(0, name.size() - 2) + ".R");
               right != scan.landmarks.end()) {
      pairs.emplace_back(p, right->second);
    }
  }
  for (const ScanFacet& left : scan.facets)
    for (const ScanFacet& right : scan.facets)
      if (isLeft(left.facet.role) && right.facet.role == mirrored(left.facet.role))
        pairs.emplace_back(left.facet.centre, right.facet.centre);
  return straighten(pairs, midline, by);
}

Scan straightened(Scan scan, const Bone& sculpted, const Eigen::Matrix3d& map) {
  scan.straighten = map;
  const bool asFound = map.isIdentity(1e-12);
  if (scan.evidence == Evidence::Found && !asFound) scan.evidence = Evidence::FoundDeformed;
  if (scan.evidence == Evidence::FoundDeformed && asFound) scan.evidence = Evidence::Found;
  scan.placed = placeByLandmarks(scan, sculpted);
  return scan;
}

}  // namespace zyga::anatomy
