#pragma once

#include <gtest/gtest.h>

#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <map>

#include "core/anatomy/specimen.h"
#include "core/files/scan/clean_scan.h"
#include "core/range/joint_evaluator.h"
#include "core/range/limits.h"
#include "core/range/neutral.h"
#include "core/solid/facets/suggest.h"
#include "tests/support/two_vertebrae.h"

/// Columns of living animals, from meshes that lie in articulation: facets and centra as the program finds them by
/// itself, no number set for one animal or one bone.
namespace zyga::test {

namespace fs = std::filesystem;

inline fs::path livingData(const char* folder) {
  const char* given = std::getenv("ZYGAPOSE_DATA");
  return (given ? fs::path(given) : fs::path(ZYGAPOSE_SHARED_DATA)) / folder;
}

/// A mesh of the data, read and repaired as the program does; metres.
inline const solid::TriangleMesh& livingMesh(const fs::path& path) {
  static std::map<fs::path, solid::TriangleMesh> read;
  if (const auto known = read.find(path); known != read.end()) return known->second;
  files::ScanReader reader;
  reader.program = ZYGAPOSE_READ_SCAN;
  return read.emplace(path, files::readCleanScan(path, reader)->mesh).first->second;
}

/// What the program found at a joint, and the joint made of it: the frame of both bones lies half-way between the faces
/// of the centra, x cranial, y left, z dorsal, and the pose that the bones came in is neutral.
struct LivingJoint {
  std::string name;
  solid::NeighbourSuggestion found;
  double seconds = 0;  ///< that finding took
  anatomy::Specimen specimen;
  kinematics::Articulation articulation;
  range::Assumptions assumptions;

  static constexpr anatomy::JointIndex kJoint{0};
  range::JointLimits limits() const {
    return range::limits(specimen, articulation, assumptions, kJoint, Eigen::Vector3d::Zero());
  }
};

inline anatomy::Facet inFrame(anatomy::Facet facet, const Eigen::Isometry3d& X_FrameMesh) {
  facet.centre = X_FrameMesh * facet.centre;
  facet.normal = X_FrameMesh.linear() * facet.normal;
  facet.slide = X_FrameMesh.linear() * facet.slide;
  return facet;
}

/// Two bones and the joint between them. The disc keeps its published or modelled height, since nothing is moved: the
/// centre of rotation is the same point of both bones, and no cartilage is added.
inline LivingJoint livingJoint(const std::string& name, const solid::TriangleMesh& cranial,
                               const solid::TriangleMesh& caudal, anatomy::BoneKind kind, int number) {
  LivingJoint out;
  out.name = name;
  const auto before = std::chrono::steady_clock::now();
  out.found = solid::suggestNeighbours(cranial, caudal);
  out.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - before).count();
  Eigen::Isometry3d X_MeshFrame = Eigen::Isometry3d::Identity();
  X_MeshFrame.translation() = out.found.centre;
  X_MeshFrame.linear() << out.found.axes.cranial, out.found.axes.left, out.found.axes.dorsal();
  const Eigen::Isometry3d X_FrameMesh = X_MeshFrame.inverse();

  anatomy::Bone near, far;  // to the sacrum
  near.name = {kind, number + 1};
  far.name = {kind, number};
  near.evidence = far.evidence = anatomy::Evidence::Found;
  near.scanned = far.scanned = true;
  for (std::size_t s = 0; s < 2; ++s) {
    if (out.found.prezygs[s]) near.facets.push_back(inFrame(out.found.prezygs[s]->facet, X_FrameMesh));
    if (out.found.postzygs[s]) far.facets.push_back(inFrame(out.found.postzygs[s]->facet, X_FrameMesh));
  }
  near.id = toId(near.name);
  far.id = toId(far.name);
  anatomy::Joint joint = jointOf({});
  joint.id = far.id + "-" + near.id;
  joint.kind = anatomy::JointKind::FlatFaces;
  joint.region = anatomy::regionOf(near.name);
  joint.centreProximal = joint.centreDistal = Eigen::Vector3d::Zero();
  joint.centrumLength = out.found.boneSize;
  out.specimen.name = name;
  out.specimen.bones = {near, far};
  out.specimen.joints = {joint};

  // How the facets lie in the pose that the bones came in is granted: it is their neutral pose.
  kinematics::Articulation::Rest rest;
  for (int side = 0; side < 2; ++side) {
    out.articulation.rests = {rest};
    const auto meeting = range::JointEvaluator(out.specimen, out.articulation, out.assumptions, LivingJoint::kJoint)
                             .meeting(Eigen::Vector3d::Zero(), side);
    if (!meeting) continue;
    rest.pressGranted[static_cast<std::size_t>(side)] = std::max(0.0, -meeting->minGap);
    rest.gapeGranted[static_cast<std::size_t>(side)] = std::max(0.0, meeting->maxGap);
  }
  rest.settling = range::settlingOf(out.specimen, LivingJoint::kJoint, rest, out.assumptions.settling);
  out.articulation.rests = {rest};
  return out;
}

/// What stopped a motion, for the printed tables and for messages.
inline std::string stoppedBy(const range::Stop& stop) {
  if (!stop.kind) return "nothing";
  switch (*stop.kind) {
    case range::FindingKind::Overlap:
      return "overlap";
    case range::FindingKind::OverlapAcross:
      return "overlap across";
    case range::FindingKind::FacetContact:
      return "press";
    case range::FindingKind::FacetGap:
      return "gap";
    default:
      return "other";
  }
}

}  // namespace zyga::test
