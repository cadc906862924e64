#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <iostream>
#include <memory>
#include <vector>

#include "app/verbs/assumption_options.h"
#include "app/verbs/assumptions_words.h"
#include "app/verbs/contact_for.h"
#include "app/verbs/project_file.h"
#include "app/verbs/summary_text.h"
#include "app/verbs/text_table.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/files/json/json_write.h"
#include "core/range/evidence.h"
#include "core/range/scenario.h"
#include "ui/words/assumption_words.h"
#include "ui/words/numbers.h"
#include "ui/words/range_words.h"
#include "ui/words/say.h"

namespace zyga::app {
namespace {

namespace json = files::json;

using range::Level;
using ui::translated;

/// One judged pose of a project.
struct Judged {
  const files::Project& project;
  std::string poseName;
  range::Scenario scenario;

  const range::Assessment& assessment() const { return scenario.assessment(); }
};

/// The worst of the joints that are judged and of the contacts.
Level overallLevel(const range::Assessment& assessment) {
  auto worst = Level::Supported;
  for (const auto& joint : assessment.joints) {
    if (joint.level != Level::NotJudged) worst = std::max(worst, joint.level);
  }
  for (const auto& contact : assessment.contacts) worst = std::max(worst, contact.level);
  return worst;
}

// For machines.

json::Value millimetresJson(double length) { return json::millionths(length * 1000); }

/// The id of a region.
std::string_view regionId(anatomy::Region region) {
  static constexpr std::array<std::string_view, 13> kIds{
      "skull",           "cervical", "dorsal", "sacral",     "caudal",   "ribs", "chevrons",
      "shoulder girdle", "forelimb", "manus",  "hip girdle", "hindlimb", "pes"};
  return kIds.at(static_cast<std::size_t>(region));
}

json::Value facetsJson(const std::optional<range::FacetMeeting>& meeting) {
  if (!meeting) return {};
  return json::object({{"overlap_length", json::millionths(meeting->overlapLength)},
                       {"overlap_width", json::millionths(meeting->overlapWidth)},
                       {"overlap_area", json::millionths(meeting->overlapArea)},
                       {"gap_min_mm", millimetresJson(meeting->minGap)},
                       {"gap_max_mm", millimetresJson(meeting->maxGap)}});
}

/// Whether the axial rotation follows the facets or was typed; none where no facets can ask for one.
json::Value axialId(const range::Scenario& scenario, kinematics::JointIndex joint) {
  if (!scenario.articulation()[joint].settling.hasFacets) return {};
  return scenario.pose().isAxialTyped(joint) ? "typed" : "free";
}

/// By how much the bones have settled inside the cartilage.
json::Value settlingJson(const range::Scenario& scenario, kinematics::JointIndex joint) {
  const auto& bones = scenario.specimen()[joint];
  const auto& rest = scenario.articulation()[joint];
  const auto& angles = scenario.pose()[joint];
  if (!rest.settling.hasFacets) return {};
  const Eigen::Vector3d shift = kinematics::jointTransform(bones, rest, angles).translation() -
                                kinematics::unsettledTransform(bones, rest, angles).translation();
  return millimetresJson(shift.norm());
}

/// What a joint's verdict rests on; null where nothing judges it.
json::Value evidenceId(const range::Scenario& scenario, kinematics::JointIndex joint) {
  const auto evidence = range::evidenceOf(scenario.specimen(), joint);
  return evidence ? json::Value(toText(*evidence)) : json::Value();
}

json::Value verdictJson(const Judged& judged, const range::JointVerdict& verdict) {
  const range::Scenario& scenario = judged.scenario;
  const auto& joint = scenario.specimen()[verdict.joint];
  const auto& angles = scenario.pose()[verdict.joint];
  std::vector<std::string> reasons;
  for (const auto& finding : verdict.findings) {
    reasons.push_back(
        ui::findingWords(scenario.specimen(), scenario.assumptions(), verdict.joint, finding).toStdString());
  }
  const QString articulation = ui::articulationWords(scenario.specimen(), verdict.joint, verdict.articulation);
  return json::object({{"id", joint.id},
                       {"region", regionId(joint.region)},
                       {"dorsiflexion_deg", json::degrees(angles(0))},
                       {"lateral_deg", json::degrees(angles(1))},
                       {"torsion_deg", json::degrees(angles(2))},
                       {"axial", axialId(scenario, verdict.joint)},
                       {"settling_mm", settlingJson(scenario, verdict.joint)},
                       {"left", facetsJson(verdict.left)},
                       {"right", facetsJson(verdict.right)},
                       {"centrum_gap_mm", joint.hasFacets() ? millimetresJson(verdict.centrumGap) : json::Value()},
                       {"level", toText(verdict.level)},
                       {"reasons", json::arrayOf(reasons)},
                       {"stopped_by_default", range::byDefault(joint, verdict)},
                       {"evidence", evidenceId(scenario, verdict.joint)},
                       {"sentence", ui::verdictSentence(scenario, verdict).toStdString()},
                       {"articulation", articulation.isEmpty() ? json::Value() : articulation.toStdString()}});
}

json::Value contactJson(const anatomy::Specimen& specimen, const range::ContactFinding& contact) {
  const auto& p = contact.p_W;
  return json::object(
      {{"bone", specimen[contact.bone].id},
       {"other", specimen[contact.other].id},
       {"depth_mm", millimetresJson(contact.depth)},
       {"place_mm", json::array({millimetresJson(p.x()), millimetresJson(p.y()), millimetresJson(p.z())})},
       {"level", toText(contact.level)},
       {"sentence", ui::contactWords(specimen, contact).toStdString()}});
}

json::Value contactsJson(const Judged& judged) {
  if (!judged.assessment().contactJudged) return {};
  std::vector<json::Value> contacts;
  for (const auto& contact : judged.assessment().contacts) {
    contacts.push_back(contactJson(judged.scenario.specimen(), contact));
  }
  return json::arrayOf(contacts, json::Layout::OnLines);
}

std::string judgedJson(const Judged& judged) {
  std::vector<json::Value> joints;
  for (const auto& verdict : judged.assessment().joints) joints.push_back(verdictJson(judged, verdict));
  return json::document(json::object({{"specimen", judged.project.table.name},
                                      {"pose", judged.poseName},
                                      {"assumptions", assumptionsJson(judged.scenario.assumptions())},
                                      {"summary", summaryJson(anatomy::summarise(judged.scenario.specimen()))},
                                      {"level", toText(overallLevel(judged.assessment()))},
                                      {"contact_judged", judged.assessment().contactJudged},
                                      {"contacts", contactsJson(judged)},
                                      {"joints", json::arrayOf(joints, json::Layout::OnLines)},
                                      {"caution", caution()}},
                                     json::Layout::OnLines));
}

// For people.

std::string overlapCell(const std::optional<range::FacetMeeting>& meeting, range::OverlapBy by) {
  if (!meeting) return "-";
  return ui::percent(by == range::OverlapBy::Length ? meeting->overlapLength : meeting->overlapArea).toStdString();
}

std::string findingsCell(const range::Scenario& scenario, const range::JointVerdict& verdict) {
  QStringList parts;
  for (const auto& finding : verdict.findings) {
    parts << ui::findingWords(scenario.specimen(), scenario.assumptions(), verdict.joint, finding);
  }
  return ui::inOneLine(parts).toStdString();
}

TextRow verdictRow(const range::Scenario& scenario, const range::JointVerdict& verdict) {
  const auto& angles = scenario.pose()[verdict.joint];
  const auto by = scenario.assumptions().overlapBy;
  return {scenario.specimen()[verdict.joint].id,
          ui::stateWords(verdict).toStdString(),
          ui::plainDegrees(angles(0)).toStdString(),
          ui::plainDegrees(angles(1)).toStdString(),
          ui::plainDegrees(angles(2)).toStdString(),
          overlapCell(verdict.left, by),
          overlapCell(verdict.right, by),
          findingsCell(scenario, verdict)};
}

std::string findingsText(const range::Scenario& scenario) {
  const auto findings = worstFirst(scenario.assessment());
  if (findings.empty())
    return "  " + said(QT_TRANSLATE_NOOP("words", "every joint that can be assessed is within range")) + "\n";
  std::vector<TextRow> rows{{said(QT_TRANSLATE_NOOP("words", "joint")), said(QT_TRANSLATE_NOOP("words", "state")),
                             said(QT_TRANSLATE_NOOP("words", "flexion")), said(QT_TRANSLATE_NOOP("words", "lateral")),
                             said(QT_TRANSLATE_NOOP("words", "rotation")), said(QT_TRANSLATE_NOOP("words", "left")),
                             said(QT_TRANSLATE_NOOP("words", "right")), said(QT_TRANSLATE_NOOP("words", "why"))}};
  for (const auto* verdict : findings) rows.push_back(verdictRow(scenario, *verdict));
  return textTable(rows, {true, true, false, false, false, false, false, true});
}

std::string countsText(const range::Assessment& assessment) {
  std::array<int, 4> counts{};
  for (const auto& joint : assessment.joints) ++counts[static_cast<std::size_t>(joint.level)];
  const auto count = [&](Level level) { return QString::number(counts[static_cast<std::size_t>(level)]); };
  const QString joints =
      translated(QT_TRANSLATE_N_NOOP("words", "%n joints"), static_cast<int>(assessment.joints.size()));
  return "  " +
         said(QT_TRANSLATE_NOOP("words", "%1: %2 out of range, %3 near limit, %4 within range, %5 not assessed"),
              {joints, count(Level::Beyond), count(Level::Near), count(Level::Supported), count(Level::NotJudged)}) +
         "\n";
}

/// How joints came to their neutral articulation, where there is something to say about it.
std::string articulationText(const range::Scenario& scenario) {
  std::string out;
  for (const auto& verdict : scenario.assessment().joints) {
    const QString told = ui::articulationWords(scenario.specimen(), verdict.joint, verdict.articulation);
    if (!told.isEmpty()) out += "  " + told.toStdString() + "\n";
  }
  return out;
}

std::string contactsText(const range::Scenario& scenario) {
  const range::Assessment& assessment = scenario.assessment();
  if (!assessment.contactJudged) return contactText(false);
  if (assessment.contacts.empty())
    return "  " +
           said(QT_TRANSLATE_NOOP("words", "no bones interpenetrate by more than the tolerated %1; %2"),
                {ui::contactToleranceWords(scenario.assumptions().contactTolerated), ui::bendingRibsWords()}) +
           "\n";
  std::string out;
  for (const auto& contact : assessment.contacts) {
    const QString state = contact.level == Level::Beyond ? translated(QT_TRANSLATE_NOOP("words", "bones collide"))
                                                         : ui::levelWords(contact.level);
    out += "  " + said(QT_TRANSLATE_NOOP("words", "%1: %2"), {state, ui::contactWords(scenario.specimen(), contact)}) +
           "\n";
  }
  return out;
}

std::string judgedText(const Judged& judged) {
  const range::Scenario& scenario = judged.scenario;
  return judged.project.table.name + ", " + judged.poseName + ": " +
         ui::levelWords(overallLevel(judged.assessment())).toStdString() + "\n" +
         summaryText(anatomy::summarise(scenario.specimen())) + assumptionsText(scenario.assumptions()) + "\n" +
         findingsText(scenario) + "\n" + contactsText(scenario) + articulationText(scenario) +
         countsText(judged.assessment()) + "  " + caution() + "\n  " +
         said(QT_TRANSLATE_NOOP("words",
                                "angles in degrees from neutral, dorsiflexion, left and rising left side positive; "
                                "left and right: zygapophyseal overlap")) +
         "\n";
}

int assess(const VerbSpec&, const Arguments& arguments) {
  const auto project = openProject(arguments.file);
  const auto chosen = choosePose(project, arguments);
  std::shared_ptr<const range::ContactModel> contact = contactFor(project, arguments);
  const Judged judged{project, chosen.name,
                      range::Scenario(project.sharedSpecimen, assumptionsFrom(arguments, project.assumptions),
                                      chosen.pose, std::move(contact))};
  std::cout << (arguments.has("--json") ? judgedJson(judged) : judgedText(judged));
  return overallLevel(judged.assessment()) == Level::Beyond ? kBeyond : kDone;
}

}  // namespace

Verb assessVerb() {
  return {{"assess", "FILE.zyga", QT_TRANSLATE_NOOP("words", "assesses every joint of a pose by its bones"),
           withAssumptionOptions(withContactOptions(
               {{"--pose", "NAME", QT_TRANSLATE_NOOP("words", "a named pose instead of the present one")},
                {"--json", "", QT_TRANSLATE_NOOP("words", "every joint, for machines")}})),
           QT_TRANSLATE_NOOP("words",
                             "Findings are sorted worst first. Exit 1 when a joint is out of range or bones "
                             "interpenetrate deeper than is\n"
                             "tolerated; their shapes are sculpted when they are first needed. Assumptions that are "
                             "given stand for this run only; those of the\n"
                             "project hold for the rest.\n")},
          assess};
}

}  // namespace zyga::app
