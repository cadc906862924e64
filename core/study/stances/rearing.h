#pragma once

#include "core/study/reach/sagittal_bend.h"
#include "core/study/stances/stances.h"

namespace zyga::study {

/// Brings a standing animal (`answer.pose`) up on its hind feet, the trunk turned about the hips, the tail brought down
/// as a prop and the forelimbs hanging. Of the trunk's slopes, steepest first, it takes the first at which the hind
/// feet hold, the tail rests on the ground and the estimated centre of mass (mass.h) lies over feet and tail; where no
/// slope has all of it, the least bad, with notes.
void rear(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation, const SagittalBend& bend,
          StanceAnswer& answer);

}  // namespace zyga::study
