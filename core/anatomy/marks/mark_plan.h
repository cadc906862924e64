#pragma once

#include "core/anatomy/marks/scan.h"
#include "core/anatomy/tables/facet_table.h"

namespace zyga::anatomy {

/// How a mark is made on the surface of a scan.
enum class MarkBy {
  Point,  ///< one place of the surface
  Ring,   ///< the middle of a circle through places round an opening or a rim
  Ball,   ///< the centre of a sphere through brushed surface
  Facet   ///< plane and outline of brushed surface
};

/// Something to be marked on a scan.
struct WantedMark {
  std::string name;   ///< of the landmark as in landmarks.h or scan.h, or the word of the facet's role
  reason::Term what;  ///< "mark.cotyle-rim"; of a landmark that has no word it is empty, and its name is told
  Side side = Side::Midline;
  reason::Term purpose;  ///< what it is for, "mark.for-cotyle-rim"
  MarkBy by = MarkBy::Point;
  bool required = false;  ///< without it the bone does not lie, or its joints cannot be assessed
  std::optional<FacetRole> role;
};

/// What can be marked on a scan of this bone, in the order in which it is best marked: first what says how the bone
/// lies, then centres of rotation and facets, then what only makes it complete.
std::vector<WantedMark> marksFor(const Bone& sculpted);

/// Sets or takes away a landmark, which is no suggestion then, and lays the bone anew by what is then marked. On a
/// vertebra the middle of the canal follows from its two ends; on flat faces of a centrum the centre of rotation lies
/// in the middle of the rim until it is marked by itself.
/// What was known of its fit is forgotten.
void setLandmark(Scan& scan, const Bone& sculpted, const std::string& name, std::optional<Eigen::Vector3d> p_S);
/// The same for the centre of a ball or ring, with how well that fits.
void setLandmark(Scan& scan, const Bone& sculpted, const std::string& name, const Eigen::Vector3d& p_S,
                 const MarkFit& fit);
/// The same for a facet. Its direction of sliding is the sculpted bone's, as soon as the scan lies by its landmarks.
void setFacet(Scan& scan, const Bone& sculpted, const ScanFacet& facet);
/// The same for one whose own direction of sliding is known, from a table or a suggestion: it stays as it is.
void setFacetAsGiven(Scan& scan, const Bone& sculpted, const ScanFacet& facet);
void removeFacet(Scan& scan, FacetRole role);
const ScanFacet* facetOf(const Scan& scan, FacetRole role);

/// Copies marks across the mid-plane of a bone that lies by its landmarks. Without `only`, every mark of one side whose
/// partner is missing; with it, that one, over its partner. A facet that comes of it has not been measured on its side
/// (ScanFacet::measured). Returns how many were made. Throws reason::Failure when the
/// bone does not lie by its landmarks or is paired, and so has no mid-plane.
int mirrorMarks(Scan& scan, const Bone& sculpted, std::string_view only = {});

}  // namespace zyga::anatomy
