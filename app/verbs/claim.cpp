#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>
#include <iostream>
#include <numbers>

#include "app/verbs/assumption_options.h"
#include "app/verbs/assumptions_words.h"
#include "app/verbs/contact_for.h"
#include "app/verbs/project_file.h"
#include "app/verbs/sculpting.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/files/json/json_write.h"
#include "core/files/project/project_measures.h"
#include "core/study/claims/claim_book.h"
#include "ui/words/claim_words.h"
#include "ui/words/range_words.h"
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

/// A claim that has been answered. The probability is missing where the claim is not answered.
struct ClaimAnswered {
  Claim claim;
  std::shared_ptr<const ClaimAnswer> answer;
  std::shared_ptr<const study::ClaimProbability> probability;
};

/// What claims are put to.
struct ClaimGround {
  Scenario scenario;
  study::Measures measures;
  study::ProbabilityOptions options;
};

ClaimGround groundOf(const files::Project& project, const ChosenPose& chosen, const Arguments& arguments) {
  ClaimGround ground{scenarioOf(project, chosen.pose, contactFor(project, arguments)), files::measuresOf(project), {}};
  if (const auto samples = arguments.find("--samples"))
    ground.options.samples = static_cast<int>(numberOf({"--samples", *samples}, study::kLeastSamples, 100000,
                                                       QT_TRANSLATE_NOOP("words", "a whole number of samples")));
  if (const auto seed = arguments.find("--seed"))
    ground.options.seed = static_cast<std::uint64_t>(
        numberOf({"--seed", *seed}, 0, 4294967295.0, QT_TRANSLATE_NOOP("words", "a whole number")));
  return ground;
}

ClaimAnswered claimAnswerOf(const ClaimGround& ground, const Claim& claim) {
  ClaimAnswered answered{claim, study::claimBook().answer(ground.scenario, claim), nullptr};
  if (!answered.answer->unanswerable.empty())
    refuse(QT_TRANSLATE_NOOP("words", "%1: %2"), {ui::claimName(claim), ui::say(answered.answer->unanswerable)});
  return answered;
}

/// The probabilities of all that have an answer.
void addProbabilities(const ClaimGround& ground, std::vector<ClaimAnswered>& all) {
  std::vector<Claim> claims;
  for (const ClaimAnswered& one : all)
    if (one.answer->answered()) claims.push_back(one.claim);
  const auto found =
      study::claimBook().probabilities(ground.scenario, claims, ground.measures, ground.options,
                                       taskAtTerminal(QT_TRANSLATE_NOOP("words", "working out the probability")));
  auto next = found.begin();
  for (ClaimAnswered& one : all)
    if (one.answer->answered() && next != found.end()) one.probability = *next++;
}

/// An answer for people, several lines.
std::string claimText(const Scenario& scenario, const ClaimAnswered& answered) {
  constexpr qsizetype kMostStops = 5;
  const ui::ClaimWords words = ui::claimWords(scenario, answered.claim, *answered.answer);
  QStringList lines{ui::claimWithSource(answered.claim)};
  if (answered.probability) lines << "  " + ui::probabilityWords(*answered.probability);
  lines << "  " + words.verdict;
  if (!words.tally.isEmpty()) lines << "  " + words.tally;
  for (const QString& stop : words.stops.mid(0, kMostStops))
    lines << "  " + ui::filled(ui::translated(QT_TRANSLATE_NOOP("words", "stopped by %1")), {stop});
  if (words.stops.size() > kMostStops)
    lines << "  " + ui::filled(ui::translated(QT_TRANSLATE_NOOP("words", "further joints: %1")),
                               {QString::number(words.stops.size() - kMostStops)});
  for (const QString& line : words.needs + words.beside + words.notes) lines << "  " + line;
  if (answered.probability)
    for (const QString& line : ui::probabilityNotes(*answered.probability)) lines << "  " + line;
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

json::Value claimContactsJson(const Scenario& scenario, const study::ClaimContact& contact) {
  if (!contact.judged) return {};
  std::vector<json::Value> items;
  for (const range::ContactFinding& finding : contact.findings)
    items.push_back(json::object({{"bone", scenario.specimen()[finding.bone].id},
                                  {"other", scenario.specimen()[finding.other].id},
                                  {"depth_mm", json::millionths(finding.depth * 1000)},
                                  {"tolerated_mm", json::millionths(finding.tolerated * 1000)},
                                  {"sentence", ui::contactWords(scenario.specimen(), finding).toStdString()}}));
  return json::arrayOf(items, json::Layout::OnLines);
}

json::Value tallyJson(const range::EvidenceTally& tally) {
  return json::object({{"measured", tally.measured},
                       {"partly", tally.partly},
                       {"inferred", tally.inferred},
                       {"default", tally.byDefault}});
}

/// The members that tell of a probability; all null where there is none.
void addProbability(const study::ClaimProbability* probability, json::Value& json) {
  const bool any = probability && probability->answered() > 0;
  const auto whole = [&](auto value) { return probability ? json::Value(value) : json::Value(); };
  json.add("probability", any ? json::millionths(probability->probability) : json::Value());
  json.add("probability_standard_error", any ? json::millionths(probability->standardError) : json::Value());
  json.add("likelihood", any ? json::Value(toText(study::likelihoodOf(probability->probability))) : json::Value());
  json.add("samples", whole(probability ? probability->options.samples : 0));
  json.add("samples_not_answered", whole(probability ? probability->notAnswered : 0));
  json.add("samples_failed", whole(probability ? probability->failed : 0));
  json.add("seed", whole(probability ? probability->options.seed : 0));
  json.add("probability_words",
           probability ? json::Value(ui::probabilityWords(*probability).toStdString()) : json::Value());
}

/// A value that is told in the unit of the claim, under a key that ends with that unit.
void addClaimed(json::Value& json, const Claim& claim, const std::string& key, const std::optional<double>& value) {
  const bool angle = traitsOf(claim.kind).angle;
  json.add(key + (angle ? "_deg" : "_m"), !value  ? json::Value()
                                          : angle ? json::degrees(*value)
                                                  : json::millionths(*value));
}

json::Value marginJson(const std::optional<double>& angle) { return angle ? json::degrees(*angle) : json::Value(); }

json::Value dorsalsJson(const Scenario& scenario, const Claim& claim,
                        const std::optional<study::ClaimDorsals>& dorsals) {
  if (!dorsals) return {};
  std::vector<json::Value> turned;
  for (const double turn : dorsals->turned) turned.push_back(json::degrees(turn));
  json::Value json = json::object({{"joints", idsJson(scenario, dorsals->joints)}, {"supported", dorsals->supported}});
  addClaimed(json, claim, "best", dorsals->best);
  addClaimed(json, claim, "gain", dorsals->gain);
  json.add("turned_deg", json::arrayOf(turned));
  return json;
}

json::Value habitJson(const Claim& claim, const std::optional<study::ClaimHabit>& habit) {
  if (!habit) return {};
  json::Value json = json::object({});
  addClaimed(json, claim, "undeflected", habit->undeflected);
  json.add("undeflected_as_claimed", habit->undeflectedShows);
  json.add("undeflected_source", said(study::kUndeflectedSource));
  addClaimed(json, claim, "extended", habit->extended);
  json.add("extended_as_claimed", habit->extendedShows);
  json.add("extended_collides", habit->extendedCollides);
  json.add("extended_source", said(study::kExtendedSource));
  json.add("share_from_undeflected", json::millionths(habit->share));
  return json;
}

json::Value claimJson(const Scenario& scenario, const ClaimAnswered& answered) {
  const Claim& claim = answered.claim;
  const ClaimAnswer& answer = *answered.answer;
  const ui::ClaimWords words = ui::claimWords(scenario, claim, answer);
  const bool angle = traitsOf(claim.kind).angle;
  const auto idsOf = [&](const std::vector<study::ClaimStop>& stops) {
    std::vector<kinematics::JointIndex> joints;
    for (const auto& stop : stops) joints.push_back(stop.joint);
    return idsJson(scenario, joints);
  };
  const json::Value best = !answer.best ? json::Value()
                           : angle      ? json::degrees(*answer.best)
                                        : json::millionths(*answer.best);
  const json::Value shortBy = angle ? json::degrees(answer.shortBy) : json::millionths(answer.shortBy);
  json::Value json = json::object({{"claim", words.claim.toStdString()},
                                   {"source", claim.source},
                                   {"supported", answer.supported},
                                   {angle ? "best_deg" : "best_m", best},
                                   {angle ? "short_by_deg" : "short_by_m", shortBy}},
                                  json::Layout::OnLines);
  addProbability(answered.probability.get(), json);
  json.add("tally", tallyJson(answer.tally));
  json.add("not_answered", idsOf(answer.notAnswered));
  json.add("contact_judged", answer.contact.judged);
  json.add("only_with_collisions", answer.contact.onlyColliding);
  json.add("contacts", claimContactsJson(scenario, answer.contact));
  json.add("stopping_joints", idsOf(answer.stopping));
  json.add("least_overlap", json::millionths(answer.minOverlap));
  json.add("least_cartilage_percent", json::millionths(answer.minCartilage));
  json.add("most_cartilage_percent", json::millionths(answer.mostCartilage));
  const study::ClaimMargin margin = answer.margin.value_or(study::ClaimMargin{});
  json.add("narrowed_by_deg", marginJson(margin.narrowing));
  json.add("widened_by_deg", marginJson(margin.widening));
  json.add("with_foremost_dorsals", dorsalsJson(scenario, claim, answer.dorsals));
  json.add("habitual", habitJson(claim, answer.habit));
  json.add("joints_near_edge", answer.nearEdge.size());
  json.add("near_edge", idsJson(scenario, answer.nearEdge));
  json.add("not_judged", idsJson(scenario, answer.notJudged));
  json.add("beyond_elsewhere", idsJson(scenario, answer.elsewhereBeyond));
  json.add("in_ground_m", json::millionths(answer.inGround));
  json.add("verdict", words.verdict.toStdString());
  json.add("stopping_words", stringsJson(words.stops));
  json.add("needs_words", stringsJson(words.needs));
  json.add("beside_words", stringsJson(words.beside));
  return json;
}

/// What all answers take for granted, and what the samples vary.
std::string footText(const files::Project& project, const std::vector<ClaimAnswered>& answers) {
  std::string text = assumptionsText(project.assumptions) + "  " + ui::claimBasis().toStdString() + "\n";
  if (std::any_of(answers.begin(), answers.end(), [](const auto& one) { return one.answer->habit.has_value(); }))
    text += "  " + ui::habitBasis().toStdString() + "\n";
  for (const ClaimAnswered& answered : answers) {
    if (!answered.probability) continue;
    return text + "  " + ui::probabilityBasis(*answered.probability).toStdString() + "\n";
  }
  return text;
}

/// The project with the pose that shows the claim, and the claim in its list. Returns what is to be told of it.
std::string save(files::Project project, const ChosenPose& chosen, const Claim& claim, const ClaimAnswer& answer,
                 const std::string& out, bool forMachines) {
  project.pose = answer.pose;
  if (chosen.index) project.poses[*chosen.index].pose = answer.pose;
  if (std::find(project.claims.begin(), project.claims.end(), claim) == project.claims.end())
    project.claims.push_back(claim);
  return saveProject(project, out, forMachines);
}

int answerOne(const files::Project& project, const ChosenPose& chosen, const Claim& claim, const Arguments& arguments) {
  const ClaimGround ground = groundOf(project, chosen, arguments);
  std::vector<ClaimAnswered> answers{claimAnswerOf(ground, claim)};
  addProbabilities(ground, answers);
  const ClaimAnswered& answered = answers.front();
  const auto out = arguments.find("--out");
  const bool forMachines = arguments.has("--json");
  const auto wrote = out ? save(project, chosen, claim, *answered.answer, *out, forMachines) : std::string();
  if (forMachines) {
    std::cout << json::document(claimJson(ground.scenario, answered));
  } else {
    std::cout << claimText(ground.scenario, answered) << footText(project, {answered}) << wrote;
  }
  return answered.answer->supported ? kDone : kBeyond;
}

int answerAll(const files::Project& project, const ChosenPose& chosen, const Arguments& arguments) {
  if (project.claims.empty())
    refuse(QT_TRANSLATE_NOOP(
        "words", "the project holds no claims; name one, such as --head-height-m 8.5 (zygapose help claim)"));
  if (arguments.has("--out")) refuse(QT_TRANSLATE_NOOP("words", "--out goes with one claim, whose pose is written"));
  const ClaimGround ground = groundOf(project, chosen, arguments);
  bool all = true;
  std::vector<ClaimAnswered> answers;
  std::vector<json::Value> jsons;
  std::string text;
  for (const Claim& claim : project.claims) answers.push_back(claimAnswerOf(ground, claim));
  addProbabilities(ground, answers);
  for (const ClaimAnswered& answered : answers) {
    all = all && answered.answer->supported;
    jsons.push_back(claimJson(ground.scenario, answered));
    text += claimText(ground.scenario, answered);
  }
  if (arguments.has("--json"))
    std::cout << json::document(json::object({{"claims", json::arrayOf(jsons)}}, json::Layout::OnLines));
  else
    std::cout << text << footText(project, answers);
  return all ? kDone : kBeyond;
}

int claim(const VerbSpec&, const Arguments& arguments) {
  const auto given = claimFrom(arguments);
  auto project = openProject(arguments.file);
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
  all.push_back({"--samples", "N", QT_TRANSLATE_NOOP("words", "how many samples the probability rests on; else 1000")});
  all.push_back(
      {"--seed", "N", QT_TRANSLATE_NOOP("words", "of the samples; the same seed gives the same numbers; else 1")});
  all.push_back({"--json", "", QT_TRANSLATE_NOOP("words", "the answer for machines")});
  return withAssumptionOptions(withContactOptions(std::move(all)));
}

}  // namespace

Verb claimVerb() {
  return {
      {"claim", "FILE.zyga",
       QT_TRANSLATE_NOOP("words", "tells whether a claim is within range, what stops it and what it would take"),
       claimVerbOptions(),
       QT_TRANSLATE_NOOP("words",
                         "Without a claim those of the project are answered. Trunk, limbs and feet stay as posed; "
                         "neck, head and tail bend\n"
                         "up and down only, each joint inside its range, no bones colliding. Heights are the "
                         "snout's. The answer has the most\n"
                         "that is within range, the joints that stop it, worst first, the minimum overlap and the "
                         "cartilage in the neck (or\n"
                         "tail) at which the answer changes with everything else as it is, the degrees by which all "
                         "ranges may be narrower or\n"
                         "have to be wider, and how many joints are near limit in the pose that shows it. Beside it "
                         "stand the answer with the\n"
                         "foremost three dorsals bending as well, and what is claimed in the two postures published "
                         "as habitual.\n"
                         "Its probability is the share of samples in which the claim is within range: they vary "
                         "measures, shapes of\n"
                         "deformed bones, assumptions and definitions. With --out a claim out of range writes the "
                         "nearest pose; with --pose it\n"
                         "also replaces the named one.\n"
                         "Exit 1: out of range or not answered, with several claims any of them.\n")},
      claim};
}

}  // namespace zyga::app
