#include "core/range/limits.h"

#include "core/range/limit_search.h"

namespace zyga::range {
namespace {

using Eigen::Vector3d;

MotionRange bandOf(const JointEvaluator& judge, const Vector3d& angles, int motion) {
  MotionRange band;
  band.judged = judge.hasCriteria();
  if (judge.fixed() || (!judge.hasFacets() && !judge.joint().typed)) {
    band.minStop.why = band.maxStop.why = judge.fixed() ? Stop::Why::Fixed : Stop::Why::NoCriteria;
    return band;
  }
  const LimitSearch search(judge, angles, motion);
  const Interval found = search.interval();
  band.min = found.min;
  band.max = found.max;
  band.empty = found.empty;
  band.axialAtMin = search.at(found.min)[2];
  band.axialAtMax = search.at(found.max)[2];
  band.minStop = search.stop(found, -1);
  band.maxStop = found.empty ? band.minStop : search.stop(found, 1);
  return band;
}

}  // namespace

MotionRange motionRange(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                        const Assumptions& assumptions, kinematics::JointIndex joint, const Vector3d& angles,
                        int motion, const NeighbourContact* contact) {
  return bandOf(JointEvaluator(specimen, articulation, assumptions, joint, contact), angles, motion);
}

namespace {

/// A criterion whose limit has no source.
bool isByDefault(const anatomy::Joint& joint, FindingKind kind) {
  if (kind == FindingKind::TypedLimit) return joint.typed && joint.typed->source == anatomy::kProgramDefault;
  return kind != FindingKind::Overlap;
}

}  // namespace

bool byDefault(const anatomy::Joint& joint, const Stop& stop) {
  return stop.why == Stop::Why::Criterion && stop.kind && isByDefault(joint, *stop.kind);
}

bool byDefault(const anatomy::Joint& joint, const JointVerdict& verdict) {
  if (verdict.level != Level::Near && verdict.level != Level::Beyond) return false;
  return std::all_of(verdict.findings.begin(), verdict.findings.end(), [&](const Finding& finding) {
    return finding.level != verdict.level || isByDefault(joint, finding.kind);
  });
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
    const MotionRange band = bandOf(judge, angles, static_cast<int>(motion));
    limits.ends[2 * motion] = {!band.empty, band.max, band.maxStop, band.axialAtMax};
    limits.ends[2 * motion + 1] = {!band.empty, band.min, band.minStop, band.axialAtMin};
  }
  return limits;
}

}  // namespace zyga::range
