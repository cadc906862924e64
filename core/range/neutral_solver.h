#pragma once

#include "core/kinematics/pose.h"
#include "core/range/assumptions.h"
#include "core/range/column_joint.h"

namespace zyga::range {

/// Centres the facets of one joint on each other at a given distance of its centra; the search behind the neutral
/// articulation. Refers to the specimen.
class NeutralSolver {
 public:
  NeutralSolver(const anatomy::Specimen& specimen, kinematics::JointIndex joint, NeutralBy by);

  /// Both sides have both their facets.
  bool possible() const { return sides_[0] && sides_[1]; }

  /// Weighted least squares on the facets' centres and normals, and with NeutralBy::FacetsAndCentra on the faces of the
  /// centra, by Levenberg's damped Gauss-Newton from the joint's own rest rotation. `cartilage` in m along the joint's
  /// long axes. Not solved where it does not settle within a right angle or ends with facets that face the same way.
  /// What cartilage does to the facets is left at zero.
  kinematics::Articulation::Rest solve(double cartilage) const;

 private:
  using Rest = kinematics::Articulation::Rest;
  /// See centring.cpp for the rows.
  using Residuals = Eigen::Matrix<double, 10, 1>;
  using Slope = Eigen::Matrix<double, 10, 3>;

  Residuals residuals(const Rest& rest, const Eigen::Vector3d& angles) const;
  Slope slope(const Rest& rest, const Eigen::Vector3d& angles) const;
  bool search(const Rest& rest, Eigen::Vector3d& angles) const;
  bool facing(const Rest& rest, const Eigen::Vector3d& angles) const;
  double offCentre(const Rest& rest, const Eigen::Vector3d& angles) const;
  Eigen::Isometry3d prezygView(const Rest& rest, const Eigen::Vector3d& angles) const;

  const anatomy::Joint& joint_;
  std::array<SideFacets, 2> sides_;
  PrezygView view_;
  Eigen::Vector2d faceLevers_ = Eigen::Vector2d::Zero();  ///< m, of the centra's faces in pitch and yaw
};

}  // namespace zyga::range
