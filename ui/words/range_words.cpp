#include "ui/words/range_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <array>
#include <cmath>

#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using anatomy::Side;
using range::Finding;
using range::FindingKind;
using range::Level;
using range::MotionState;
using Remark = range::Explanation::Remark;

QString utf8(const std::string& text) { return QString::fromStdString(text); }

/// Of one criterion of the facets: left, right, both sides.
using BySide = std::array<const char*, 3>;

const BySide& findingForms(FindingKind kind, bool byArea) {
  static constexpr BySide kLength{
      QT_TRANSLATE_NOOP("words", "left zygapophyseal overlap %1 (minimum %2)"),
      QT_TRANSLATE_NOOP("words", "right zygapophyseal overlap %1 (minimum %2)"),
      QT_TRANSLATE_NOOP("words", "zygapophyseal overlap %1 left, %2 right (minimum %3)"),
  };
  static constexpr BySide kArea{
      QT_TRANSLATE_NOOP("words", "left zygapophyseal overlap by area %1 (minimum %2)"),
      QT_TRANSLATE_NOOP("words", "right zygapophyseal overlap by area %1 (minimum %2)"),
      QT_TRANSLATE_NOOP("words", "zygapophyseal overlap by area %1 left, %2 right (minimum %3)"),
  };
  static constexpr BySide kAcross{
      QT_TRANSLATE_NOOP("words", "left zygapophyseal overlap across the facet %1 (minimum %2)"),
      QT_TRANSLATE_NOOP("words", "right zygapophyseal overlap across the facet %1 (minimum %2)"),
      QT_TRANSLATE_NOOP("words", "zygapophyseal overlap across the facet %1 left, %2 right (minimum %3)"),
  };
  static constexpr BySide kInterpenetrate{
      QT_TRANSLATE_NOOP("words", "left facets interpenetrate by %1 (tolerated %2)"),
      QT_TRANSLATE_NOOP("words", "right facets interpenetrate by %1 (tolerated %2)"),
      QT_TRANSLATE_NOOP("words", "facets interpenetrate by %1 left, %2 right (tolerated %3)"),
  };
  static constexpr BySide kSeparate{
      QT_TRANSLATE_NOOP("words", "left facets separate by %1 (tolerated %2)"),
      QT_TRANSLATE_NOOP("words", "right facets separate by %1 (tolerated %2)"),
      QT_TRANSLATE_NOOP("words", "facets separate by %1 left, %2 right (tolerated %3)"),
  };
  if (kind == FindingKind::Overlap) return byArea ? kArea : kLength;
  if (kind == FindingKind::OverlapAcross) return kAcross;
  return kind == FindingKind::FacetContact ? kInterpenetrate : kSeparate;
}

QString motionOf(const anatomy::Joint& joint, int motion, double angle) {
  return motionWords(range::motionName(joint, motion, angle));
}

QString typedFinding(const anatomy::Joint& joint, int motion, double angle, double end) {
  const bool sameWay = angle * end > 0;
  const Apart text = apart(std::abs(angle), sameWay ? std::abs(end) : end, reason::Unit::Angle);
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1 %2 (limit %3, %4)")),
                {motionOf(joint, motion, angle), text.measured, text.limit, limitSourceWords(joint.typed->source)});
}

QString contactForm(const anatomy::Specimen& specimen, const range::TouchingParts& parts, double depth,
                    double tolerated) {
  const Apart text = apart(depth, tolerated, reason::Unit::Length);
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1 interpenetrate by %2 (tolerated %3)")),
                {partsWords(specimen, parts), text.measured, text.limit});
}

/// The same criterion on left and right in one phrase; none where their limits differ.
QString findingOfBothSides(bool byArea, const Finding& left, const Finding& right) {
  const reason::Unit unit = unitOf(left.kind);
  const Apart l = apart(left.measured, left.limit, unit), r = apart(right.measured, right.limit, unit);
  if (l.limit != r.limit) return {};
  return filled(translated(findingForms(left.kind, byArea)[2]), {l.measured, r.measured, l.limit});
}

/// The findings of the verdict's own level, left and right of a kind together.
QStringList findingsInWords(const anatomy::Specimen& specimen, const range::Assumptions& assumptions,
                            const range::JointVerdict& verdict) {
  const bool byArea = assumptions.overlapBy == range::OverlapBy::Area;
  QStringList parts;
  std::vector<const Finding*> told;
  for (const Finding& finding : verdict.findings) {
    if (finding.level != verdict.level || std::find(told.begin(), told.end(), &finding) != told.end()) continue;
    const auto other = std::find_if(verdict.findings.begin(), verdict.findings.end(), [&](const Finding& o) {
      return &o != &finding && o.kind == finding.kind && o.level == finding.level && o.side != Side::Midline;
    });
    QString both;
    if (finding.side != Side::Midline && other != verdict.findings.end())
      both = finding.side == Side::Left ? findingOfBothSides(byArea, finding, *other)
                                        : findingOfBothSides(byArea, *other, finding);
    if (!both.isEmpty()) told.push_back(&*other);
    parts << (both.isEmpty() ? findingWords(specimen, assumptions, verdict.joint, finding) : both);
  }
  return parts;
}

QString motionInWords(const anatomy::Joint& joint, const MotionState& state) {
  const QString motion = motionOf(joint, state.motion, state.angle);
  const Apart text = apart(std::abs(state.angle), std::abs(state.end), reason::Unit::Angle);
  switch (state.how) {
    case MotionState::How::Turned:
      return turnWords(joint, state.motion, state.angle);
    case MotionState::How::Within:
      if (!joint.hasFacets() && joint.typed) return typedFinding(joint, state.motion, state.angle, state.end);
      [[fallthrough]];
    case MotionState::How::Past:
      return filled(translated(QT_TRANSLATE_NOOP("words", "%1 %2 (limit %3)")), {motion, text.measured, text.limit});
    case MotionState::How::PastByItself:
      return filled(translated(QT_TRANSLATE_NOOP("words", "%1 %2 (limit %3 by itself)")),
                    {motion, text.measured, text.limit});
    case MotionState::How::ShortOf:
      break;
  }
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1 %2 (minimum %3 %4)")),
                {motion, text.measured, motionOf(joint, state.motion, state.end), text.limit});
}

/// "zygapophyseal overlap 82 % left, 82 % right".
QString overlapInWords(const range::JointVerdict& verdict, bool byArea) {
  const auto share = [byArea](const range::FacetMeeting& m) {
    return percent(byArea ? m.overlapArea : m.overlapLength);
  };
  if (verdict.left && verdict.right) {
    const char* both = byArea ? QT_TRANSLATE_NOOP("words", "zygapophyseal overlap by area %1 left, %2 right")
                              : QT_TRANSLATE_NOOP("words", "zygapophyseal overlap %1 left, %2 right");
    return filled(translated(both), {share(*verdict.left), share(*verdict.right)});
  }
  const char* one = verdict.left ? QT_TRANSLATE_NOOP("words", "left zygapophyseal overlap %1")
                                 : QT_TRANSLATE_NOOP("words", "right zygapophyseal overlap %1");
  return filled(translated(one), {share(verdict.left ? *verdict.left : *verdict.right)});
}

}  // namespace

QString levelWords(Level level) {
  switch (level) {
    case Level::Supported:
      return translated(QT_TRANSLATE_NOOP("words", "within range"));
    case Level::NotJudged:
      return translated(QT_TRANSLATE_NOOP("words", "not assessed"));
    case Level::Near:
      return translated(QT_TRANSLATE_NOOP("words", "near limit"));
    default:
      return translated(QT_TRANSLATE_NOOP("words", "out of range"));
  }
}

QString stateWords(const range::JointVerdict& verdict) {
  return verdict.onlyCollides() ? translated(QT_TRANSLATE_NOOP("words", "bones collide")) : levelWords(verdict.level);
}

QString turnWords(const anatomy::Joint& joint, int motion, double angle) {
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1 %2")),
                {motionOf(joint, motion, angle), degrees(std::abs(angle))});
}

QString findingWords(const anatomy::Specimen& specimen, const range::Assumptions& assumptions,
                     kinematics::JointIndex joint, const Finding& finding) {
  if (finding.kind == FindingKind::TypedLimit)
    return typedFinding(specimen[joint], finding.motion, finding.measured, finding.limit);
  if (finding.kind == FindingKind::BoneContact && finding.parts)
    return contactForm(specimen, *finding.parts, finding.measured, finding.limit);
  const Apart text = apart(finding.measured, finding.limit, unitOf(finding.kind));
  const BySide& forms = findingForms(finding.kind, assumptions.overlapBy == range::OverlapBy::Area);
  return filled(translated(forms[finding.side == Side::Left ? 0 : 1]), {text.measured, text.limit});
}

QString contactWords(const anatomy::Specimen& specimen, const range::ContactFinding& contact) {
  return contactForm(specimen, contact.parts, contact.depth, contact.tolerated);
}

QString notAssessedWords(const anatomy::Joint& joint, const range::JointVerdict& verdict) {
  if (verdict.articulation.inferredNeighbour)
    return translated(QT_TRANSLATE_NOOP("words", "a scan beside a bone whose facets are inferred"));
  if (!joint.hasFacets() || (!verdict.left && !verdict.right))
    return translated(QT_TRANSLATE_NOOP("words", "no facets and no typed limits"));
  return verdict.left ? translated(QT_TRANSLATE_NOOP("words", "the right facets are not known"))
                      : translated(QT_TRANSLATE_NOOP("words", "the left facets are not known"));
}

QString reasonWords(const anatomy::Specimen& specimen, const range::Assumptions& assumptions,
                    const range::JointVerdict& verdict, const range::Explanation& explanation) {
  const anatomy::Joint& joint = specimen[verdict.joint];
  if (verdict.level == Level::NotJudged) return notAssessedWords(joint, verdict);
  QStringList parts;
  if (verdict.level == Level::Supported && (verdict.left || verdict.right))
    parts << overlapInWords(verdict, assumptions.overlapBy == range::OverlapBy::Area);
  if (verdict.level >= Level::Near) parts << findingsInWords(specimen, assumptions, verdict);
  for (const MotionState& state : explanation.motions) parts << motionInWords(joint, state);
  switch (explanation.remark) {
    case Remark::NeutralPose:
      parts << translated(QT_TRANSLATE_NOOP("words", "in the neutral pose"));
      break;
    case Remark::NeutralBeyond:
      parts << translated(QT_TRANSLATE_NOOP("words", "and the neutral pose is out of range as well"));
      break;
    case Remark::OnlyTogether:
      parts << translated(QT_TRANSLATE_NOOP("words", "each within range by itself but not together"));
      break;
    case Remark::None:
      break;
  }
  if (parts.isEmpty()) parts << translated(QT_TRANSLATE_NOOP("words", "all angles zero"));
  if (verdict.articulation.inferredNeighbour)
    parts << translated(QT_TRANSLATE_NOOP("words", "assessed against an inferred neighbour"));
  return inOneLine(parts);
}

QString verdictSentence(const anatomy::Specimen& specimen, const range::Assumptions& assumptions,
                        const range::JointVerdict& verdict, const range::Explanation& explanation) {
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1 %2: %3")),
                {utf8(specimen[verdict.joint].id), stateWords(verdict),
                 reasonWords(specimen, assumptions, verdict, explanation)});
}

QString reasonWords(const range::Scenario& scenario, const range::JointVerdict& verdict) {
  return reasonWords(scenario.specimen(), scenario.assumptions(), verdict, scenario.explain(verdict));
}

QString verdictSentence(const range::Scenario& scenario, const range::JointVerdict& verdict) {
  return verdictSentence(scenario.specimen(), scenario.assumptions(), verdict, scenario.explain(verdict));
}

}  // namespace zyga::ui
