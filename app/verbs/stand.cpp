#include <algorithm>
#include <cmath>
#include <iostream>

#include "app/verbs/assumption_options.h"
#include "app/verbs/project_file.h"
#include "app/verbs/summary_text.h"
#include "app/verbs/verbs.h"
#include "core/files/json/json.h"
#include "core/files/json/json_layout.h"
#include "core/kinematics/stand_readings.h"
#include "core/kinematics/standing.h"
#include "core/study/stances/stances.h"

namespace zyga::app {
namespace {

using files::jsonString;
using files::list;
using files::member;
using files::onLines;
using files::onOneLine;

constexpr double kMisses = 1e-3;  ///< m: what a reader of millimetres would see

/// An animal brought to stand, and how it stands.
struct Stood {
  std::string stance;  ///< "stand", "alert"...
  study::StanceAnswer answer;
  kinematics::StandReadings readings;
  double snout = 0;  ///< height, m; NaN without a skull
};

std::optional<study::Stance> stanceOf(const Arguments& arguments) {
  const auto given = arguments.find("--stance");
  if (!given) return std::nullopt;
  std::string allowed;
  for (const auto& words : study::stanceWords()) {
    if (words.word == *given) return words.stance;
    allowed += (allowed.empty() ? "" : ", ") + std::string(words.word);
  }
  throw BadInput("--stance: '" + *given + "' is not among " + allowed);
}

/// On its feet with the limbs as they are: what each foot misses is its height over the ground.
study::StanceAnswer plainStand(const files::Project& project, const kinematics::Articulation& articulation,
                               const kinematics::Pose& pose) {
  const auto& specimen = project.specimen;
  study::StanceAnswer answer;
  const auto carrying = kinematics::carryingFeet(specimen, articulation, pose);
  answer.pose = kinematics::stand(specimen, articulation, pose, carrying);
  const auto X_WB = kinematics::place(specimen, articulation, answer.pose);
  for (const auto& at : kinematics::footPlaces(specimen, X_WB)) {
    const bool carries = std::find(carrying.begin(), carrying.end(), at.foot) != carrying.end();
    answer.fits.push_back({at.foot, carries ? at.height : 0, at.tilt, 0, {}});
    if (carries) answer.shortBy = std::max(answer.shortBy, at.height < kMisses ? 0 : at.height);
    if (!carries) answer.notes.push_back("The " + std::string(toText(at.foot)) + " is held up and does not carry.");
  }
  const auto assessment = assessmentOf(project, answer.pose);
  for (const auto& verdict : assessment.joints) {
    if (verdict.level == range::Level::Beyond) answer.beyond.push_back(verdict.joint);
  }
  return answer;
}

Stood standUp(const files::Project& project, const kinematics::Pose& pose, std::optional<study::Stance> stance) {
  const auto articulation = articulationOf(project);
  Stood stood{"stand", {}, {}, 0};
  if (stance) {
    stood.stance = wordsOf(*stance).word;
    stood.answer = study::takeStance(project.specimen, articulation, project.assumptions, pose, *stance);
  } else {
    stood.answer = plainStand(project, articulation, pose);
  }
  const auto X_WB = kinematics::place(project.specimen, articulation, stood.answer.pose);
  stood.readings = kinematics::readStand(project.specimen, X_WB);
  stood.snout = kinematics::snoutHeight(project.specimen, X_WB).value_or(std::nan(""));
  return stood;
}

std::string metres(double length) { return fixed(length, 2) + " m"; }
std::string degrees(double angle) { return degreesText(angle) + "°"; }

std::string textOf(const files::Project& project, const Stood& stood) {
  const auto& r = stood.readings;
  std::string out = project.table.name + ": " + stood.stance + "\n";
  const auto line = [&](const std::string& what, const std::string& value) {
    out += "  " + what + std::string(what.size() < 24 ? 24 - what.size() : 1, ' ') + value + "\n";
  };
  line("trunk slope", degrees(r.trunkSlope) + " rising forwards, roll " + degrees(r.roll));
  line("hip height", metres(r.hipHeight));
  line("shoulder height", metres(r.shoulderHeight));
  line("glenoacetabular", metres(r.glenoacetabular));
  line("base of neck", degrees(r.neckBaseSlope) + " rising forwards");
  line("base of tail", degrees(r.tailBaseSlope) + " rising backwards");
  line("shoulder blades",
       degrees(r.bladeSlope[0]) + " left, " + degrees(r.bladeSlope[1]) + " right, to the horizontal");
  line("snout", metres(stood.snout) + " over the ground");
  for (const auto& fit : stood.answer.fits) {
    if (fit.miss < kMisses) continue;
    std::string stopping;
    for (const auto joint : fit.stopping)
      stopping += (stopping.empty() ? "; stopped by " : ", ") + project.specimen[joint].id;
    line(std::string(toText(fit.foot)), "misses by " + fixed(fit.miss * 1000, 0) + " mm" + stopping);
  }
  for (const auto joint : stood.answer.beyond) line(project.specimen[joint].id, "beyond its range");
  for (const auto& note : stood.answer.notes) out += "  " + note + "\n";
  return out;
}

std::string footJson(const files::Project& project, const Stood& stood, const kinematics::LegFit& fit) {
  std::vector<std::string> stopping;
  for (const auto joint : fit.stopping) stopping.push_back(jsonString(project.specimen[joint].id));
  double height = 0, tilt = 0;
  for (const auto& at : stood.readings.feet) {
    if (at.foot != fit.foot) continue;
    height = at.height;
    tilt = at.tilt;
  }
  return onOneLine({member("foot", jsonString(toText(fit.foot))), member("height_mm", millionths(height * 1000)),
                    member("tilt_deg", degreesJson(tilt)), member("miss_mm", millionths(fit.miss * 1000)),
                    member("stopping_joints", list(stopping))});
}

std::string jsonOf(const files::Project& project, const Stood& stood) {
  const auto& r = stood.readings;
  std::vector<std::string> feet, beyond, notes;
  for (const auto& fit : stood.answer.fits) feet.push_back(footJson(project, stood, fit));
  for (const auto joint : stood.answer.beyond) beyond.push_back(jsonString(project.specimen[joint].id));
  for (const auto& note : stood.answer.notes) notes.push_back(jsonString(note));
  return onLines({member("specimen", jsonString(project.table.name)), member("stance", jsonString(stood.stance)),
                  member("complete", stood.answer.complete() ? "true" : "false"),
                  member("trunk_slope_deg", degreesJson(r.trunkSlope)), member("roll_deg", degreesJson(r.roll)),
                  member("hip_height_m", millionths(r.hipHeight)),
                  member("shoulder_height_m", millionths(r.shoulderHeight)),
                  member("glenoacetabular_distance_m", millionths(r.glenoacetabular)),
                  member("neck_base_slope_deg", degreesJson(r.neckBaseSlope)),
                  member("tail_base_slope_deg", degreesJson(r.tailBaseSlope)),
                  member("blade_slope_deg", list({degreesJson(r.bladeSlope[0]), degreesJson(r.bladeSlope[1])})),
                  member("snout_height_m", millionths(stood.snout)), member("feet", onLines(feet, "  ", '[', ']')),
                  member("beyond", list(beyond)), member("short_by_mm", millionths(stood.answer.shortBy * 1000)),
                  member("notes", list(notes))},
                 "", '{', '}') +
         "\n";
}

int stand(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  const auto stance = stanceOf(arguments);
  auto project = files::readProject(arguments.file);
  project.assumptions = assumptionsFrom(arguments, project.assumptions);
  const auto chosen = choosePose(project, arguments);
  const auto stood = standUp(project, chosen.pose, stance);
  project.pose = stood.answer.pose;
  if (chosen.index) project.poses[*chosen.index].pose = project.pose;
  files::saveProject(project, out);
  std::cout << (arguments.has("--json") ? jsonOf(project, stood) : textOf(project, stood) + "wrote " + out + "\n");
  return stood.answer.complete() ? kDone : kBeyond;
}

}  // namespace

Verb standVerb() {
  return {
      {"stand", "FILE.zyga", "puts the animal on its feet, as it is or in a stance, and writes the project anew",
       withAssumptionOptions({{"--stance", "WORD",
                               "alert, browse, drink, walk-1 to walk-4 or rear; without it the limbs stay as they are"},
                              {"--pose", "NAME", "starts from a named pose"},
                              {"--out", "FILE2.zyga", "the project to write"},
                              {"--json", "", "the readings for machines"}}),
       "Without --stance the height, slope and roll of the trunk follow from the limbs as they are; feet held well "
       "over\n"
       "their fellow's ground do not carry. A stance sets everything anew but the shoulder blades; walk-1 to walk-4 "
       "are\n"
       "the moments at which left hind, left fore, right hind and right fore foot swing. Slopes are to the "
       "horizontal;\n"
       "the trunk's is that of the line through the dorsal centra, the neck's that of the last cervical's canal, the\n"
       "tail's that of the line through the first five caudals. The result becomes the present pose; with --pose it\n"
       "also replaces the named one. Exit 1: a foot misses, a joint is beyond its range, or the stance falls short; "
       "the\n"
       "project is written all the same.\n"},
      stand};
}

}  // namespace zyga::app
