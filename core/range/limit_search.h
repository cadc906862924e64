#pragma once

#include <cstdint>
#include <optional>

#include "core/range/joint_evaluator.h"
#include "core/range/limits.h"

namespace zyga::range {

/// Facets are searched this far from zero, rad: no pair of them carries a joint through more than a right angle.
extern const double kSearchedFar;
/// Ends are found to this, rad.
inline constexpr double kBandPrecision = 1e-5;
/// Ends where bones enter each other are found to this, rad: shapes are known less well than facets.
inline constexpr double kContactPrecision = 1e-4;

/// The values of one motion at which a joint is not beyond its range, the others as they are, rad.
struct Interval {
  double min = 0;
  double max = 0;
  bool empty = false;
  /// The bones enter each other just past that end; of an empty interval: at every value that the facets support.
  bool contactAtMin = false;
  bool contactAtMax = false;
};

/// The one search for the end of a range: one motion of a joint, its other angles as they are, but for the axial
/// rotation, which goes along as the facets ask for it (kinematics/following.h). Contact of bones counts where the
/// judge has somebody to ask about it. Refers to the judge.
///
/// By whole degrees from a supported value until a criterion fails, then by bisection between the last that held and
/// the first that failed. Gaps in the support narrower than a degree are not seen. Contact, which costs far more to ask
/// about, then shortens what the facets support, by steps of three degrees.
class LimitSearch {
 public:
  /// Of a joint that can move and has facets or typed limits.
  LimitSearch(const JointEvaluator& judge, const Eigen::Vector3d& angles, int motion)
      : judge_(judge), angles_(angles), own_(judge.toOwn(angles)), motion_(motion) {}

  /// Where the present value is supported, the connected interval that holds it, else the one nearest to zero.
  Interval interval() const;
  /// The part of a supported interval that is clear of the near margin, as far as it hangs together with a value near
  /// the interval's middle; to a thousandth of the interval. Contact is left aside.
  Interval firm(const Interval& supported) const;
  /// The joint's angles with the motion at this value, rad.
  Eigen::Vector3d at(double value) const;
  /// What stops the motion just past an end of an interval (sign -1: the lower), or of an empty one what is wrong where
  /// the joint is.
  Stop stop(const Interval& interval, double sign) const;

 private:
  Interval typedInterval() const;
  Interval facetInterval() const;
  Interval cutByContact(const Interval& whole) const;
  std::optional<double> seed() const;
  double endFrom(double from, double sign) const;
  std::optional<double> freeSeed(const Interval& whole) const;
  double lastFree(double from, double end, bool& stopped) const;
  bool beyondAt(double value) const { return judge_.beyond(at(value)); }
  bool entersAt(double value) const { return judge_.contactBeyond(at(value)); }
  Stop contactStop(const Eigen::Vector3d& at) const;

  const JointEvaluator& judge_;
  Eigen::Vector3d angles_, own_;
  int motion_;
};

/// The last supported combination of angles on the way from a supported one to another, straight in the joint's own
/// angles (kinematics::toOwn), to kBandPrecision, by steps of a degree and bisection; `to` where all of the way is
/// supported. Contact of the bones, where the judge has somebody to ask and there is none at `from`, ends the way too,
/// by steps of three degrees, to kContactPrecision.
Eigen::Vector3d lastSupported(const JointEvaluator& judge, const Eigen::Vector3d& from, const Eigen::Vector3d& to);

/// What stops a motion, from the criteria just past its end.
Stop stopOf(const Criteria& justPast);

/// How many intervals have been searched since the program began, on any thread. For tests and benches, which count
/// what a change of the pose costs.
std::uint64_t limitSearches();

}  // namespace zyga::range
