#pragma once

#include <array>

#include "core/range/assumptions.h"
#include "core/reason/reason.h"

namespace zyga::range {

/// Cartilage between the centra as found or argued for in one animal; none of them is the right value for another.
struct CartilagePreset {
  reason::Term animal;
  double percent;       ///< % of centrum length
  reason::Term source;  ///< names the citation

  Cartilage cartilage() const { return {Cartilage::In::PercentOfCentrum, percent}; }
};

/// Thinnest first.
extern const std::array<CartilagePreset, 6> kCartilagePresets;

/// A minimum overlap of the facets that is in use, or that living animals were seen to keep.
struct OverlapPreset {
  double share;  ///< of facet length (or area, as Assumptions::overlapBy says)
  reason::Term meaning;
  reason::Term source;  ///< names the citation
};

/// Strictest first.
extern const std::array<OverlapPreset, 3> kOverlapPresets;

}  // namespace zyga::range
