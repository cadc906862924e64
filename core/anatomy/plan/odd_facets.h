#pragma once

#include <vector>

#include "core/anatomy/tables/measurement_table.h"

namespace zyga::anatomy {

/// A measured cell of a facet that lies far from what the measured bones around it and the body plan say: more than
/// three robust deviations (from the median of all of them, by the median of the deviations; program default, no
/// source). It counts for its own bone and for the facets that meet it, and is carried no farther along the column.
struct OddFacet {
  BoneName bone;
  Measure measure = Measure::FacetLength;
  double value = 0;     ///< m or rad
  double expected = 0;  ///< the median, for a bone of this length
};

std::vector<OddFacet> oddFacets(const MeasurementTable& measured);

}  // namespace zyga::anatomy
