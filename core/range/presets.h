#pragma once

#include <array>

#include "core/anatomy/cartilage.h"
#include "core/range/assumptions.h"
#include "core/reason/reason.h"

namespace zyga::range {

/// Cartilage between the centra as found or argued for in one animal; none of them is the right value for another.
struct CartilagePreset {
  enum class Age { Grown, Young, NotTold };
  reason::Term animal;
  double percent;       ///< % of centrum length
  reason::Term source;  ///< names the citation
  Age age;

  Cartilage cartilage() const { return {Cartilage::In::PercentOfCentrum, percent}; }
};

/// Thinnest first.
extern const std::array<CartilagePreset, 9> kCartilagePresets;

using anatomy::kGrownCartilage;
using anatomy::kYoungCartilage;

/// What is taken for granted of an animal until somebody says otherwise: the cartilage of a grown sauropod along the
/// whole column, and every program default.
inline Assumptions grownAnimal() {
  Assumptions assumed;
  assumed.neck = assumed.trunk = assumed.tail = {Cartilage::In::PercentOfCentrum, kGrownCartilage};
  return assumed;
}

/// A minimum overlap of the facets: half of their length is the rule in use (Stevens & Parrish 1999, Science 284:798,
/// quoted second hand; tested by Cobley, Rayfield & Barrett 2013, PLoS ONE 8(8):e72187, abstract read), almost none is
/// what living turkeys keep ("almost to osteological disarticulation", Kambic, Biewener & Pierce 2017, Front. Zool.
/// 14:37, abstract read). What lies between them is a step of this program, without a source.
struct OverlapPreset {
  double share;  ///< of facet length (or area, as Assumptions::overlapBy says)
  reason::Term meaning;
  reason::Term source;  ///< names the citation, or that there is none
};

/// Strictest first.
extern const std::array<OverlapPreset, 3> kOverlapPresets;

}  // namespace zyga::range
