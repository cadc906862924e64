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
};

BodyMass weigh(const std::vector<BodySegment>& segments, const Densities& densities, const kinematics::Placement& X_WB);

}  // namespace zyga::study
