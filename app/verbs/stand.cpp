#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>
#include <iostream>

#include "app/verbs/assumption_options.h"
#include "app/verbs/contact_for.h"
#include "app/verbs/project_file.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/files/json/json_write.h"
#include "core/files/project/project_schema.h"
#include "core/kinematics/stand_readings.h"
#include "core/study/stances/stances.h"
#include "ui/words/assumption_words.h"
#include "ui/words/ground_words.h"
#include "ui/words/numbers.h"
#include "ui/words/range_words.h"
#include "ui/words/say.h"

namespace zyga::app {
namespace {

namespace json = files::json;

constexpr double kMisses = 1e-3;  ///< m: what a reader of millimetres would see

/// An animal brought to stand, and how it stands.
struct Stood {
  std::optional<study::Stance> stance;  ///< none: as posed
  study::StanceAnswer answer;
  kinematics::StandReadings readings;
  double snout = 0;  ///< height, m; NaN without a skull
  anatomy::HorizontalBy horizontalBy = anatomy::kUsualHorizontal;
};

std::optional<study::Stance> stanceOf(const Arguments& arguments) {
  const auto given = arguments.find("--stance");
  if (!given) return std::nullopt;
  std::vector<std::string_view> allowed;
  for (const study::Stance stance : study::kStances) {
    if (idOf(stance) == *given) return stance;
    allowed.push_back(idOf(stance));
  }
  refuseChoice("--stance", *given, allowed);
}

Stood standUp(const range::Scenario& present, std::optional<study::Stance> stance, const study::Densities& densities) {
  Stood stood{stance, {}, {}, 0};
  stood.answer = stance ? study::takeStance(present, *stance, densities) : study::standAsPosed(present);
  const auto X_WB = kinematics::forwardKinematics(present.specimen(), present.articulation(), stood.answer.pose);
  stood.readings = kinematics::readStand(present.specimen(), X_WB, present.assumptions().horizontalBy);
  stood.horizontalBy = present.assumptions().horizontalBy;
  stood.snout = kinematics::snoutHeight(present.specimen(), X_WB).value_or(std::nan(""));
  return stood;
}

std::string textOf(const files::Project& project, const Stood& stood) {
  const auto& r = stood.readings;
  const std::string stance =
      stood.stance ? std::string(idOf(*stood.stance)) : said(QT_TRANSLATE_NOOP("words", "stand"));
  QString out = QString::fromStdString(project.table.name + ": " + stance) + "\n";
  const auto line = [&](const QString& what, const QString& value) {
    out += "  " + what.leftJustified(std::max<qsizetype>(24, what.size() + 1)) + value + "\n";
  };
  const auto words = [](const char* english, const QStringList& parts = {}) {
    return ui::filled(ui::translated(english), parts);
  };
  using ui::signedDegrees, ui::metres;
  line(words(QT_TRANSLATE_NOOP("words", "trunk slope")),
       words(QT_TRANSLATE_NOOP("words", "%1 rising forwards, roll %2"),
             {signedDegrees(r.trunkSlope), signedDegrees(r.roll)}));
  line(words(QT_TRANSLATE_NOOP("words", "hip height")), metres(r.hipHeight));
  line(words(QT_TRANSLATE_NOOP("words", "shoulder height")), metres(r.shoulderHeight));
  line(words(QT_TRANSLATE_NOOP("words", "glenoacetabular")), metres(r.glenoacetabular));
  line(words(QT_TRANSLATE_NOOP("words", "base of neck")),
       words(QT_TRANSLATE_NOOP("words", "%1 rising forwards (%2)"),
             {signedDegrees(r.neckBaseSlope), ui::horizontalName(stood.horizontalBy)}));
  line(words(QT_TRANSLATE_NOOP("words", "base of tail")),
       words(QT_TRANSLATE_NOOP("words", "%1 rising backwards"), {signedDegrees(r.tailBaseSlope)}));
  line(words(QT_TRANSLATE_NOOP("words", "shoulder blades")),
       words(QT_TRANSLATE_NOOP("words", "%1 left, %2 right, to the horizontal"),
             {ui::degrees(r.bladeSlope[0]), ui::degrees(r.bladeSlope[1])}));
  line(words(QT_TRANSLATE_NOOP("words", "snout")),
       words(QT_TRANSLATE_NOOP("words", "%1 over the ground"), {metres(stood.snout)}));
  for (const auto& fit : stood.answer.fits) {
    if (fit.miss < kMisses) continue;
    QStringList stopping;
    for (const auto joint : fit.stopping) stopping << QString::fromStdString(project.specimen()[joint].id);
    const QString miss = ui::millimetres(fit.miss, 0);
    line(ui::footName(fit.foot), stopping.isEmpty() ? words(QT_TRANSLATE_NOOP("words", "misses by %1"), {miss})
                                                    : words(QT_TRANSLATE_NOOP("words", "misses by %1; stopped by %2"),
                                                            {miss, ui::inOneLine(stopping)}));
  }
  for (const auto joint : stood.answer.beyond)
    line(QString::fromStdString(project.specimen()[joint].id), words(QT_TRANSLATE_NOOP("words", "out of range")));
  for (const auto& contact : stood.answer.contacts)
    out += "  " +
           words(QT_TRANSLATE_NOOP("words", "%1: %2"),
                 {words(QT_TRANSLATE_NOOP("words", "bones collide")), ui::contactWords(project.specimen(), contact)}) +
           "\n";
  for (const auto& note : stood.answer.notes) out += "  " + ui::say(note) + "\n";
  if (stood.answer.balance)
    if (const QString tail = ui::tailLoadWords(*stood.answer.balance); !tail.isEmpty()) out += "  " + tail + "\n";
  out += QString::fromStdString(contactText(stood.answer.contactJudged));
  return out.toStdString();
}

json::Value footJson(const files::Project& project, const Stood& stood, const kinematics::LegFit& fit) {
  std::vector<std::string> stopping;
  for (const auto joint : fit.stopping) stopping.push_back(project.specimen()[joint].id);
  double height = 0, tilt = 0;
  for (const auto& at : stood.readings.feet) {
    if (at.foot != fit.foot) continue;
    height = at.height;
    tilt = at.tilt;
  }
  return json::object({{"foot", toText(fit.foot)},
                       {"height_mm", json::millionths(height * 1000)},
                       {"tilt_deg", json::degrees(tilt)},
                       {"miss_mm", json::millionths(fit.miss * 1000)},
                       {"stopping_joints", json::arrayOf(stopping)}});
}

/// Null but for an animal that rears.
json::Value tailLoadJson(const std::optional<study::Balance>& balance) {
  if (!balance || !balance->tailLoad) return {};
  return json::object({{"share_least", json::millionths(balance->tailLoad->least)},
                       {"share_most", json::millionths(balance->tailLoad->most)},
                       {"share_middle", json::millionths(balance->tailLoad->middle)},
                       {"feet_margin_m", json::millionths(balance->feetMargin)},
                       {"sentence", ui::tailLoadWords(*balance).toStdString()}});
}

std::string jsonOf(const files::Project& project, const Stood& stood) {
  const auto& r = stood.readings;
  std::vector<json::Value> feet, beyond, notes, contacts;
  for (const auto& contact : stood.answer.contacts)
    contacts.push_back(json::array({project.specimen()[contact.bone].id, project.specimen()[contact.other].id}));
  for (const auto& fit : stood.answer.fits) feet.push_back(footJson(project, stood, fit));
  for (const auto joint : stood.answer.beyond) beyond.push_back(project.specimen()[joint].id);
  for (const auto& note : stood.answer.notes) notes.push_back(ui::say(note).toStdString());
  return json::document(
      json::object({{"specimen", project.table.name},
                    {"stance", stood.stance ? idOf(*stood.stance) : "stand"},
                    {"complete", stood.answer.complete()},
                    {"trunk_slope_deg", json::degrees(r.trunkSlope)},
                    {"roll_deg", json::degrees(r.roll)},
                    {"hip_height_m", json::millionths(r.hipHeight)},
                    {"shoulder_height_m", json::millionths(r.shoulderHeight)},
                    {"glenoacetabular_distance_m", json::millionths(r.glenoacetabular)},
                    {"neck_base_slope_deg", json::degrees(r.neckBaseSlope)},
                    {"horizontal_by", files::schema::wordOf(files::schema::kHorizontalBy, stood.horizontalBy)},
                    {"tail_base_slope_deg", json::degrees(r.tailBaseSlope)},
                    {"blade_slope_deg", json::array({json::degrees(r.bladeSlope[0]), json::degrees(r.bladeSlope[1])})},
                    {"snout_height_m", json::millionths(stood.snout)},
                    {"feet", json::arrayOf(feet, json::Layout::OnLines)},
                    {"beyond", json::arrayOf(beyond)},
                    {"contact_judged", stood.answer.contactJudged},
                    {"contacts", json::arrayOf(contacts)},
                    {"short_by_mm", json::millionths(stood.answer.shortBy * 1000)},
                    {"notes", json::arrayOf(notes)},
                    {"tail_load", tailLoadJson(stood.answer.balance)}},
                   json::Layout::OnLines));
}

int stand(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  const auto stance = stanceOf(arguments);
  auto project = openProject(arguments.file);
  project.assumptions = assumptionsFrom(arguments, project.assumptions);
  const auto chosen = choosePose(project, arguments);
  const auto stood =
      standUp(scenarioOf(project, chosen.pose, contactFor(project, arguments)), stance, project.densities);
  project.pose = stood.answer.pose;
  if (chosen.index) project.poses[*chosen.index].pose = project.pose;
  const bool forMachines = arguments.has("--json");
  const auto wrote = saveProject(project, out, forMachines);
  std::cout << (forMachines ? jsonOf(project, stood) : textOf(project, stood) + wrote);
  return stood.answer.complete() ? kDone : kBeyond;
}

}  // namespace

Verb standVerb() {
  return {
      {"stand", "FILE.zyga",
       QT_TRANSLATE_NOOP("words", "puts the animal on its feet, as it is or in a stance, and writes the project anew"),
       withAssumptionOptions(withContactOptions(
           {{"--stance", "WORD",
             QT_TRANSLATE_NOOP(
                 "words", "alert, browse, drink, walk-1 to walk-4 or rear; without it the limbs stay as they are")},
            {"--pose", "NAME", QT_TRANSLATE_NOOP("words", "starts from a named pose")},
            {"--out", "FILE2.zyga", QT_TRANSLATE_NOOP("words", "the project to write")},
            {"--json", "", QT_TRANSLATE_NOOP("words", "the readings for machines")}})),
       QT_TRANSLATE_NOOP(
           "words",
           "Without --stance the height, slope and roll of the trunk follow from the limbs as they are; "
           "feet held well over\n"
           "their fellow's ground do not carry. A stance sets everything anew but the shoulder blades; "
           "walk-1 to walk-4 are\n"
           "the moments at which left hind, left fore, right hind and right fore foot swing. Slopes are "
           "to the horizontal;\n"
           "the trunk's is that of the line through the dorsal centra, the neck's that of the last "
           "cervical (--horizontal-by), the\n"
           "tail's that of the line through the first five caudals. The result becomes the present pose; "
           "with --pose it\n"
           "also replaces the named one. Exit 1: a foot misses, a joint is out of range, bones collide, or "
           "the stance falls short; the\n"
           "project is written all the same.\n")},
      stand};
}

}  // namespace zyga::app
