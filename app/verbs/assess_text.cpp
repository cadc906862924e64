#include <algorithm>
#include <array>
#include <vector>

#include "app/verbs/assess_report.h"
#include "app/verbs/assumptions_words.h"
#include "app/verbs/summary_text.h"
#include "app/verbs/text_table.h"

namespace zyga::app {
namespace {

std::string percent(double share) { return fixed(share * 100, 0) + " %"; }

/// The joints with something to tell, worst first, otherwise in joint order.
std::vector<const range::JointVerdict*> worstFirst(const range::Assessment& assessment) {
  std::vector<const range::JointVerdict*> out;
  for (const auto& joint : assessment.joints) {
    if (joint.level == range::Level::Near || joint.level == range::Level::Beyond) out.push_back(&joint);
  }
  std::stable_sort(out.begin(), out.end(), [](const auto* a, const auto* b) { return a->level > b->level; });
  return out;
}

std::string overlap(const std::optional<range::FacetMeeting>& meeting, range::OverlapBy by) {
  if (!meeting) return "-";
  return percent(by == range::OverlapBy::Length ? meeting->overlapLength : meeting->overlapArea);
}

std::string reasons(const range::JointVerdict& verdict) {
  std::string out;
  for (const auto& finding : verdict.findings) out += (out.empty() ? "" : "; ") + finding.text;
  return out;
}

TextRow row(const Report& report, const range::JointVerdict& verdict) {
  const auto& angles = report.pose[verdict.joint];
  const auto by = report.project.assumptions.overlapBy;
  return {report.project.specimen[verdict.joint].id,
          std::string(toText(verdict.level)),
          degreesText(angles(0)),
          degreesText(angles(1)),
          degreesText(angles(2)),
          overlap(verdict.left, by),
          overlap(verdict.right, by),
          reasons(verdict)};
}

std::string findingsText(const Report& report) {
  const auto findings = worstFirst(report.assessment);
  if (findings.empty()) return "  every joint that can be judged is inside its range\n";
  std::vector<TextRow> rows{{"joint", "level", "flexion", "lateral", "torsion", "left", "right", "why"}};
  for (const auto* verdict : findings) rows.push_back(row(report, *verdict));
  return textTable(rows, {true, true, false, false, false, false, false, true});
}

std::string countsText(const range::Assessment& assessment) {
  std::array<std::size_t, 4> counts{};
  for (const auto& joint : assessment.joints) ++counts[static_cast<std::size_t>(joint.level)];
  const auto count = [&](range::Level level) { return std::to_string(counts[static_cast<std::size_t>(level)]); };
  return "  " + std::to_string(assessment.joints.size()) + " joints: " + count(range::Level::Beyond) + " beyond, " +
         count(range::Level::Near) + " near the edge, " + count(range::Level::Supported) + " supported, " +
         count(range::Level::NotJudged) + " not judged\n";
}

/// How joints came to their neutral articulation, where there is something to say about it.
std::string articulationText(const range::Assessment& assessment) {
  std::string out;
  for (const auto& verdict : assessment.joints) {
    if (!verdict.articulation.empty()) out += "  " + verdict.articulation + "\n";
  }
  return out;
}

std::string contactsText(const Report& report) {
  if (!report.assessment.contactJudged) return "  contact between bones was not judged (--contact judges it)\n";
  const std::string tolerated = fixed(report.project.assumptions.contactTolerated * 1000, 1) + " mm";
  if (report.assessment.contacts.empty())
    return "  no bones enter each other by more than the tolerated " + tolerated + "\n";
  std::string out;
  for (const auto& contact : report.assessment.contacts) {
    out += "  " + std::string(toText(contact.level)) + ": " + contact.text + "\n";
  }
  return out;
}

}  // namespace

std::string reportText(const Report& report) {
  return report.project.table.name + ", " + report.poseName + ": " +
         std::string(toText(overallLevel(report.assessment))) + "\n" +
         summaryText(anatomy::summarise(report.project.specimen)) + assumptionsText(report.project.assumptions) + "\n" +
         findingsText(report) + "\n" + contactsText(report) + articulationText(report.assessment) +
         countsText(report.assessment) + "  " + kCaution +
         "\n  angles in degrees from neutral, dorsiflexion, left and rising left side positive; left and right: facet "
         "share\n";
}

}  // namespace zyga::app
