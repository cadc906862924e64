#pragma once

#include "core/anatomy/facet.h"
#include "core/anatomy/tables/measurement_table.h"

namespace zyga::anatomy {

/// "prezyg.L", "prezyg.R", "postzyg.L", "postzyg.R": what tables and the list of marks call a facet.
std::string_view toText(FacetRole role);
std::optional<FacetRole> facetRoleFromText(std::string_view text);

/// A facet as a table has it, in the axes of its bone's scan, m.
struct TabledFacet {
  Facet facet;
  bool slideGiven = true;  ///< otherwise the direction of sliding is any in the plane
  double residual = 0;     ///< rms distance of the surface from the facet's plane, m; 0 where the table does not say
  std::optional<double> confidence;  ///< of a suggested one, 0 to 1
};

/// Facets as a table: a header with the columns `bone`, `facet`, `centre x (mm)`, `centre y (mm)`, `centre z (mm)`,
/// `normal x`, `normal y`, `normal z`, `length (mm)`, `width (mm)` (lengths in mm, cm or m; along and across the slide)
/// and, where they are known, `slide x`, `slide y`, `slide z`, `radius (mm)` (of curvature, as Facet::radius),
/// `residual (mm)`, `confidence`, `outline (mm)` (corners "along across / along across / ..." in the plane; without it
/// the outline is the ellipse of length and width). One row a facet, in the axes of the bone's scan. Lines that start
/// with # are remarks; other columns are nobody's business.
struct FacetTable {
  std::map<BoneName, std::map<FacetRole, TabledFacet>> facets;
};

struct FacetReading {
  FacetTable table;
  std::vector<TableMessage> messages;
  bool usable() const;  ///< no message is an error
};

/// Reports everything that is wrong with line and column; never throws on bad text.
FacetReading readFacetTable(std::string_view text, std::string_view fileName);

/// In mm, bones and facets in order, with all columns, in the form readFacetTable takes; what is written is read to
/// within a nanometre and 1e-9 of a direction, and writing that gives the same text.
std::string writeFacetTable(const FacetTable& table);

}  // namespace zyga::anatomy
