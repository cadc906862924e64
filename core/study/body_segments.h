#pragma once

#include <array>
#include <vector>

#include "core/kinematics/placement.h"
#include "core/study/mass.h"

namespace zyga::study {

enum class BodyPart { Head, Neck, Trunk, Tail, ForeLimbs, HindLimbs };
inline constexpr std::size_t kBodyParts = 6;
inline constexpr std::array<BodyPart, kBodyParts> kAllBodyParts{
    BodyPart::Head, BodyPart::Neck, BodyPart::Trunk, BodyPart::Tail, BodyPart::ForeLimbs, BodyPart::HindLimbs};
/// "fore limbs"
std::string_view title(BodyPart part);

/// A piece of the body that moves with one bone: the convex hull of the bones in it.
struct BodySegment {
  BodyPart part = BodyPart::Trunk;
  anatomy::BoneIndex bone;
  Eigen::Vector3d p_BCentre = Eigen::Vector3d::Zero();  ///< centre of the hull's volume in the bone's frame, m
  double hullVolume = 0;                                ///< m3
};

/// The body as a handful of hulls: head; a piece for each vertebra of neck and tail, cut off at the ends of its centrum
/// so that neighbours are not counted twice; the trunk with ribs and girdles in one; upper, middle and lowest piece of
/// each limb. Hulls are taken with every joint at its rest, from landmarks and measures and not from meshes.
std::vector<BodySegment> bodySegments(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation);

/// kg/m3 by part. The whole is an assumption: 800 for the trunk with its lungs and air sacs (the value used with the
/// hulls by Sellers et al. 2012), less for a neck full of air spaces, 1000 for flesh and bone (author's choice).
struct Densities {
  std::array<double, kBodyParts> byPart{900, 600, 800, 950, 1000, 1000};
  double& operator[](BodyPart part) { return byPart[static_cast<std::size_t>(part)]; }
  double operator[](BodyPart part) const { return byPart[static_cast<std::size_t>(part)]; }
  bool operator==(const Densities&) const = default;
};
/// A body is lighter than bone and heavier than feathers, kg/m3.
inline constexpr double kLeastDensity = 100, kMostDensity = 2000;

/// An estimate of the whole body's mass and where its centre is in a pose.
struct BodyMass {
  MassRange mass;                                       ///< kg
  std::array<double, kBodyParts> byPart{};              ///< kg, middle estimates
  Eigen::Vector3d p_WCentre = Eigen::Vector3d::Zero();  ///< centre of mass, m, world
};

BodyMass weigh(const std::vector<BodySegment>& segments, const Densities& densities, const kinematics::Placement& X_WB);

}  // namespace zyga::study
