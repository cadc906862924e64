#include <array>

#include "app/verbs/assess_report.h"
#include "app/verbs/assumptions_words.h"
#include "app/verbs/summary_text.h"
#include "core/files/json/json.h"
#include "core/files/json/json_layout.h"

namespace zyga::app {
namespace {

using files::jsonString;
using files::list;
using files::member;
using files::onLines;
using files::onOneLine;

std::string millimetres(double length) { return millionths(length * 1000); }

/// Word of the trade for a region; unlike its title it stays as it is.
std::string_view regionWord(anatomy::Region region) {
  static constexpr std::array<std::string_view, 13> kWords{
      "skull",           "cervical", "dorsal", "sacral",     "caudal",   "ribs", "chevrons",
      "shoulder girdle", "forelimb", "manus",  "hip girdle", "hindlimb", "pes"};
  return kWords.at(static_cast<std::size_t>(region));
}

std::string facetsJson(const std::optional<range::FacetMeeting>& meeting) {
  if (!meeting) return "null";
  return onOneLine({member("overlap_length", millionths(meeting->overlapLength)),
                    member("overlap_area", millionths(meeting->overlapArea)),
                    member("gap_min_mm", millimetres(meeting->gapLeast)),
                    member("gap_max_mm", millimetres(meeting->gapMost))});
}

std::string jointJson(const Report& report, const range::JointVerdict& verdict) {
  const auto& joint = report.project.specimen[verdict.joint];
  const auto& angles = report.pose[verdict.joint];
  std::vector<std::string> reasons;
  for (const auto& finding : verdict.findings) reasons.push_back(jsonString(finding.text));
  return onOneLine({member("id", jsonString(joint.id)), member("region", jsonString(regionWord(joint.region))),
                    member("dorsiflexion_deg", degreesJson(angles(0))), member("lateral_deg", degreesJson(angles(1))),
                    member("torsion_deg", degreesJson(angles(2))), member("left", facetsJson(verdict.left)),
                    member("right", facetsJson(verdict.right)),
                    member("centrum_gap_mm", joint.hasFacets() ? millimetres(verdict.centrumGap) : "null"),
                    member("level", jsonString(toText(verdict.level))), member("reasons", list(reasons)),
                    member("sentence", jsonString(verdict.sentence)),
                    member("articulation", verdict.articulation.empty() ? "null" : jsonString(verdict.articulation))});
}

std::string contactJson(const Report& report, const range::ContactFinding& contact) {
  const auto& p = contact.p_W;
  return onOneLine({member("bone", jsonString(report.project.specimen[contact.bone].id)),
                    member("other", jsonString(report.project.specimen[contact.other].id)),
                    member("depth_mm", millimetres(contact.depth)),
                    member("place_mm", list({millimetres(p.x()), millimetres(p.y()), millimetres(p.z())})),
                    member("level", jsonString(toText(contact.level))), member("sentence", jsonString(contact.text))});
}

std::string contactsJson(const Report& report) {
  if (!report.assessment.contactJudged) return "null";
  std::vector<std::string> contacts;
  for (const auto& contact : report.assessment.contacts) contacts.push_back(contactJson(report, contact));
  return onLines(contacts, "  ", '[', ']');
}

}  // namespace

std::string reportJson(const Report& report) {
  std::vector<std::string> joints;
  for (const auto& verdict : report.assessment.joints) joints.push_back(jointJson(report, verdict));
  return onLines(
             {member("specimen", jsonString(report.project.table.name)), member("pose", jsonString(report.poseName)),
              member("assumptions", assumptionsJson(report.project.assumptions)),
              member("summary", summaryJson(anatomy::summarise(report.project.specimen))),
              member("level", jsonString(toText(overallLevel(report.assessment)))),
              member("contact_judged", report.assessment.contactJudged ? "true" : "false"),
              member("contacts", contactsJson(report)), member("joints", onLines(joints, "  ", '[', ']')),
              member("caution", jsonString(kCaution))},
             "", '{', '}') +
         "\n";
}

}  // namespace zyga::app
