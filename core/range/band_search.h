#pragma once

#include <optional>

#include "core/range/joint_judge.h"

namespace zyga::range {

/// Facets are searched this far from zero, rad: no pair of them carries a joint through more than a right angle.
extern const double kSearchedFar;
/// Ends are found to this, rad.
inline constexpr double kBandPrecision = 1e-5;
/// Ends where bones enter each other are found to this, rad: shapes are known less well than facets.
inline constexpr double kContactPrecision = 1e-4;

Eigen::Vector3d withMotion(Eigen::Vector3d angles, int motion, double value);

/// The values of one motion at which a joint is not beyond its range, the others as they are, rad.
struct Interval {
  double least = 0;
  double most = 0;
  bool empty = false;
  /// The bones enter each other just past that end; of an empty interval: at every value that the facets support.
  bool contactAtLeast = false;
  bool contactAtMost = false;
};

/// See range::band; of a joint that can move and has facets or typed limits.
Interval supportedInterval(const JointJudge& judge, const Eigen::Vector3d& angles, int motion);

/// Where facets and typed limits end the support, going from a supported value of the motion (`from`, rad) in the
/// direction of `sign`.
double endTowards(const JointJudge& judge, const Eigen::Vector3d& angles, int motion, double from, double sign);

}  // namespace zyga::range
