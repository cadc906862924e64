#pragma once

#include <array>

#include "core/range/assumptions.h"

namespace zyga::range {

/// Cartilage between the centra as found or argued for in one animal; none of them is the right value for another.
struct CartilagePreset {
  const char* animal;  ///< "Turkey"
  double percent;      ///< % of centrum length
  const char* source;

  Cartilage cartilage() const { return {Cartilage::In::PercentOfCentrum, percent}; }
};

/// Thinnest first.
extern const std::array<CartilagePreset, 6> kCartilagePresets;

/// A least overlap of the facets that is in use, or that living animals were seen to keep.
struct OverlapPreset {
  double share;         ///< of facet length (or area, as Assumptions::overlapBy says)
  const char* meaning;  ///< "published rule"
  const char* source;
};

/// Strictest first.
extern const std::array<OverlapPreset, 3> kOverlapPresets;

}  // namespace zyga::range
