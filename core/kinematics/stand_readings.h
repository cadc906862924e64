#pragma once

#include "core/anatomy/horizontal.h"
#include "core/kinematics/feet.h"

namespace zyga::kinematics {

/// How the trunk stands over the ground z = 0. A reading that the specimen's bones do not give is NaN.
struct StandReadings {
  /// Of the line from the hind end of the hindmost dorsal's centrum to the front end of the first dorsal's, against the
  /// horizontal, rad, positive when it rises forwards.
  double trunkSlope = 0;
  /// Turn of the first sacral about its long axis, rad, positive with the left side raised.
  double roll = 0;
  double hipHeight = 0;       ///< mean height of the centres of the two hip sockets, m
  double shoulderHeight = 0;  ///< mean height of the centres of the two shoulder sockets, m
  /// Glenoacetabular distance: straight from the shoulder socket to the hip socket, mean of both sides, m.
  double glenoacetabular = 0;
  /// Of the hindmost cervical against the horizontal, by the definition asked for, rad, positive when it rises
  /// forwards.
  double neckBaseSlope = 0;
  /// Of the line from the front end of the first caudal's centrum to the hind end of the fifth's, against the
  /// horizontal, rad, positive when it rises backwards.
  double tailBaseSlope = 0;
  /// Of the shoulder blades against the horizontal as seen from the animal's side, rad, left and right.
  std::array<double, 2> bladeSlope{};
  std::vector<FootPlace> feet;
};

/// Of the snout over the ground, or of the head's joint where the skull names no snout, m; none without a skull.
std::optional<double> snoutHeight(const anatomy::Specimen& specimen, const Placement& X_WB);

StandReadings readStand(const anatomy::Specimen& specimen, const Placement& X_WB,
                        anatomy::HorizontalBy horizontalBy = anatomy::kUsualHorizontal);

/// Height of the hip over straight hindlimb bones: femur, tibia and third metatarsal set end to end and lengthened by
/// `cartilage` (share of their sum; about 0.09 in a rule of thumb quoted by Nedin 1996, secondary source), m.
double straightHindlimb(double femur, double tibia, double metatarsal, double cartilage);

/// Slope of the shoulder blade that is published for sauropods: at least 55 degrees to the horizontal, 55 to 65 in
/// three genera (Schwarz, Frey & Meyer 2007, Anat. Rec. 290:32), rad.
inline constexpr anatomy::AngleLimits kPublishedBladeSlope{0.95993108859688126, 1.1344640137963142};

}  // namespace zyga::kinematics
