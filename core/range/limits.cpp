#include "core/range/limits.h"

#include "core/range/limit_search.h"

namespace zyga::range {
namespace {

using Eigen::Vector3d;

Band bandOf(const JointEvaluator& judge, const Vector3d& angles, int motion) {
  Band band;
  band.judged = judge.hasCriteria();
  if (judge.fixed() || (!judge.hasFacets() && !judge.joint().typed)) {
    band.leastStop.why = band.mostStop.why = judge.fixed() ? Stop::Why::Fixed : Stop::Why::NoCriteria;
    return band;
  }
  const LimitSearch search(judge, angles, motion);
  const Interval found = search.interval();
  band.least = found.least;
  band.most = found.most;
  band.empty = found.empty;
  band.leastStop = search.stop(found, -1);
  band.mostStop = found.empty ? band.leastStop : search.stop(found, 1);
  return band;
}

}  // namespace

Band band(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
          const Assumptions& assumptions, kinematics::JointIndex joint, const Vector3d& angles, int motion,
          const NeighbourContact* contact) {
  return bandOf(JointEvaluator(specimen, articulation, assumptions, joint, contact), angles, motion);
}

std::string_view toText(Direction direction) {
  static constexpr std::array<std::string_view, 6> kWords{"dorsal", "ventral",      "left",
                                                          "right",  "torsion left", "torsion right"};
  return kWords[static_cast<std::size_t>(direction)];
}

JointLimits limits(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                   const Assumptions& assumptions, kinematics::JointIndex joint, const Vector3d& angles,
                   const NeighbourContact* contact) {
  const JointEvaluator judge(specimen, articulation, assumptions, joint, contact);
  JointLimits limits;
  limits.joint = joint;
  limits.judged = judge.hasCriteria();
  for (std::size_t motion = 0; motion < 3; ++motion) {
    const Band band = bandOf(judge, angles, static_cast<int>(motion));
    limits.ends[2 * motion] = {!band.empty, band.most, band.mostStop};
    limits.ends[2 * motion + 1] = {!band.empty, band.least, band.leastStop};
  }
  return limits;
}

}  // namespace zyga::range
