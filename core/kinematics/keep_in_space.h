#pragma once

#include "core/kinematics/pose.h"

namespace zyga::kinematics {

/// The pose under `newArticulation` in which every bone has the orientation in the world that `pose` gives it under
/// `oldArticulation`: what the rest of a joint gains, its deflection loses. Without it an assumption that moves the
/// neutral articulation keeps the deflections and turns the bones. The root stays; places follow the orientations and
/// the new cartilage. A joint whose rest did not change keeps its angles to the bit; elsewhere the middle angle comes
/// back within [-90, 90] degrees.
Pose keepInSpace(const anatomy::Specimen& specimen, const Articulation& oldArticulation,
                 const Articulation& newArticulation, const Pose& pose);

}  // namespace zyga::kinematics
