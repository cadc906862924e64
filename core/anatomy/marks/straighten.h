#pragma once

#include <Eigen/Core>
#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "core/anatomy/marks/scan.h"

namespace zyga::anatomy {

enum class DeformedBy {
  Shear,  ///< slid sideways parallel to the mid-plane
  Squash  ///< pressed together along one direction aslant to the mid-plane, and widened across it as much
};

/// What undoes a deformation of a bone that was symmetric in life.
struct Straightening {
  Eigen::Matrix3d map = Eigen::Matrix3d::Identity();  ///< about any point; volume stays
  double amount = 0;     ///< of a shear its angle, rad; of a squash the share by which it was pressed, 0 to 1
  double asymmetry = 0;  ///< what the map leaves: rms distance of a landmark from its partner's mirror image, m
  double before = 0;     ///< the same before
};

/// From paired landmarks (left, right) and points of the mid-plane, m. An even deformation keeps the steps from right
/// to left parallel and the middles in a plane, but no longer square to each other; the map makes them square again,
/// with the least strain of its kind. A squash along or across the mid-plane leaves the symmetry whole and cannot be
/// seen. Throws reason::Failure for fewer than two pairs, or when the middles lie along one line.
Straightening straighten(std::span<const std::pair<Eigen::Vector3d, Eigen::Vector3d>> pairs,
                         std::span<const Eigen::Vector3d> midline, DeformedBy by);

/// What would undo a deformation of a scan, from its paired marks and those of the mid-plane, as they were found.
/// Throws reason::Failure as straighten does, and for a paired bone, which was never symmetric.
Straightening straightening(const Scan& scan, DeformedBy by);

/// Which correction the marks advise.
struct AdvisedStraightening {
  std::optional<DeformedBy> by;  ///< none: leave it as it was found
  Straightening found;           ///< of `by`; where there is none, of the better one of both
  reason::Reason why;            ///< straightening_advice::k...
};

namespace straightening_advice {

/// Amount, off before, off after. Of a shear, an angle.
inline constexpr reason::Id kShear{"straighten.advise-shear", 3};
/// The same of a compression; a share.
inline constexpr reason::Id kSquash{"straighten.advise-squash", 3};
/// How far pairs are off, from where on that tells a deformation.
inline constexpr reason::Id kAsFound{"straighten.advise-as-found", 2};
/// How far pairs are off, and would be: too little gained for what is bent.
inline constexpr reason::Id kNoGain{"straighten.advise-no-gain", 2};

}  // namespace straightening_advice

/// The least residual per freedom: the root of the sum of squares of what pairs are off, over three a pair less the
/// three of the mid-plane and the two of a shear or a compression (an amount and a direction). A compression has to
/// leave a twentieth less than a shear, which keeps lengths within the mid-plane as they are. As it was found is
/// advised where pairs are off by less than a fiftieth of their distance, or where a correction gains nothing (program
/// defaults, no source). Throws as straightening does.
AdvisedStraightening advisedStraightening(const Scan& scan);

/// The scan straightened by this map instead of the one it had, laid anew; the identity gives it back as it was found.
/// Marks and mesh stay as they are. Evidence becomes "found, deformed", or "found" again.
Scan straightened(Scan scan, const Bone& sculpted, const Eigen::Matrix3d& map);

}  // namespace zyga::anatomy
