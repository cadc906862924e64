#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>
#include <iostream>
#include <numbers>

#include "app/verbs/assumption_options.h"
#include "app/verbs/assumptions_words.h"
#include "app/verbs/project_file.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/files/json/json_write.h"
#include "core/study/claims/claim_book.h"
#include "ui/words/claim_words.h"
#include "ui/words/say.h"

namespace zyga::app {
namespace {

namespace json = files::json;

using range::Scenario;
using study::Claim;
using study::ClaimAnswer;
using study::ClaimKind;

constexpr double kClaimDegree = std::numbers::pi / 180;

struct KindOption {
  OptionSpec spec;
  ClaimKind kind;
};

const std::vector<KindOption>& kindOptions() {
  static const std::vector<KindOption> all{
      {{"--head-height-m", "H", QT_TRANSLATE_NOOP("words", "head at least H metres high")}, ClaimKind::HeadHeight},
      {{"--neck-slope-deg", "A",
        QT_TRANSLATE_NOOP("words", "line from the neck's base to its end at least A degrees to the horizontal")},
       ClaimKind::NeckSlope},
      {{"--neck-base-deg", "A", QT_TRANSLATE_NOOP("words", "hindmost cervical at least A degrees to the horizontal")},
       ClaimKind::NeckBaseSlope},
      {{"--ground-ahead-m", "D", QT_TRANSLATE_NOOP("words", "snout reaches the ground D metres ahead of the forefeet")},
       ClaimKind::SnoutToGround},
      {{"--head-at-m", "D,H", QT_TRANSLATE_NOOP("words", "head reaches H metres high, D metres ahead of the forefeet")},
       ClaimKind::HeadAhead},
      {{"--tail-base-deg", "A", QT_TRANSLATE_NOOP("words", "base of the tail within A degrees of level")},
       ClaimKind::TailBaseLevel}};
  return all;
}

/// "D,H" as distance and height.
void readPoint(const GivenOption& given, const study::ClaimKindTraits& traits, Claim& claim) {
  const std::size_t comma = given.value.find(',');
  if (comma == std::string::npos)
    refuse(QT_TRANSLATE_NOOP("words",
                             "%1: '%2' is not a distance and a height in metres with a comma between, such as 2,3.5"),
           {given.name, given.value});
  claim.ahead = numberOf({given.name, given.value.substr(0, comma)}, -traits.max, traits.max,
                         QT_TRANSLATE_NOOP("words", "metres ahead"));
  claim.value = numberOf({given.name, given.value.substr(comma + 1)}, traits.min, traits.max,
                         QT_TRANSLATE_NOOP("words", "metres of height"));
}

Claim readClaim(const KindOption& option, const std::string& value) {
  const study::ClaimKindTraits& traits = traitsOf(option.kind);
  const GivenOption given{std::string(option.spec.name), value};
  Claim claim{option.kind};
  if (traits.ahead) {
    readPoint(given, traits, claim);
  } else if (traits.angle) {
    claim.value = kClaimDegree * numberOf(given, std::round(traits.min / kClaimDegree),
                                          std::round(traits.max / kClaimDegree), QT_TRANSLATE_NOOP("words", "degrees"));
  } else {
    claim.value = numberOf(given, traits.min, traits.max, QT_TRANSLATE_NOOP("words", "metres"));
  }
  return claim;
}

/// The options by which a claim is given, one for each kind.
std::vector<OptionSpec> claimOptions() {
  std::vector<OptionSpec> options;
  for (const KindOption& option : kindOptions()) options.push_back(option.spec);
  options.push_back({"--at-most", "", QT_TRANSLATE_NOOP("words", "turns a slope of the neck into an upper bound")});
  options.push_back({"--source", "TEXT", QT_TRANSLATE_NOOP("words", "who claims it")});
  return options;
}

/// The claim that was given; none when no option names one.
std::optional<Claim> claimFrom(const Arguments& arguments) {
  std::optional<Claim> claim;
  for (const KindOption& option : kindOptions()) {
    const auto value = arguments.find(option.spec.name);
    if (!value) continue;
    if (claim)
      refuse(QT_TRANSLATE_NOOP("words", "%1: one claim at a time, or none for those of the project"),
             {option.spec.name});
    claim = readClaim(option, *value);
  }
  if (arguments.has("--at-most")) {
    if (!claim || !traitsOf(claim->kind).bounds)
      refuse(QT_TRANSLATE_NOOP("words", "--at-most goes with --neck-slope-deg or --neck-base-deg"));
    claim->bound = study::Bound::AtMost;
  }
  if (const auto source = arguments.find("--source")) {
    if (!claim) refuse(QT_TRANSLATE_NOOP("words", "--source goes with a claim"));
    claim->source = *source;
  }
  return claim;
}

using ClaimAnswered = std::shared_ptr<const ClaimAnswer>;

ClaimAnswered claimAnswerOf(const Scenario& scenario, const Claim& claim) {
  ClaimAnswered answer = study::claimBook().answer(scenario, claim);
  if (!answer->unanswerable.empty())
    refuse(QT_TRANSLATE_NOOP("words", "%1: %2"), {ui::claimName(claim), ui::say(answer->unanswerable)});
  return answer;
}

/// An answer for people, several lines.
std::string claimText(const Scenario& scenario, const Claim& claim, const ClaimAnswer& answer) {
  constexpr qsizetype kMostStops = 5;
  const ui::ClaimWords words = ui::claimWords(scenario, claim, answer);
  QStringList lines{ui::claimWithSource(claim), "  " + words.verdict};
  for (const QString& stop : words.stops.mid(0, kMostStops))
    lines << "  " + ui::filled(ui::translated(QT_TRANSLATE_NOOP("words", "stopped by %1")), {stop});
  if (words.stops.size() > kMostStops)
    lines << "  " + ui::filled(ui::translated(QT_TRANSLATE_NOOP("words", "further joints: %1")),
                               {QString::number(words.stops.size() - kMostStops)});
  for (const QString& line : words.needs + words.notes) lines << "  " + line;
  return lines.join('\n').toStdString() + "\n";
}

json::Value idsJson(const Scenario& scenario, const std::vector<kinematics::JointIndex>& joints) {
  std::vector<std::string> ids;
  for (const auto joint : joints) ids.push_back(scenario.specimen()[joint].id);
  return json::arrayOf(ids);
}

json::Value stringsJson(const QStringList& texts) {
  std::vector<std::string> items;
  for (const QString& text : texts) items.push_back(text.toStdString());
  return json::arrayOf(items, json::Layout::OnLines);
}

json::Value claimJson(const Scenario& scenario, const Claim& claim, const ClaimAnswer& answer) {
  const ui::ClaimWords words = ui::claimWords(scenario, claim, answer);
  const bool angle = traitsOf(claim.kind).angle;
  std::vector<kinematics::JointIndex> stopping;
  for (const auto& stop : answer.stopping) stopping.push_back(stop.joint);
  const json::Value best = !answer.best ? json::Value()
                           : angle      ? json::degrees(*answer.best)
                                        : json::millionths(*answer.best);
  const json::Value shortBy = angle ? json::degrees(answer.shortBy) : json::millionths(answer.shortBy);
  return json::object({{"claim", words.claim.toStdString()},
                       {"source", claim.source},
                       {"supported", answer.supported},
                       {angle ? "best_deg" : "best_m", best},
                       {angle ? "short_by_deg" : "short_by_m", shortBy},
                       {"stopping_joints", idsJson(scenario, stopping)},
                       {"least_overlap", json::millionths(answer.minOverlap)},
                       {"least_cartilage_percent", json::millionths(answer.minCartilage)},
                       {"most_cartilage_percent", json::millionths(answer.mostCartilage)},
                       {"joints_near_edge", answer.nearEdge.size()},
                       {"near_edge", idsJson(scenario, answer.nearEdge)},
                       {"not_judged", idsJson(scenario, answer.notJudged)},
                       {"beyond_elsewhere", idsJson(scenario, answer.elsewhereBeyond)},
                       {"in_ground_m", json::millionths(answer.inGround)},
                       {"verdict", words.verdict.toStdString()},
                       {"stopping_words", stringsJson(words.stops)},
                       {"needs_words", stringsJson(words.needs)}},
                      json::Layout::OnLines);
}

std::string footText(const files::Project& project) {
  return assumptionsText(project.assumptions) + "  " + ui::claimBasis().toStdString() + "\n";
}

/// The project with the pose that shows the claim, and the claim in its list.
void save(files::Project project, const ChosenPose& chosen, const Claim& claim, const ClaimAnswer& answer,
          const std::string& out) {
  project.pose = answer.pose;
  if (chosen.index) project.poses[*chosen.index].pose = answer.pose;
  if (std::find(project.claims.begin(), project.claims.end(), claim) == project.claims.end())
    project.claims.push_back(claim);
  files::saveProject(project, out);
}

int answerOne(const files::Project& project, const ChosenPose& chosen, const Claim& claim, const Arguments& arguments) {
  const Scenario scenario = scenarioOf(project, chosen.pose);
  const ClaimAnswered answer = claimAnswerOf(scenario, claim);
  const auto out = arguments.find("--out");
  if (out) save(project, chosen, claim, *answer, *out);
  if (arguments.has("--json")) {
    std::cout << json::document(claimJson(scenario, claim, *answer));
  } else {
    std::cout << claimText(scenario, claim, *answer) << footText(project) << (out ? wroteLine(*out) : "");
  }
  return answer->supported ? kDone : kBeyond;
}

int answerAll(const files::Project& project, const ChosenPose& chosen, const Arguments& arguments) {
  if (project.claims.empty())
    refuse(QT_TRANSLATE_NOOP(
        "words", "the project holds no claims; name one, such as --head-height-m 8.5 (zygapose help claim)"));
  if (arguments.has("--out")) refuse(QT_TRANSLATE_NOOP("words", "--out goes with one claim, whose pose is written"));
  const Scenario scenario = scenarioOf(project, chosen.pose);
  bool all = true;
  std::vector<json::Value> jsons;
  std::string text;
  for (const Claim& claim : project.claims) {
    const ClaimAnswered answer = claimAnswerOf(scenario, claim);
    all = all && answer->supported;
    jsons.push_back(claimJson(scenario, claim, *answer));
    text += claimText(scenario, claim, *answer);
  }
  if (arguments.has("--json"))
    std::cout << json::document(json::object({{"claims", json::arrayOf(jsons)}}, json::Layout::OnLines));
  else
    std::cout << text << footText(project);
  return all ? kDone : kBeyond;
}

int claim(const VerbSpec&, const Arguments& arguments) {
  const auto given = claimFrom(arguments);
  auto project = files::readProject(arguments.file);
  project.assumptions = assumptionsFrom(arguments, project.assumptions);
  const auto chosen = choosePose(project, arguments);
  return given ? answerOne(project, chosen, *given, arguments) : answerAll(project, chosen, arguments);
}

std::vector<OptionSpec> claimVerbOptions() {
  std::vector<OptionSpec> all = claimOptions();
  all.push_back({"--pose", "NAME", QT_TRANSLATE_NOOP("words", "takes trunk and limbs from a named pose")});
  all.push_back(
      {"--out", "FILE2.zyga",
       QT_TRANSLATE_NOOP("words", "writes the project with the pose that shows it, and the claim in its list")});
  all.push_back({"--json", "", QT_TRANSLATE_NOOP("words", "the answer for machines")});
  return withAssumptionOptions(std::move(all));
}

}  // namespace

Verb claimVerb() {
  return {{"claim", "FILE.zyga",
           QT_TRANSLATE_NOOP("words", "tells whether a claim is within range, what stops it and what it would take"),
           claimVerbOptions(),
           QT_TRANSLATE_NOOP("words",
                             "Without a claim those of the project are answered. Trunk, limbs and feet stay as posed; "
                             "neck, head and tail bend\n"
                             "up and down only, each joint inside its range. Heights are the snout's. The answer has "
                             "the most that is within\n"
                             "range, the joints that stop it, worst first, the minimum overlap and the cartilage in "
                             "the neck (or tail) at\n"
                             "which the answer changes with everything else as it is, and how many joints are near "
                             "limit in the pose that\n"
                             "shows it. With --out a claim out of range writes the nearest pose; with --pose it also "
                             "replaces the named one.\n"
                             "Exit 1: out of range, with several claims any of them.\n")},
          claim};
}

}  // namespace zyga::app
