#pragma once

#include <Eigen/Core>
#include <span>

namespace zyga::solid {

struct CircleFit {
  Eigen::Vector3d centre = Eigen::Vector3d::Zero();
  Eigen::Vector3d normal = Eigen::Vector3d::UnitZ();  ///< unit, either way
  double radius = 0;
  double rms = 0;  ///< distance of the points from the circle, in the points' unit
};

/// The circle through places clicked round a rim: plane by total least squares, circle in it by the algebraic fit
/// (Coope 1993, J. Optim. Theory Appl. 76:381). Throws std::invalid_argument for fewer than three points, or when they
/// lie along one line.
CircleFit fitCircle(std::span<const Eigen::Vector3d> points);

}  // namespace zyga::solid
