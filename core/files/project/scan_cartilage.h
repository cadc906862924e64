#pragma once

#include <span>
#include <vector>

#include "core/anatomy/specimen.h"
#include "core/range/assumptions.h"
#include "core/solid/facets/suggest_column.h"

namespace zyga::files {

/// The cartilage of a part of the column as scans that lie in articulation show it.
struct ShownCartilage {
  anatomy::Region region = anatomy::Region::Cervical;  ///< neck, trunk or tail
  double percent = 0;  ///< middle of the joints, % of the caudal bone's functional length
  double least = 0, most = 0;
  int joints = 0;
};

/// From the distances between the faces of centra at the joints that were found, neck first. `animal` has the scans'
/// measures. Parts without such a joint are left out.
std::vector<ShownCartilage> shownCartilage(const anatomy::Specimen& animal, std::span<const solid::FoundJoint> joints);

/// Takes them into the assumptions, to a tenth of a percent.
void assume(range::Assumptions& assumptions, std::span<const ShownCartilage> shown);

}  // namespace zyga::files
