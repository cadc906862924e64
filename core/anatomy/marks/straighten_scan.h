#pragma once

#include "core/anatomy/marks/scan.h"
#include "core/anatomy/marks/straighten.h"

namespace zyga::anatomy {

/// What would undo a deformation of a scan, from its paired marks and those of the mid-plane, as they were found.
/// Throws std::invalid_argument as straighten does, and for a paired bone, which was never symmetric.
Straightening straightening(const Scan& scan, DeformedBy by);

/// The scan straightened by this map instead of the one it had, laid anew; the identity gives it back as it was found.
/// Marks and mesh stay as they are. Evidence becomes "found, deformed", or "found" again.
Scan straightened(Scan scan, const Bone& sculpted, const Eigen::Matrix3d& map);

}  // namespace zyga::anatomy
