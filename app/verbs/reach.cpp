#include <QCoreApplication>
#include <algorithm>
#include <charconv>
#include <chrono>
#include <iostream>

#include "app/verbs/assumption_options.h"
#include "app/verbs/contact_for.h"
#include "app/verbs/joint_names.h"
#include "app/verbs/project_file.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/files/json/json_write.h"
#include "core/kinematics/bend.h"
#include "core/range/contact/clear_reach.h"
#include "core/range/contact/contact.h"
#include "ui/words/numbers.h"
#include "ui/words/range_words.h"
#include "ui/words/say.h"

namespace zyga::app {
namespace {

namespace json = files::json;

using anatomy::BoneIndex;
using anatomy::JointIndex;
using anatomy::Specimen;
using Eigen::Vector3d;
using kinematics::IkGoal;
using kinematics::IkResult;
using ui::filled;
using ui::translated;

std::vector<std::string> partsOf(const std::string& text) {
  std::vector<std::string> parts(1);
  for (const char c : text) {
    if (c == ',') {
      parts.emplace_back();
    } else {
      parts.back() += c;
    }
  }
  return parts;
}

/// "X,Y,Z": three finite numbers. `fault` says with %1 what else was typed.
Vector3d threeNumbers(const std::string& text, const char* fault) {
  const auto parts = partsOf(text);
  Vector3d numbers;
  bool good = parts.size() == 3;
  for (std::size_t i = 0; good && i < 3; ++i) {
    const char* end = parts[i].data() + parts[i].size();
    const auto read = std::from_chars(parts[i].data(), end, numbers[static_cast<Eigen::Index>(i)]);
    good = read.ec == std::errc() && read.ptr == end;
  }
  if (!good || !numbers.allFinite()) refuse(fault, {text});
  return numbers;
}

BoneIndex boneOf(const Specimen& specimen, const std::string& id) {
  const auto bone = specimen.findBone(id);
  if (!bone)
    refuse(QT_TRANSLATE_NOOP("words",
                             "--bone: there is no bone %1; a bone is named like skull, C7, Ca30 or metatarsal3.L"),
           {id});
  return *bone;
}

/// The point that is brought there: a landmark by name, or what people mean by the bone.
Vector3d pointOf(const anatomy::Bone& bone, const std::optional<std::string>& name) {
  if (name) {
    const auto found = bone.landmarks.find(*name);
    if (found != bone.landmarks.end()) return found->second;
    QStringList names;
    for (const auto& [known, p] : bone.landmarks) names << QString::fromStdString(known);
    refuse(QT_TRANSLATE_NOOP("words", "--point: %1 has no landmark '%2'; it has %3"),
           {bone.id, *name, ui::inOneLine(names)});
  }
  for (const char* usual : {"snout", "chin", "sole"}) {
    const auto found = bone.landmarks.find(usual);
    if (found != bone.landmarks.end()) return found->second;
  }
  return Vector3d::Zero();
}

std::vector<JointIndex> chainOf(const Specimen& specimen, BoneIndex bone, const Arguments& arguments) {
  std::optional<JointIndex> base;
  if (const auto id = arguments.find("--base")) {
    base = movableJoint(specimen, *id);
    const auto way = specimen.chainTo(bone);
    if (std::find(way.begin(), way.end(), *base) == way.end())
      refuse(QT_TRANSLATE_NOOP("words", "--base: %1 does not carry %2"), {*id, specimen[bone].id});
  }
  auto joints = kinematics::dragChain(specimen, bone, base);
  if (const auto ids = arguments.find("--lock")) {
    for (const auto& id : partsOf(*ids)) std::erase(joints, movableJoint(specimen, id));
  }
  if (joints.empty())
    refuse(QT_TRANSLATE_NOOP("words", "--bone: no joint that could turn carries %1"), {specimen[bone].id});
  return joints;
}

IkGoal wishOf(const files::Project& project, const kinematics::Articulation& articulation, const kinematics::Pose& pose,
              const VerbSpec& spec, const Arguments& arguments) {
  const auto& specimen = project.specimen();
  IkGoal goal;
  goal.bone = boneOf(specimen, required(spec, arguments, "--bone"));
  goal.p_WTarget = threeNumbers(
      required(spec, arguments, "--to"),
      QT_TRANSLATE_NOOP("words", "--to: '%1' is not three numbers with commas between, such as 4.2,0,0.3"));
  goal.p_BPoint = pointOf(specimen[goal.bone], arguments.find("--point"));
  goal.joints = chainOf(specimen, goal.bone, arguments);
  goal.style = choiceOf<kinematics::BendStyle>(
      arguments, "--style", {{"even", kinematics::BendStyle::Even}, {"base", kinematics::BendStyle::FromTheBase}});
  goal.pastRanges = arguments.has("--free");
  if (const auto gaze = arguments.find("--gaze")) {
    Vector3d direction = kinematics::forwardKinematics(specimen, articulation, pose)[goal.bone.value].linear().col(0);
    if (*gaze != "keep")
      direction = threeNumbers(
          *gaze, QT_TRANSLATE_NOOP("words",
                                   "--gaze: '%1' is not three numbers with commas between, such as 1,0,-0.5, nor the "
                                   "word keep"));
    if (direction.norm() < 1e-9) refuse(QT_TRANSLATE_NOOP("words", "--gaze: 0,0,0 is no direction"));
    goal.directions.push_back({Vector3d::UnitX(), direction.normalized()});
  }
  return goal;
}

struct Answer {
  IkResult reached;
  std::vector<range::JointStop> stops;
  double milliseconds = 0;
  bool contactJudged = false;
};

Answer answerOf(const range::Scenario& scenario, const IkGoal& goal) {
  const range::ReachRanges ranges(scenario.specimen(), scenario.articulation(), scenario.assumptions(),
                                  scenario.contact());
  for (const JointIndex joint : goal.joints) ranges.inside(joint);  // looked up once, as for a whole drag
  Answer answer;
  const auto begun = std::chrono::steady_clock::now();
  range::ClearReach clear = range::reachClear(scenario, ranges, scenario.pose(), goal);
  answer.milliseconds = std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begun).count();
  answer.reached = std::move(clear.reached);
  answer.stops = std::move(clear.stops);
  answer.contactJudged = scenario.contact() != nullptr;
  return answer;
}

std::string jsonOf(const Specimen& specimen, const IkGoal& goal, const Answer& answer) {
  const IkResult& r = answer.reached;
  std::vector<std::string> ids, words, broken;
  for (const auto& stop : answer.stops) {
    ids.push_back(specimen[stop.joint].id);
    words.push_back(ui::stopWords(specimen, stop).toStdString());
  }
  for (const auto joint : r.broken) broken.push_back(specimen[joint].id);
  json::Value members = json::object({{"bone", specimen[goal.bone].id},
                                      {"reached", r.reached},
                                      {"distance_mm", json::millionths(r.distance * 1000)},
                                      {"at_m", json::point(r.p_WPoint)},
                                      {"stopping_joints", json::arrayOf(ids)},
                                      {"stopping_words", json::arrayOf(words, json::Layout::OnLines)},
                                      {"beyond", json::arrayOf(broken)},
                                      {"contact_judged", answer.contactJudged},
                                      {"iterations", r.iterations},
                                      {"ms", json::millionths(answer.milliseconds)}},
                                     json::Layout::OnLines);
  if (!goal.directions.empty()) members.add("gaze_off_deg", json::degrees(r.directionError));
  return json::document(members);
}

QString place(const Vector3d& p) {
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1, %2, %3 m")),
                {ui::plain(p.x(), 3), ui::plain(p.y(), 3), ui::plain(p.z(), 3)});
}

QString nearestLine(const IkGoal& goal, const IkResult& r) {
  const QStringList parts{ui::millimetres(r.distance, 0), place(r.p_WPoint)};
  return goal.pastRanges
             ? filled(translated(QT_TRANSLATE_NOOP("words", "nearest pose: %1 short, at %2")), parts)
             : filled(translated(QT_TRANSLATE_NOOP("words", "nearest pose within range: %1 short, at %2")), parts);
}

std::string textOf(const Specimen& specimen, const IkGoal& goal, const Answer& answer) {
  const IkResult& r = answer.reached;
  const auto id = [](const std::string& name) { return QString::fromStdString(name); };
  QStringList lines;
  const char* head =
      r.reached ? QT_TRANSLATE_NOOP("words", "%1 reaches %2") : QT_TRANSLATE_NOOP("words", "%1 does not reach %2");
  const QString first = filled(translated(head), {id(specimen[goal.bone].id), place(goal.p_WTarget)});
  if (!r.reached) lines << nearestLine(goal, r);
  for (const auto& stop : answer.stops)
    lines << filled(translated(QT_TRANSLATE_NOOP("words", "stopped by %1")), {ui::stopWords(specimen, stop)});
  if (!r.reached && answer.stops.empty()) lines << translated(QT_TRANSLATE_NOOP("words", "the chain is stretched out"));
  for (const auto joint : r.broken)
    lines << filled(translated(QT_TRANSLATE_NOOP("words", "%1 out of range")), {id(specimen[joint].id)});
  if (!goal.directions.empty())
    lines << filled(translated(QT_TRANSLATE_NOOP("words", "gaze off by %1")), {ui::degrees(r.directionError)});
  QString out = first + QLatin1Char('\n');
  for (const QString& line : lines) out += QStringLiteral("  ") + line + QLatin1Char('\n');
  return out.toStdString() + contactText(answer.contactJudged);
}

int reach(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  auto project = openProject(arguments.file);
  project.assumptions = assumptionsFrom(arguments, project.assumptions);
  const auto chosen = choosePose(project, arguments);
  const auto goal = wishOf(project, articulationOf(project), chosen.pose, spec, arguments);
  const auto answer = answerOf(scenarioOf(project, chosen.pose, contactFor(project, arguments)), goal);
  project.pose = answer.reached.pose;
  if (chosen.index) project.poses[*chosen.index].pose = project.pose;
  const bool forMachines = arguments.has("--json");
  const auto wrote = saveProject(project, out, forMachines);
  std::cout << (forMachines ? jsonOf(project.specimen(), goal, answer)
                            : textOf(project.specimen(), goal, answer) + wrote);
  return answer.reached.reached ? kDone : kBeyond;
}

}  // namespace

Verb reachVerb() {
  return {{"reach", "FILE.zyga",
           QT_TRANSLATE_NOOP("words", "brings a bone to a point inside the joints' ranges and writes the project anew"),
           withAssumptionOptions(withContactOptions(
               {{"--bone", "ID", QT_TRANSLATE_NOOP("words", "what is brought there: skull, C7, Ca30, metatarsal3.L")},
                {"--to", "X,Y,Z",
                 QT_TRANSLATE_NOOP("words", "the point in metres: x forwards, y left, z up from the ground")},
                {"--point", "NAME",
                 QT_TRANSLATE_NOOP("words", "the bone's landmark that goes there; the snout of a skull by itself")},
                {"--gaze", "X,Y,Z",
                 QT_TRANSLATE_NOOP("words", "direction the bone shall face; keep: head orientation as it is")},
                {"--style", "WORD",
                 QT_TRANSLATE_NOOP("words", "even (each joint gives the same share of its range) or base")},
                {"--free", "", QT_TRANSLATE_NOOP("words", "allows beyond limits; the joints out of range are named")},
                {"--lock", "ID,...", QT_TRANSLATE_NOOP("words", "joints that stay as they are")},
                {"--base", "ID",
                 QT_TRANSLATE_NOOP("words", "the joint the bend begins at; else the base of neck, tail or limb")},
                {"--pose", "NAME", QT_TRANSLATE_NOOP("words", "starts from a named pose")},
                {"--out", "FILE2.zyga", QT_TRANSLATE_NOOP("words", "the project to write")},
                {"--json", "", QT_TRANSLATE_NOOP("words", "the answer for machines")}})),
           QT_TRANSLATE_NOOP(
               "words",
               "Without --point the snout, chin or sole of the bone is meant where it has one, else its middle. The "
               "target comes\n"
               "before the orientation, the orientation before the even bend. Where the point can't be had the nearest "
               "pose within\n"
               "range is written, with what it falls short and the joints that stop it, worst first. The result "
               "becomes the present\n"
               "pose; with --pose it also replaces the named one. Exit 1: the point is missed by more than 1 mm.\n")},
          reach};
}

}  // namespace zyga::app
