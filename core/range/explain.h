#pragma once

#include <functional>

#include "core/range/limits.h"

namespace zyga::range {

/// How one motion of a joint stands to its range.
struct MotionState {
  enum class How {
    Turned,        ///< no end is told
    Within,        ///< inside; `end` lies ahead
    Past,          ///< past `end`
    PastByItself,  ///< past `end` even with the joint's other angles at zero
    ShortOf,       ///< the range leaves zero out, and `end` is the near end of it
  };
  int motion = 0;    ///< index into the joint's angles
  double angle = 0;  ///< at present, rad
  double end = 0;    ///< rad
  How how = How::Turned;
  bool operator==(const MotionState&) const = default;
};

/// Which motions a verdict is due to.
struct Explanation {
  enum class Remark {
    None,
    NeutralPose,    ///< all angles are zero
    NeutralBeyond,  ///< no motion by itself is at fault, and the neutral pose is out of range as well
    OnlyTogether,   ///< each motion is within range by itself, but not all together
  };
  std::vector<MotionState> motions;
  Remark remark = Remark::None;
};

/// The band of a motion at the joint's present angles, where it is known already.
using KnownRanges = std::function<const MotionRange&(int motion)>;

/// Explains a verdict: the motions that have left their ranges, where several have to answer together that; of a joint
/// near a limit the motion that has used most of its range; of others how they are turned. Ends are those of
/// motionRange(), and typed limits that are findings already are not told again. A search of up to six bands where the
/// joint is near a limit or past it, fewer with `known`, so it is asked only for what is shown.
Explanation explain(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                    const Assumptions& assumptions, const JointVerdict& verdict, const Eigen::Vector3d& angles,
                    const NeighbourContact* contact = nullptr, const KnownRanges& known = {});

}  // namespace zyga::range
