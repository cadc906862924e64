#pragma once

#include "core/range/findings.h"

namespace zyga::range {

/// The interval of one motion that the bones support while the joint's other angles stay where they are, rad.
struct Band {
  double least = 0;
  double most = 0;
  bool judged = true;     ///< false: nothing vouches for this joint; a side that has facets still limits it
  bool empty = false;     ///< no value of this motion is supported with the other angles as they are
  std::string leastStop;  ///< what stops it at `least`: "left facets share 50 %", "both facets share 50 %"
  std::string mostStop;
};

/// `motion` is the index into the joint's angles. Found by scanning in degrees out from the supported value nearest to
/// zero, up to 90 degrees, and bisecting to 1e-5 rad; typed joints answer with what was typed. Ends are supported, and
/// 1e-5 rad past them levelAt says beyond. Takes about a tenth of a millisecond.
Band band(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
          const Assumptions& assumptions, kinematics::JointIndex joint, const Eigen::Vector3d& angles, int motion);

}  // namespace zyga::range
