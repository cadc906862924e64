#include "core/range/findings.h"

#include <algorithm>

#include "core/range/joint_judge.h"
#include "core/range/neutral.h"
#include "core/range/sentences.h"

namespace zyga::range {
namespace {

using Eigen::Vector3d;

std::vector<Finding> findingsOf(const JointJudge& judge, const Criteria& criteria) {
  std::vector<const Criterion*> worst;
  for (const Criterion& c : criteria) {
    if (c.level >= Level::Near) worst.push_back(&c);
  }
  std::stable_sort(worst.begin(), worst.end(), [](const Criterion* a, const Criterion* b) {
    return a->level != b->level ? a->level > b->level : a->excess > b->excess;
  });
  std::vector<Finding> findings;
  findings.reserve(worst.size());
  for (const Criterion* c : worst) {
    findings.push_back({c->kind, c->side, c->motion, c->measured, c->limit, c->level, describe(judge, *c)});
  }
  return findings;
}

JointVerdict verdictOf(const JointJudge& judge, const anatomy::Specimen& specimen, kinematics::JointIndex joint,
                       const kinematics::Articulation::Rest& rest, const Vector3d& angles) {
  JointVerdict verdict;
  verdict.joint = joint;
  verdict.left = judge.meeting(angles, 0);
  verdict.right = judge.meeting(angles, 1);
  verdict.centrumGap = judge.centrumGap(angles);
  Criteria criteria;
  criteria.vouched = judge.vouched();
  if (verdict.left) judge.addFacets(criteria, 0, *verdict.left);
  if (verdict.right) judge.addFacets(criteria, 1, *verdict.right);
  judge.addTyped(criteria, angles);
  verdict.level = criteria.level();
  verdict.findings = findingsOf(judge, criteria);
  verdict.sentence = sentence(judge, criteria, angles);
  verdict.articulation = articulationNote(specimen, joint, rest);
  return verdict;
}

}  // namespace

std::string_view toText(Level level) {
  switch (level) {
    case Level::Supported:
      return "supported";
    case Level::NotJudged:
      return "not judged";
    case Level::Near:
      return "near";
    default:
      return "beyond";
  }
}

const JointVerdict* Assessment::find(kinematics::JointIndex joint) const {
  const auto found =
      std::lower_bound(joints.begin(), joints.end(), joint,
                       [](const JointVerdict& verdict, kinematics::JointIndex j) { return verdict.joint < j; });
  return found != joints.end() && found->joint == joint ? &*found : nullptr;
}

Level levelAt(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
              const Assumptions& assumptions, kinematics::JointIndex joint, const Vector3d& angles) {
  return JointJudge(specimen, articulation, assumptions, joint).criteria(angles).level();
}

JointVerdict assessJoint(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                         const Assumptions& assumptions, kinematics::JointIndex joint, const Vector3d& angles) {
  return verdictOf(JointJudge(specimen, articulation, assumptions, joint), specimen, joint, articulation[joint],
                   angles);
}

Assessment assess(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                  const Assumptions& assumptions, const kinematics::Pose& pose) {
  Assessment assessment;
  assessment.joints.reserve(specimen.joints.size());
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    const kinematics::JointIndex joint{j};
    const JointJudge judge(specimen, articulation, assumptions, joint);
    if (judge.fixed()) continue;
    assessment.joints.push_back(verdictOf(judge, specimen, joint, articulation[joint], pose[joint]));
    assessment.level = std::max(assessment.level, assessment.joints.back().level);
  }
  return assessment;
}

}  // namespace zyga::range
