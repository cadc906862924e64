#pragma once

#include "core/kinematics/feet.h"

namespace zyga::kinematics {

/// Where a foot shall be: the frame of FootRig::bone in the world.
struct LegTask {
  Foot foot;
  Eigen::Isometry3d X_WFoot;
};

/// How well a leg does its task inside its typed ranges.
struct LegFit {
  Foot foot;
  double miss = 0;  ///< from the middle of the sole to where it should be, m
  double tilt = 0;  ///< of the sole against the sole asked for, rad
  double turn = 0;  ///< of the foot's heading against the one asked for, rad, to the left
  /// Joints at the end of a range that would have to go on; none on a miss: the leg is stretched out.
  std::vector<JointIndex> stopping;

  /// The sole is where it should be, to a tenth of a millimetre.
  bool holds() const { return miss < 1e-4; }
  /// All of the foot is as asked for: planted, it has not moved.
  bool still() const { return holds() && tilt < 1e-3 && turn < 1e-3 && turn > -1e-3; }
};

/// A pose with the feet seen to, and how well each leg could.
struct FeetAnswer {
  Pose pose;
  std::vector<LegFit> fits;

  bool hold() const;
  bool still() const;
  /// The worst miss, m; zero without tasks.
  double worstMiss() const;
};

/// The leg angles that bring each foot where its task asks, from the shoulder or hip on; blade and trunk stay. Inside
/// the typed ranges always. Where the ranges do not allow all of it the heading gives way first, then the sole's
/// tilt, and the place last. Of all ways there the one nearest to the angles of `pose`, so that the answer does not
/// depend on the way a drag took. Throws std::out_of_range for a foot that the specimen lacks.
FeetAnswer setFeet(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
                   const std::vector<LegTask>& tasks);

/// Sets the feet flat on the ground below where they are.
FeetAnswer plantFeet(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
                     const std::vector<Foot>& feet);

/// Raises a foot by `height` m straight up, its tip hanging by `droop` rad.
FeetAnswer liftFoot(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose, Foot foot,
                    double height, double droop);

/// The same animal with its root moved to `X_WRootNew` and the planted feet kept as they stand.
FeetAnswer moveTrunk(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
                     const Eigen::Isometry3d& X_WRootNew, const std::vector<Foot>& planted);

/// As moveTrunk, but no farther on the straight way to `X_WRootNew` than all the feet can stay still.
FeetAnswer moveTrunkWithin(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
                           const Eigen::Isometry3d& X_WRootNew, const std::vector<Foot>& planted);

}  // namespace zyga::kinematics
