#pragma once

#include <limits>

#include "core/range/limits.h"

namespace zyga::study {

/// The two parts of the column that an animal carries about.
enum class Chain { Neck, Tail };
std::string_view toText(Chain chain);  ///< "neck", "tail"

/// The movable joints of a chain from its base outwards: from the last cervical on the first dorsal to the axis on the
/// atlas, or from the sacrum to the tail's tip. The head's joint is not among them.
std::vector<kinematics::JointIndex> jointsOf(const anatomy::Specimen& specimen, Chain chain);

/// A number of a head that is not there.
inline constexpr double kNoHead = std::numeric_limits<double>::quiet_NaN();

/// How a chain is carried in a pose. Ground is z = 0; "ahead" and "left" are taken from where the hips face.
struct Carriage {
  double snoutHeight = kNoHead;  ///< m; of a neck with a head
  double eyeHeight = kNoHead;    ///< m, middle between the eyes; of a neck with a head
  double tipHeight = 0;          ///< m; snout, or tip of the last caudal
  double baseHeight = 0;         ///< m, centre of rotation of the base
  double ahead = 0;              ///< m, from the base to the tip, along the ground; negative for a tail
  double left = 0;               ///< m, likewise
  double slope = 0;              ///< rad, of the straight line from the base to the chain's far end over the horizontal
  double swing = 0;   ///< rad to the left of straight ahead (of straight back for the tail), same line seen from above
  double lowest = 0;  ///< m, lowest known point of the chain and head; below zero it would be in the ground
};
Carriage carriage(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                  const kinematics::Pose& pose, Chain chain);

/// A chain with every joint at its own limit of one motion, its other angles zero.
struct Extreme {
  Chain chain = Chain::Neck;
  range::Direction direction = range::Direction::Dorsal;
  kinematics::Pose pose;  ///< the given one but for the chain's joints
  Carriage carriage;
  struct Joint {
    kinematics::JointIndex joint;
    bool judged =
        true;  ///< false: nothing vouches for it; it stays neutral, or goes where the facets of one side allow
    range::Limit limit;  ///< where it stands
  };
  std::vector<Joint> joints;  ///< from the base outwards
  double total = 0;           ///< sum of the angles, rad
};

/// `pose` gives everything beside the chain. Neither ground nor other bones are looked at, unless `contact` judges the
/// neighbours of each joint.
Extreme extreme(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                const range::Assumptions& assumptions, const kinematics::Pose& pose, Chain chain,
                range::Direction direction, const range::NeighbourContact* contact = nullptr);

/// Neck and tail to the dorsal, ventral, left and right. A few milliseconds without contact.
std::vector<Extreme> extremes(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                              const range::Assumptions& assumptions, const kinematics::Pose& pose,
                              const range::NeighbourContact* contact = nullptr);

}  // namespace zyga::study
