#pragma once

#include <vector>

#include "core/study/reach/sagittal_bend.h"

namespace zyga::study {

/// Height of the lowest point of tail and chevrons over the ground z = 0, m.
double lowestOfTail(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB);

/// The pose with the tail brought down to the ground and laid along it, each joint inside its range. Returns the height
/// of its lowest point: above 0 where it stays short of the ground, below where it can't turn up soon enough.
double restTailOnGround(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                        const SagittalBend& bend, kinematics::Pose& pose);

}  // namespace zyga::study
