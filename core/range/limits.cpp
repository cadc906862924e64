#include "core/range/limits.h"

#include <cmath>

#include "core/range/band_search.h"
#include "core/range/sentences.h"

namespace zyga::range {
namespace {

using Eigen::Vector3d;

/// What stops the motion just past an end.
std::string stopAt(const JointJudge& judge, const Vector3d& angles, int motion, double end, double direction) {
  const double past = end + std::copysign(2 * kBandPrecision, direction);
  return stopText(judge, judge.criteria(withMotion(angles, motion, past)));
}

}  // namespace

Band band(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
          const Assumptions& assumptions, kinematics::JointIndex joint, const Vector3d& angles, int motion) {
  const JointJudge judge(specimen, articulation, assumptions, joint);
  Band band;
  band.judged = judge.vouched();
  if (judge.fixed()) {
    band.leastStop = band.mostStop = "these bones do not move against each other";
    return band;
  }
  if (!judge.hasFacets() && !judge.joint().typed) return band;
  const Interval interval = supportedInterval(judge, angles, motion);
  band.empty = interval.empty;
  if (band.empty) return band;
  band.least = interval.least;
  band.most = interval.most;
  band.leastStop = stopAt(judge, angles, motion, band.least, -1);
  band.mostStop = stopAt(judge, angles, motion, band.most, 1);
  return band;
}

}  // namespace zyga::range
