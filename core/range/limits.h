#pragma once

#include "core/range/contact/neighbour_contact.h"
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

/// `motion` is the index into the joint's angles. Where the present value is supported, the connected interval that
/// holds it; where it is beyond, the interval nearest to zero, which is where a joint is led back to. Found by steps of
/// a degree, up to 90 degrees from zero, and bisecting to 1e-5 rad; typed joints answer with what was typed. Ends are
/// supported, and 1e-5 rad past them levelAt says beyond. Takes about a tenth of a millisecond. With `contact`, bones
/// that enter each other stop a motion as well.
Band band(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
          const Assumptions& assumptions, kinematics::JointIndex joint, const Eigen::Vector3d& angles, int motion,
          const NeighbourContact* contact = nullptr);

/// The six ways in which a joint turns. TorsionLeft lifts the distal bone's left side.
enum class Direction { Dorsal, Ventral, Left, Right, TorsionLeft, TorsionRight };
inline constexpr std::array<Direction, 6> kDirections{Direction::Dorsal,      Direction::Ventral,
                                                      Direction::Left,        Direction::Right,
                                                      Direction::TorsionLeft, Direction::TorsionRight};

/// Index into the joint's angles.
constexpr int motionOf(Direction direction) { return static_cast<int>(direction) / 2; }
/// 1 for dorsal, left, torsion left; -1 for the others.
constexpr int signOf(Direction direction) { return static_cast<int>(direction) % 2 == 0 ? 1 : -1; }
/// "dorsal", ..., "torsion left", "torsion right".
std::string_view toText(Direction direction);

/// What ends a range.
struct Stop {
  std::optional<FindingKind> kind;  ///< none: nothing was found to stop it, see text
  /// The side whose facets stop it; the midline where both do at once and for everything else.
  anatomy::Side side = anatomy::Side::Midline;
  double limit = 0;  ///< the share, depth, gap (m) or angle (rad) that is reached there
  std::string text;  ///< "left facets share 50 %", "contact: spines of C6 and C7, 3 mm"
};

struct Limit {
  bool supported = true;  ///< false: with the other angles as they are no value of this motion is supported
  double angle = 0;       ///< where the motion ends, rad, signed; measured from neutral, not from the present angle
  Stop stop;
};

struct JointLimits {
  kinematics::JointIndex joint;
  bool judged = true;  ///< as in Band
  std::array<Limit, 6> ends;
  const Limit& operator[](Direction direction) const { return ends[static_cast<std::size_t>(direction)]; }
};

/// How far a joint goes each way from a starting combination of its angles (rad), one motion at a time. Overlap that is
/// spent on one motion is gone for the others, so the limits of lateral flexion shrink as a joint is raised (Kambic et
/// al. 2017, Front. Zool. 14:37).
JointLimits limits(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                   const Assumptions& assumptions, kinematics::JointIndex joint, const Eigen::Vector3d& angles,
                   const NeighbourContact* contact = nullptr);

}  // namespace zyga::range
