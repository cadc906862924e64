#pragma once

#include <array>
#include <vector>

#include "core/range/scenario.h"
#include "core/study/mass/densities.h"
#include "core/study/mass/mass.h"

namespace zyga::study {

/// Points on the outside of a bone in its own frame, m, from its landmarks and measures: enough to wrap a hull around.
std::vector<Eigen::Vector3d> bonePoints(const anatomy::Bone& bone);

/// A piece of the body that moves with one bone: the convex hull of the bones in it.
struct BodySegment {
  BodyPart part = BodyPart::Trunk;
  anatomy::BoneIndex bone;
  Eigen::Vector3d p_BCentre = Eigen::Vector3d::Zero();  ///< centre of the hull's volume in the bone's frame, m
  double hullVolume = 0;                                ///< m3
};

/// The body as a handful of hulls: head; a piece for each vertebra of neck and tail, cut off at the ends of its centrum
/// so that neighbours are not counted twice; the trunk with ribs and girdles in one; upper, middle and lowest piece of
/// each limb. Hulls are taken with every joint neutral, whatever the scenario's pose, from landmarks and measures and
/// not from meshes.
std::vector<BodySegment> bodySegments(const range::Scenario& scenario);

/// An estimate of the whole body's mass and where its centre is in a pose.
struct BodyMass {
  MassRange mass;                                       ///< kg
  std::array<double, kBodyParts> byPart{};              ///< kg, middle estimates
  Eigen::Vector3d p_WCentre = Eigen::Vector3d::Zero();  ///< centre of mass, m, world
  /// Of each part, kg, with the errors of its density and its hull factor (kDensityErrors, kHullFactorErrors) taken as
  /// independent. They say nothing of the whole, whose error is that of the method.
  std::array<MassRange, kBodyParts> ranges{};
  std::array<double, kBodyParts> flesh{};  ///< of the middle estimates what lies outside the hulls of the bones, kg
  std::array<Eigen::Vector3d, kBodyParts> p_WPartCentres = {};  ///< m, world; zero for a part without mass

  Densities densities;  ///< what it was weighed with

  double operator[](BodyPart part) const { return byPart[static_cast<std::size_t>(part)]; }
};

/// By how much the centre of mass moves where one part has its high estimate and all others their middle ones, m,
/// world.
Eigen::Vector3d shiftOfCentre(const BodyMass& body, BodyPart part);

BodyMass weigh(const std::vector<BodySegment>& segments, const Densities& densities, const kinematics::Placement& X_WB);

}  // namespace zyga::study
