#pragma once

#include "core/range/presets.h"
#include "core/range/scenario.h"
#include "tests/core/kinematics/standing_animal.h"

namespace zyga::study {

/// kinematics::StandingAnimal with its facets seated, on its feet again.
inline range::Scenario standingScenario(anatomy::BodyPlan plan = anatomy::BodyPlan::HighBrowser) {
  const kinematics::StandingAnimal animal(plan);
  const range::Scenario seated(std::make_shared<const anatomy::Specimen>(animal.s), range::grownAnimal(), animal.pose);
  return seated.withPose(kinematics::stand(seated.specimen(), seated.articulation(), animal.pose));
}

}  // namespace zyga::study
