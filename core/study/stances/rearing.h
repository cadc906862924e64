#pragma once

#include "core/study/reach/sagittal_bend.h"
#include "core/study/stances/stances.h"

namespace zyga::study {

/// Height of the lowest point of tail and chevrons over the ground z = 0, m.
double lowestOfTail(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB);

/// The pose with the tail brought down to the ground and laid along it, each joint inside its range. Returns the height
/// of its lowest point: above 0 where it stays short of the ground, below where it can't turn up soon enough.
double restTailOnGround(const range::Scenario& scenario, const SagittalBend& bend, kinematics::Pose& pose);

/// Brings a standing animal (`answer.pose`) up on its hind feet, the trunk turned about the hips, the tail brought down
/// as a prop and the forelimbs hanging. Of the trunk's slopes, steepest first, it takes the first at which the hind
/// feet hold, the tail rests on the ground and the estimated centre of mass (mass.h) lies over feet and tail; where no
/// slope has all of it, the least bad, with notes. Tail contact enlarges what the animal stands on at any load: how
/// much the tail carries, and whether the feet alone would do, is told in `answer.balance`.
void rear(const range::Scenario& scenario, const SagittalBend& bend, const Densities& densities, StanceAnswer& answer);

}  // namespace zyga::study
