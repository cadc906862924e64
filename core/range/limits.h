#pragma once

#include "core/range/findings.h"

namespace zyga::range {

/// What ends a range.
struct Stop {
  enum class Why {
    Criterion,   ///< the facets, a typed limit or contact of bones: see `kind`
    Nothing,     ///< nothing was found to stop it within 90 degrees
    Fixed,       ///< these bones do not move against each other
    NoCriteria,  ///< no facets and no typed limits
  };
  Why why = Why::Nothing;
  std::optional<FindingKind> kind;  ///< with Why::Criterion only
  /// The side whose facets stop it; the midline where both do at once and for everything else.
  anatomy::Side side = anatomy::Side::Midline;
  double limit = 0;                    ///< the share, depth, gap (m) or angle (rad) that is reached there
  std::optional<TouchingParts> parts;  ///< with contact of bones
  bool operator==(const Stop&) const = default;
};

/// Whether a tolerance or a limit that is a program default, without a source, ends the range: the press and the gape
/// of facets, cover across the slide, contact of bones, and typed limits that nobody has published.
bool byDefault(const anatomy::Joint& joint, const Stop& stop);
/// Whether a joint is near a limit or out of range only by such defaults: no criterion with a source says as much.
bool byDefault(const anatomy::Joint& joint, const JointVerdict& verdict);

/// The interval of one motion that the bones support while the joint's other angles stay where they are, rad.
struct MotionRange {
  double min = 0;
  double max = 0;
  bool judged = true;  ///< false: nothing judges the whole joint; a side that has facets still limits it
  bool empty = false;  ///< no value of this motion is supported with the other angles as they are
  Stop minStop;        ///< what stops it at `min`; of an empty one, what is wrong where the joint is
  Stop maxStop;
  /// The joint's axial rotation at either end, rad: that of lateral flexion goes along where it follows the facets.
  double axialAtMin = 0, axialAtMax = 0;
  bool holds(double angle) const { return !empty && angle >= min && angle <= max; }
};

/// `motion` is the index into the joint's angles. Where the present value is supported, the connected interval that
/// holds it; where it is beyond, the interval nearest to zero, which is where a joint is led back to. Found by steps of
/// a degree, up to 90 degrees from zero, and bisecting to 1e-5 rad; typed joints answer with what was typed. Ends are
/// supported, and 1e-5 rad past them levelAt says beyond. Takes about a tenth of a millisecond. With `contact`, bones
/// that enter each other stop a motion as well. This is the one search for the end of a range (LimitSearch): strip,
/// joint view, sentences and studies all show its answer.
MotionRange motionRange(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                        const Assumptions& assumptions, kinematics::JointIndex joint, const Eigen::Vector3d& angles,
                        int motion, const NeighbourContact* contact = nullptr);

/// The six ways in which a joint turns. TorsionLeft lifts the distal bone's left side.
enum class Direction { Dorsal, Ventral, Left, Right, TorsionLeft, TorsionRight };
inline constexpr std::array<Direction, 6> kDirections{Direction::Dorsal,      Direction::Ventral,
                                                      Direction::Left,        Direction::Right,
                                                      Direction::TorsionLeft, Direction::TorsionRight};

/// Index into the joint's angles.
constexpr int motionOf(Direction direction) { return static_cast<int>(direction) / 2; }
/// 1 for dorsal, left, torsion left; -1 for the others.
constexpr int signOf(Direction direction) { return static_cast<int>(direction) % 2 == 0 ? 1 : -1; }
/// The direction's id in files and for machines: "dorsal", ..., "torsion left", "torsion right".
std::string_view toText(Direction direction);

struct Limit {
  bool supported = true;  ///< false: with the other angles as they are no value of this motion is supported
  double angle = 0;       ///< where the motion ends, rad, signed; measured from neutral, not from the present angle
  Stop stop;
  double axial = 0;  ///< the joint's axial rotation there, rad
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

/// A joint that a pose has brought to the end of its range.
struct JointStop {
  kinematics::JointIndex joint;
  int motion = 0;     ///< index into the joint's angles
  double sign = 1;    ///< the direction of the motion that is stopped
  double turned = 0;  ///< rad from neutral in that direction; 0 where the joint is bent the other way
  Stop stop;
};

}  // namespace zyga::range
