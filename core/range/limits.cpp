#include "core/range/limits.h"

#include <cmath>

#include "core/range/band_search.h"
#include "core/range/sentences.h"
#include "core/range/wording.h"

namespace zyga::range {
namespace {

using Eigen::Vector3d;

constexpr const char* kFixedText = "these bones do not move against each other";

Stop contactStop(const JointJudge& judge, const Vector3d& at) {
  const double tolerated = judge.assumptions().contactTolerated;
  return {FindingKind::BoneContact, anatomy::Side::Midline, tolerated,
          "contact: " + judge.contact(at).parts + ", " + millimetresText(tolerated)};
}

Stop stopOf(const JointJudge& judge, const Criteria& justPast) {
  const auto [worst, both] = stopping(justPast);
  Stop stop;
  if (worst) stop = {worst->kind, both ? anatomy::Side::Midline : worst->side, worst->limit, ""};
  stop.text = stopText(judge, justPast);
  return stop;
}

/// What stops the motion just past an end.
Stop stopAt(const JointJudge& judge, const Vector3d& angles, int motion, double end, double sign, bool contact) {
  const double precision = contact ? kContactPrecision : kBandPrecision;
  const Vector3d past = withMotion(angles, motion, end + std::copysign(2 * precision, sign));
  return contact ? contactStop(judge, past) : stopOf(judge, judge.criteria(past));
}

/// Why no value of a motion is supported: what is wrong where the joint is.
Stop nothingSupported(const JointJudge& judge, const Vector3d& angles, bool contact) {
  return contact ? contactStop(judge, angles) : stopOf(judge, judge.criteria(angles));
}

/// Both ends of one motion.
struct Ends {
  Interval interval;
  Stop least, most;
};

Ends endsOf(const JointJudge& judge, const Vector3d& angles, int motion) {
  Ends ends;
  if (judge.fixed()) {
    ends.least.text = ends.most.text = kFixedText;
    return ends;
  }
  if (!judge.hasFacets() && !judge.joint().typed) {
    ends.least.text = ends.most.text = "no facets and no typed limits";
    return ends;
  }
  ends.interval = supportedInterval(judge, angles, motion);
  const Interval& found = ends.interval;
  if (found.empty) {
    ends.least = ends.most = nothingSupported(judge, angles, found.contactAtLeast);
    return ends;
  }
  ends.least = stopAt(judge, angles, motion, found.least, -1, found.contactAtLeast);
  ends.most = stopAt(judge, angles, motion, found.most, 1, found.contactAtMost);
  return ends;
}

}  // namespace

Band band(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
          const Assumptions& assumptions, kinematics::JointIndex joint, const Vector3d& angles, int motion,
          const NeighbourContact* contact) {
  const JointJudge judge(specimen, articulation, assumptions, joint, contact);
  Ends ends = endsOf(judge, angles, motion);
  return {ends.interval.least, ends.interval.most,         judge.vouched(),
          ends.interval.empty, std::move(ends.least.text), std::move(ends.most.text)};
}

std::string_view toText(Direction direction) {
  static constexpr std::array<std::string_view, 6> kWords{"dorsal", "ventral",      "left",
                                                          "right",  "torsion left", "torsion right"};
  return kWords[static_cast<std::size_t>(direction)];
}

JointLimits limits(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                   const Assumptions& assumptions, kinematics::JointIndex joint, const Vector3d& angles,
                   const NeighbourContact* contact) {
  const JointJudge judge(specimen, articulation, assumptions, joint, contact);
  JointLimits limits;
  limits.joint = joint;
  limits.judged = judge.vouched();
  for (std::size_t motion = 0; motion < 3; ++motion) {
    const Ends ends = endsOf(judge, angles, static_cast<int>(motion));
    limits.ends[2 * motion] = {!ends.interval.empty, ends.interval.most, ends.most};
    limits.ends[2 * motion + 1] = {!ends.interval.empty, ends.interval.least, ends.least};
  }
  return limits;
}

}  // namespace zyga::range
