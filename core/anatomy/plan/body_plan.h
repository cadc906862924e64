#pragma once

#include <span>
#include <vector>

#include "core/anatomy/tables/measurement_table.h"

/// Proportions of invented animals, for filling blanks (plan_table.h). Common practice, no source; any measured cell
/// overrides them, and they are never evidence.
namespace zyga::anatomy {

/// Every bone of an animal, in skeleton order: head, column, ribs, chevrons, fore limbs, hind limbs. Plans of mammals
/// and birds have the column alone.
std::vector<BoneName> allBones(BodyPlan plan, const RegionCounts& counts);

/// The counts of an animal of a plan of which these bones are known: the plan's own, or more where a number says so. A
/// region ends with its highest number where the region behind it begins with one that is known too.
RegionCounts countsFrom(BodyPlan plan, std::span<const BoneName> known);

/// The measures a bone of this kind needs to be built, in table order.
const std::vector<Measure>& measuresOf(BoneKind kind);
/// What a bone of this kind may have beside them: of vertebrae what their facets need not say, as it then follows.
const std::vector<Measure>& furtherMeasuresOf(BoneKind kind);

/// The plan's own value, m or rad. Region counts other than the plan's are met by stretching its rows over the region.
double planValue(BodyPlan plan, const RegionCounts& counts, const BoneName& name, Measure measure);

struct LimbPlan;
/// The same for skull, jaw, girdles, limbs and feet.
double limbPlanValue(const LimbPlan& plan, const BoneName& name, Measure measure);
const std::vector<Measure>& limbMeasuresOf(BoneKind kind);
/// Skull, jaw, girdles, limbs and feet in skeleton order.
std::vector<BoneName> headBones();
/// `fingerBones`: whether the fingers have any.
std::vector<BoneName> limbBones(bool fingerBones = true);

}  // namespace zyga::anatomy
