#include <QCoreApplication>
#include <algorithm>
#include <iostream>

#include "app/verbs/project_file.h"
#include "app/verbs/text_table.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/files/json/json_write.h"
#include "core/study/mass/balance.h"
#include "ui/words/ground_words.h"
#include "ui/words/numbers.h"
#include "ui/words/report_words.h"
#include "ui/words/say.h"

namespace zyga::app {
namespace {

namespace json = files::json;

using range::Scenario;
using study::BodyPart;

/// What the verb has found about a project.
struct MassReport {
  const Scenario& scenario;
  std::string poseName;
  study::Densities densities;
  std::optional<study::CircumferenceMass> equation;
  study::Balance balance;
};

std::string estimate() { return said(QT_TRANSLATE_NOOP("words", "An estimate, not an engineering document.")); }

std::string rangeText(const study::MassRange& mass) { return ui::massAndMiddle(mass).toStdString(); }

json::Value rangeJson(const study::MassRange& mass, json::Layout layout) {
  return json::object({{"mass_kg", json::millionths(mass.mass)},
                       {"low_kg", json::millionths(mass.low)},
                       {"high_kg", json::millionths(mass.high)}},
                      layout);
}

/// "fore_limbs"
std::string wordOf(BodyPart part) {
  std::string word(idOf(part));
  std::replace(word.begin(), word.end(), ' ', '_');
  return word;
}

json::Value partsJson(const MassReport& report) {
  std::vector<json::Value> parts;
  for (const auto part : study::kAllBodyParts) {
    const auto i = static_cast<std::size_t>(part);
    const study::BodyMass& body = report.balance.body;
    parts.push_back(json::object({{"part", wordOf(part)},
                                  {"density_kg_m3", json::millionths(report.densities[part])},
                                  {"density_error_percent", json::millionths(100 * study::kDensityErrors[i])},
                                  {"hull_factor", json::millionths(report.densities.hullFactors[i])},
                                  {"hull_factor_error_percent", json::millionths(100 * study::kHullFactorErrors[i])},
                                  {"mass_kg", json::millionths(body.byPart[i])},
                                  {"low_kg", json::millionths(body.ranges[i].low)},
                                  {"high_kg", json::millionths(body.ranges[i].high)},
                                  {"outside_hull_kg", json::millionths(body.flesh[i])}}));
  }
  return json::arrayOf(parts, json::Layout::OnLines);
}

json::Value balanceJson(const study::Balance& balance, const Eigen::Vector2d& forward) {
  std::vector<json::Value> feet;
  for (const auto foot : balance.planted) feet.push_back(toText(foot));
  const auto load = [&balance](double study::TailLoad::*share) {
    return balance.tailLoad ? json::millionths((*balance.tailLoad).*share) : json::Value();
  };
  return json::object(
      {{"planted", json::arrayOf(feet)},
       {"on_tail", balance.onTail},
       {"inside", balance.inside()},
       {"margin_m", json::millionths(balance.margin)},
       {"fore_share", json::millionths(balance.foreShare)},
       {"feet_margin_m", json::millionths(balance.feetMargin)},
       {"tail_share_least", load(&study::TailLoad::least)},
       {"tail_share_most", load(&study::TailLoad::most)},
       {"tail_share_middle", balance.tailLoad ? json::millionths(balance.tailLoad->middle) : json::Value()},
       {"tail_sentence", ui::tailLoadWords(balance).toStdString()},
       {"sentence", ui::balanceWords(balance, forward).toStdString()}});
}

json::Value equationMember(const std::optional<study::CircumferenceMass>& equation) {
  if (!equation) return {};
  auto members = rangeJson(equation->mass, json::Layout::OnOneLine);
  members.add("circumferences", equation->measured ? "measured" : "inferred");
  members.add("source", said(study::kCircumferenceSource));
  return members;
}

/// Empty where the two estimates overlap, or there is only one.
reason::Reason apartOf(const MassReport& report) {
  return report.equation ? study::disagreement(report.balance.body.mass, report.equation->mass) : reason::Reason();
}

Eigen::Vector2d forwardOf(const MassReport& report) { return report.scenario.pose().X_WRoot.linear().col(0).head<2>(); }

std::string equationText(const study::MassRange& mass) {
  return said(QT_TRANSLATE_NOOP("words", "mass by circumference: %1"), {rangeText(mass)}) + "\n  " +
         said(QT_TRANSLATE_NOOP("words", "log10 M(g) = 2.749 log10(humerus + femur, mm) - 1.104, %1; %2"),
              {ui::say(study::kCircumferenceSource), ui::circumferenceErrorWords()}) +
         "\n" + estimate() + "\n";
}

std::string equationJson(const study::MassRange& mass) {
  auto members = rangeJson(mass, json::Layout::OnLines);
  members.add("error_percent", json::millionths(study::kCircumferenceError * 100));
  members.add("source", said(study::kCircumferenceSource));
  members.add("note", estimate());
  return json::document(members);
}

std::string massText(const MassReport& report) {
  const auto& balance = report.balance;
  std::string text = said(QT_TRANSLATE_NOOP("words", "mass by volume: %1"), {rangeText(balance.body.mass)}) + "\n  " +
                     said(QT_TRANSLATE_NOOP("words", "hulls around the bones x %1 x density; %2"),
                          {ui::hullFactorWords(report.densities), ui::say(study::kHullSource)}) +
                     "\n";
  std::vector<TextRow> rows{{said(QT_TRANSLATE_NOOP("words", "part")), "kg/m3", "\u00B1",
                             said(QT_TRANSLATE_NOOP("words", "hull factor")), "\u00B1", "kg",
                             said(QT_TRANSLATE_NOOP("words", "low")), said(QT_TRANSLATE_NOOP("words", "high"))}};
  for (const auto part : study::kAllBodyParts) {
    const auto i = static_cast<std::size_t>(part);
    const auto mass = [](double kilograms) { return ui::roughly(kilograms).toStdString(); };
    rows.push_back({ui::bodyPartName(part).toStdString(), ui::plain(report.densities[part], 0).toStdString(),
                    ui::percent(study::kDensityErrors[i]).toStdString(),
                    ui::plain(report.densities.hullFactors[i], 2).toStdString(),
                    ui::percent(study::kHullFactorErrors[i]).toStdString(), mass(balance.body.byPart[i]),
                    mass(balance.body.ranges[i].low), mass(balance.body.ranges[i].high)});
  }
  text += textTable(rows, {true, false, false, false, false, false, false, false});
  text += "  " + ui::partErrorsWords().toStdString() + "\n  " +
          ui::tailFleshWords(balance.body, forwardOf(report)).toStdString() + "\n";
  if (report.equation) {
    text += said(QT_TRANSLATE_NOOP("words", "mass by circumference: %1"), {rangeText(report.equation->mass)}) + "\n  " +
            said(report.equation->measured
                     ? QT_TRANSLATE_NOOP("words", "from measured circumferences of humerus and femur; %1")
                     : QT_TRANSLATE_NOOP("words", "from inferred circumferences of humerus and femur; %1"),
                 {ui::say(study::kCircumferenceSource)}) +
            "\n  " + ui::circumferenceErrorWords().toStdString() + "\n";
    if (const auto apart = apartOf(report); !apart.empty()) text += "  " + ui::say(apart).toStdString() + "\n";
  }
  text += said(QT_TRANSLATE_NOOP("words", "balance of the %1: centre of mass %2 over the ground"),
               {report.poseName, ui::metres(balance.body.p_WCentre.z())}) +
          "\n  " + ui::balanceWords(balance, forwardOf(report)).toStdString() + "\n";
  if (const QString tail = ui::tailLoadWords(balance); !tail.isEmpty()) text += "  " + tail.toStdString() + "\n";
  if (balance.foreShare)
    text +=
        "  " +
        said(QT_TRANSLATE_NOOP("words", "The fore feet carry %1 of the weight."), {ui::percent(*balance.foreShare)}) +
        "\n";
  return text + estimate() + "\n";
}

std::string massJson(const MassReport& report) {
  auto members = rangeJson(report.balance.body.mass, json::Layout::OnLines);
  members.add("source", said(study::kHullSource));
  members.add("parts", partsJson(report));
  members.add(
      "tail_error_moves_centre_m",
      json::millionths(
          study::shiftOfCentre(report.balance.body, BodyPart::Tail).head<2>().dot(forwardOf(report).normalized())));
  members.add("by_circumference", equationMember(report.equation));
  const reason::Reason apart = apartOf(report);
  members.add("disagreement", apart.empty() ? json::Value() : json::Value(ui::say(apart).toStdString()));
  members.add("pose", report.poseName);
  members.add("centre_of_mass_m", json::point(report.balance.body.p_WCentre));
  members.add("balance", balanceJson(report.balance, forwardOf(report)));
  members.add("note", estimate());
  return json::document(members);
}

/// Metres from an option in mm; nothing when it was not given.
std::optional<double> millimetresOf(const Arguments& arguments, std::string_view name) {
  std::optional<double> value;
  for (const auto& option : arguments.options) {
    if (option.name == name) value = numberOf(option, 1, 5000, "mm") / 1000;
  }
  return value;
}

/// What a number by part is, and what it may be.
struct PartNumber {
  std::array<double, study::kBodyParts>& values;
  double least, most;
  const char* unit;
  const char* example;  ///< "neck=600"
};

/// "neck=600"
void setPart(const GivenOption& option, const PartNumber& number) {
  const auto equals = option.value.find('=');
  std::string word = option.value.substr(0, equals);
  std::replace(word.begin(), word.end(), '_', ' ');
  QStringList parts;
  for (const BodyPart part : study::kAllBodyParts) {
    parts << QString::fromUtf8(idOf(part));
    if (word != idOf(part) || equals == std::string::npos) continue;
    number.values[static_cast<std::size_t>(part)] =
        numberOf({option.name + " " + word, option.value.substr(equals + 1)}, number.least, number.most, number.unit);
    return;
  }
  refuse(QT_TRANSLATE_NOOP("words", "%1: '%2' is not a part and its number; write %3, one of %4"),
         {option.name, option.value, number.example, ui::inOneLine(parts)});
}

void setParts(const Arguments& arguments, study::Densities& densities) {
  for (const auto& option : arguments.options) {
    if (option.name == "--density")
      setPart(option, {densities.byPart, study::kLeastDensity, study::kMostDensity, "kg/m3", "neck=600"});
    if (option.name == "--hull-factor")
      setPart(option, {densities.hullFactors, study::kLeastHullFactor, study::kMostHullFactor,
                       QT_TRANSLATE_NOOP("words", "times the hull's volume"), "tail=1.4"});
  }
}

int equationAlone(const VerbSpec& spec, const Arguments& arguments) {
  for (const std::string_view name : {"--pose", "--density", "--hull-factor"}) {
    if (arguments.has(name)) refuse(QT_TRANSLATE_NOOP("words", "%1 needs a %2"), {name, spec.file});
  }
  const auto humerus = millimetresOf(arguments, "--humerus-mm"), femur = millimetresOf(arguments, "--femur-mm");
  if (!humerus || !femur) {
    refuse(QT_TRANSLATE_NOOP(
        "words", "give both --humerus-mm and --femur-mm, the minimum circumferences of the shafts, or a project"));
  }
  const auto mass = study::massFromCircumferences(*humerus, *femur);
  std::cout << (arguments.has("--json") ? equationJson(mass) : equationText(mass));
  return kDone;
}

int ofProject(const Arguments& arguments) {
  for (const std::string_view name : {"--humerus-mm", "--femur-mm"}) {
    if (arguments.has(name)) {
      refuse(QT_TRANSLATE_NOOP("words", "%1 and a project do not go together: the project has its own circumferences"),
             {name});
    }
  }
  const auto project = openProject(arguments.file);
  const auto chosen = choosePose(project, arguments);
  auto densities = project.densities;
  setParts(arguments, densities);
  const Scenario scenario = scenarioOf(project, chosen.pose);
  const MassReport report{scenario, chosen.name, densities, study::massFromCircumferences(project.table),
                          study::balanceOf(scenario, study::bodySegments(scenario), densities)};
  std::cout << (arguments.has("--json") ? massJson(report) : massText(report));
  return kDone;
}

int mass(const VerbSpec& spec, const Arguments& arguments) {
  return arguments.file.empty() ? equationAlone(spec, arguments) : ofProject(arguments);
}

}  // namespace

Verb massVerb() {
  return {
      {"mass",
       "[FILE.zyga]",
       QT_TRANSLATE_NOOP("words", "mass as a range, from two circumferences or from the body's volume, and balance"),
       {{"--humerus-mm", "C", QT_TRANSLATE_NOOP("words", "minimum shaft circumference of the humerus; without a file")},
        {"--femur-mm", "C", QT_TRANSLATE_NOOP("words", "minimum shaft circumference of the femur; without a file")},
        {"--pose", "NAME", QT_TRANSLATE_NOOP("words", "balance of a named pose")},
        {"--density", "PART=D",
         QT_TRANSLATE_NOOP("words", "kg/m3 of head, neck, trunk, tail, fore_limbs or hind_limbs; may be repeated")},
        {"--hull-factor", "PART=F",
         QT_TRANSLATE_NOOP("words",
                           "volume of a part over that of the hull around its bones, flesh included; else 1.21")},
        {"--json", "", QT_TRANSLATE_NOOP("words", "prints the figures for machines")}},
       QT_TRANSLATE_NOOP(
           "words",
           "Every mass is an estimate and given with its low and high. Circumferences: Campione & Evans 2012, mean "
           "error\n"
           "25.63\u00A0%, not a bound. Volume: convex hulls around the bones x 1.21 x density (Sellers et al. 2012), "
           "error "
           "20\u00A0% (Brassey &\n"
           "Sellers 2014). Balance is told of the pose as it stands; this is not an engineering document.\n")},
      mass};
}

}  // namespace zyga::app
