#include "core/range/findings.h"

#include <algorithm>

#include "core/range/joint_evaluator.h"

namespace zyga::range {
namespace {

using Eigen::Vector3d;

std::vector<Finding> findingsOf(const Criteria& criteria) {
  std::vector<Finding> findings;
  for (const Finding& c : criteria) {
    if (c.level >= Level::Near) findings.push_back(c);
  }
  std::stable_sort(findings.begin(), findings.end(),
                   [](const Finding& a, const Finding& b) { return worse(a.severity(), b.severity()); });
  return findings;
}

JointVerdict verdictOf(const JointEvaluator& judge, const anatomy::Specimen& specimen, kinematics::JointIndex joint,
                       const kinematics::Articulation::Rest& rest, const Vector3d& angles) {
  JointVerdict verdict;
  verdict.joint = joint;
  verdict.left = judge.meeting(angles, 0);
  verdict.right = judge.meeting(angles, 1);
  verdict.centrumGap = judge.centrumGap(angles);
  Criteria criteria;
  criteria.hasCriteria = judge.hasCriteria();
  if (verdict.left && !judge.onMixedGround()) judge.addFacets(criteria, 0, *verdict.left);
  if (verdict.right && !judge.onMixedGround()) judge.addFacets(criteria, 1, *verdict.right);
  if (!judge.onMixedGround()) judge.addTyped(criteria, angles);
  verdict.level = criteria.level();
  verdict.judged = criteria.hasCriteria;
  verdict.findings = findingsOf(criteria);
  verdict.articulation = articulationNote(specimen, joint, rest);
  return verdict;
}

bool isContact(const Finding& finding) { return finding.kind == FindingKind::BoneContact; }

bool isColumn(anatomy::Region region) { return region <= anatomy::Region::Caudal; }

/// Knees, wrists, toes: + swings the distal end forwards, which closes hip and elbow but opens these.
bool opensForwards(const anatomy::Joint& joint) {
  if (joint.region == anatomy::Region::Manus || joint.region == anatomy::Region::Pes) {
    return joint.id.rfind("ankle", 0) != 0;
  }
  return joint.id.rfind("knee", 0) == 0 || joint.id.rfind("wrist", 0) == 0;
}

using Motions = std::array<std::array<Motion, 2>, 3>;  // by motion, then for + and -

constexpr Motions kColumn{{{Motion::Dorsiflexion, Motion::Ventriflexion},
                           {Motion::LeftLateralFlexion, Motion::RightLateralFlexion},
                           {Motion::AxialRotationLeftUp, Motion::AxialRotationRightUp}}};
constexpr Motions kJaw{{{Motion::Closing, Motion::Opening},
                        {Motion::LeftSwing, Motion::RightSwing},
                        {Motion::AxialRotationLeftUp, Motion::AxialRotationRightUp}}};
constexpr Motions kLimb{{{Motion::Flexion, Motion::Extension},
                         {Motion::Abduction, Motion::Adduction},
                         {Motion::InwardRotation, Motion::OutwardRotation}}};
constexpr Motions kOpensForwards{{{Motion::Extension, Motion::Flexion},
                                  {Motion::Abduction, Motion::Adduction},
                                  {Motion::InwardRotation, Motion::OutwardRotation}}};

const Motions& motionsOf(const anatomy::Joint& joint) {
  if (joint.id == "jaw") return kJaw;
  if (isColumn(joint.region)) return kColumn;
  return opensForwards(joint) ? kOpensForwards : kLimb;
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

reason::Unit unitOf(FindingKind kind) {
  switch (kind) {
    case FindingKind::Overlap:
    case FindingKind::OverlapAcross:
      return reason::Unit::Share;
    case FindingKind::TypedLimit:
      return reason::Unit::Angle;
    default:
      return reason::Unit::Length;
  }
}

bool JointVerdict::onlyCollides() const {
  return level == Level::Beyond && std::none_of(findings.begin(), findings.end(), [](const Finding& f) {
           return f.level == Level::Beyond && !isContact(f);
         });
}

void JointVerdict::setContacts(const std::vector<Finding>& found) {
  std::erase_if(findings, isContact);
  findings.insert(findings.end(), found.begin(), found.end());
  std::stable_sort(findings.begin(), findings.end(),
                   [](const Finding& a, const Finding& b) { return worse(a.severity(), b.severity()); });
  level = judged ? Level::Supported : Level::NotJudged;
  for (const Finding& finding : findings) level = std::max(level, finding.level);
}

double ContactFinding::excess() const {
  constexpr double kLeastScale = 1e-3;  // m
  const double scale = std::max(tolerated, kLeastScale);
  return (depth - tolerated) / scale;
}

Finding ContactFinding::finding() const {
  return {FindingKind::BoneContact, anatomy::Side::Midline, 0, depth, tolerated, level, excess(), parts};
}

const JointVerdict* Assessment::find(kinematics::JointIndex joint) const {
  const auto found =
      std::lower_bound(joints.begin(), joints.end(), joint,
                       [](const JointVerdict& verdict, kinematics::JointIndex j) { return verdict.joint < j; });
  return found != joints.end() && found->joint == joint ? &*found : nullptr;
}

void Assessment::setContacts(bool areJudged, std::vector<ContactFinding> found) {
  contactJudged = areJudged;
  contacts = std::move(found);
  level = Level::Supported;
  std::vector<Finding> own;
  for (JointVerdict& verdict : joints) {
    own.clear();
    for (const ContactFinding& contact : contacts) {
      if (contact.joint == verdict.joint) own.push_back(contact.finding());
    }
    const bool had = std::any_of(verdict.findings.begin(), verdict.findings.end(), isContact);
    if (had || !own.empty()) verdict.setContacts(own);
    level = std::max(level, verdict.level);
  }
  for (const ContactFinding& contact : contacts) level = std::max(level, contact.level);
}

std::vector<const JointVerdict*> worstFirst(const Assessment& assessment) {
  std::vector<const JointVerdict*> out;
  for (const JointVerdict& verdict : assessment.joints) {
    if (verdict.level >= Level::Near) out.push_back(&verdict);
  }
  std::stable_sort(out.begin(), out.end(),
                   [](const auto* a, const auto* b) { return worse(a->severity(), b->severity()); });
  return out;
}

Level levelAt(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
              const Assumptions& assumptions, kinematics::JointIndex joint, const Vector3d& angles) {
  const JointEvaluator judge(specimen, articulation, assumptions, joint);
  return judge.onMixedGround() ? Level::NotJudged : judge.criteria(angles).level();
}

JointVerdict assessJoint(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                         const Assumptions& assumptions, kinematics::JointIndex joint, const Vector3d& angles) {
  return verdictOf(JointEvaluator(specimen, articulation, assumptions, joint), specimen, joint, articulation[joint],
                   angles);
}

Assessment assess(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                  const Assumptions& assumptions, const kinematics::Pose& pose) {
  Assessment assessment;
  assessment.joints.reserve(specimen.joints.size());
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    const kinematics::JointIndex joint{j};
    const JointEvaluator judge(specimen, articulation, assumptions, joint);
    if (judge.fixed()) continue;
    assessment.joints.push_back(verdictOf(judge, specimen, joint, articulation[joint], pose[joint]));
    assessment.level = std::max(assessment.level, assessment.joints.back().level);
  }
  return assessment;
}

Motion motionName(const anatomy::Joint& joint, int motion, double sign) {
  return motionsOf(joint)[static_cast<std::size_t>(motion)][sign < 0 ? 1 : 0];
}

}  // namespace zyga::range
