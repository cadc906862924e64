#pragma once

#include <vector>

#include "core/anatomy/tables/measurement_table.h"

/// Invented proportions of two animals, for filling blanks. Common practice, no source; any measured cell overrides
/// them, and they are never evidence.
namespace zyga::anatomy {

/// Every bone of an animal, in skeleton order: head, column, ribs, chevrons, fore limbs, hind limbs.
std::vector<BoneName> allBones(BodyPlan plan, const RegionCounts& counts);

/// The measures a bone of this kind needs to be built, in table order.
const std::vector<Measure>& measuresOf(BoneKind kind);
/// What a bone of this kind may have beside them: of vertebrae what their facets need not say, as it then follows.
const std::vector<Measure>& furtherMeasuresOf(BoneKind kind);

/// The plan's own value, m or rad. Region counts other than the plan's are met by stretching its rows over the region.
double planValue(BodyPlan plan, const RegionCounts& counts, const BoneName& name, Measure measure);

/// The same for skull, jaw, girdles, limbs and feet.
double limbPlanValue(BodyPlan plan, const BoneName& name, Measure measure);
const std::vector<Measure>& limbMeasuresOf(BoneKind kind);
/// Skull, jaw, girdles, limbs and feet in skeleton order.
std::vector<BoneName> headBones();
std::vector<BoneName> limbBones(BodyPlan plan);

}  // namespace zyga::anatomy
