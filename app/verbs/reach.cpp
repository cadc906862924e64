#include <QCoreApplication>
#include <algorithm>
#include <charconv>
#include <chrono>
#include <iostream>

#include "app/verbs/assumption_options.h"
#include "app/verbs/joint_names.h"
#include "app/verbs/project_file.h"
#include "app/verbs/summary_text.h"
#include "app/verbs/verbs.h"
#include "core/files/json/json_write.h"
#include "core/kinematics/bend.h"
#include "core/range/reach_ranges.h"
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
using kinematics::Reach;
using kinematics::Reached;
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

/// "X,Y,Z": three finite numbers.
Vector3d threeNumbers(const std::string& option, const std::string& text, const std::string& example) {
  const auto parts = partsOf(text);
  Vector3d numbers;
  bool good = parts.size() == 3;
  for (std::size_t i = 0; good && i < 3; ++i) {
    const char* end = parts[i].data() + parts[i].size();
    const auto read = std::from_chars(parts[i].data(), end, numbers[static_cast<Eigen::Index>(i)]);
    good = read.ec == std::errc() && read.ptr == end;
  }
  if (!good || !numbers.allFinite()) {
    throw BadInput(option + ": '" + text + "' is not three numbers with commas between, such as " + example);
  }
  return numbers;
}

BoneIndex boneOf(const Specimen& specimen, const std::string& id) {
  const auto bone = specimen.findBone(id);
  if (!bone)
    throw BadInput("--bone: there is no bone " + id + "; a bone is named like skull, C7, Ca30 or metatarsal3.L");
  return *bone;
}

/// The point that is brought there: a landmark by name, or what people mean by the bone.
Vector3d pointOf(const anatomy::Bone& bone, const std::optional<std::string>& name) {
  if (name) {
    const auto found = bone.landmarks.find(*name);
    if (found != bone.landmarks.end()) return found->second;
    std::string names;
    for (const auto& [known, p] : bone.landmarks) names += (names.empty() ? "" : ", ") + known;
    throw BadInput("--point: " + bone.id + " has no landmark '" + *name + "'; it has " + names);
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
    if (std::find(way.begin(), way.end(), *base) == way.end()) {
      throw BadInput("--base: " + *id + " does not carry " + specimen[bone].id);
    }
  }
  auto joints = kinematics::dragChain(specimen, bone, base);
  if (const auto ids = arguments.find("--lock")) {
    for (const auto& id : partsOf(*ids)) std::erase(joints, movableJoint(specimen, id));
  }
  if (joints.empty()) throw BadInput("--bone: no joint that could turn carries " + specimen[bone].id);
  return joints;
}

Reach wishOf(const files::Project& project, const kinematics::Articulation& articulation, const kinematics::Pose& pose,
             const VerbSpec& spec, const Arguments& arguments) {
  const auto& specimen = project.specimen();
  Reach wish;
  wish.bone = boneOf(specimen, required(spec, arguments, "--bone"));
  wish.p_WTarget = threeNumbers("--to", required(spec, arguments, "--to"), "4.2,0,0.3");
  wish.p_BPoint = pointOf(specimen[wish.bone], arguments.find("--point"));
  wish.joints = chainOf(specimen, wish.bone, arguments);
  wish.style = choiceOf<kinematics::BendStyle>(
      arguments, "--style", {{"even", kinematics::BendStyle::Even}, {"base", kinematics::BendStyle::FromTheBase}});
  wish.pastRanges = arguments.has("--free");
  if (const auto gaze = arguments.find("--gaze")) {
    Vector3d direction = kinematics::place(specimen, articulation, pose)[wish.bone.value].linear().col(0);
    if (*gaze != "keep") direction = threeNumbers("--gaze", *gaze, "1,0,-0.5, nor the word keep");
    if (direction.norm() < 1e-9) throw BadInput("--gaze: 0,0,0 is no direction");
    wish.bearings.push_back({Vector3d::UnitX(), direction.normalized()});
  }
  return wish;
}

struct Answer {
  Reached reached;
  std::vector<range::JointStop> stops;  ///< by reached.stopping
  double milliseconds = 0;
};

Answer answerOf(const files::Project& project, const kinematics::Articulation& articulation,
                const kinematics::Pose& start, const Reach& wish) {
  const range::ReachRanges ranges(project.specimen(), articulation, project.assumptions);
  for (const JointIndex joint : wish.joints) ranges.inside(joint);  // looked up once, as for a whole drag
  Answer answer;
  const auto begun = std::chrono::steady_clock::now();
  answer.reached = kinematics::reach(project.specimen(), articulation, ranges, start, wish);
  answer.milliseconds = std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begun).count();
  for (const auto& stop : answer.reached.stopping) {
    answer.stops.push_back(ranges.stopOf(answer.reached.pose, stop));
  }
  return answer;
}

std::string jsonOf(const Specimen& specimen, const Reach& wish, const Answer& answer) {
  const Reached& r = answer.reached;
  std::vector<std::string> ids, words, broken;
  for (const auto& stop : r.stopping) ids.push_back(specimen[stop.joint].id);
  for (const auto& stop : answer.stops) words.push_back(ui::stopWords(specimen, stop).toStdString());
  for (const auto joint : r.broken) broken.push_back(specimen[joint].id);
  json::Value members = json::object({{"bone", specimen[wish.bone].id},
                                      {"reached", r.reached},
                                      {"distance_mm", json::millionths(r.distance * 1000)},
                                      {"at_m", json::point(r.p_WPoint)},
                                      {"stopping_joints", json::arrayOf(ids)},
                                      {"stopping_words", json::arrayOf(words, json::Layout::OnLines)},
                                      {"beyond", json::arrayOf(broken)},
                                      {"iterations", r.iterations},
                                      {"ms", json::millionths(answer.milliseconds)}},
                                     json::Layout::OnLines);
  if (!wish.bearings.empty()) members.add("gaze_off_deg", json::degrees(r.bearingOff));
  return json::document(members);
}

QString place(const Vector3d& p) {
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1, %2, %3 m")),
                {ui::plain(p.x(), 3), ui::plain(p.y(), 3), ui::plain(p.z(), 3)});
}

QString nearestLine(const Reach& wish, const Reached& r) {
  const QStringList parts{ui::millimetres(r.distance, 0), place(r.p_WPoint)};
  return wish.pastRanges
             ? filled(translated(QT_TRANSLATE_NOOP("words", "nearest pose: %1 short, at %2")), parts)
             : filled(translated(QT_TRANSLATE_NOOP("words", "nearest pose within range: %1 short, at %2")), parts);
}

std::string textOf(const Specimen& specimen, const Reach& wish, const Answer& answer) {
  const Reached& r = answer.reached;
  const auto id = [](const std::string& name) { return QString::fromStdString(name); };
  QStringList lines;
  const char* head =
      r.reached ? QT_TRANSLATE_NOOP("words", "%1 reaches %2") : QT_TRANSLATE_NOOP("words", "%1 does not reach %2");
  const QString first = filled(translated(head), {id(specimen[wish.bone].id), place(wish.p_WTarget)});
  if (!r.reached) lines << nearestLine(wish, r);
  for (const auto& stop : answer.stops)
    lines << filled(translated(QT_TRANSLATE_NOOP("words", "stopped by %1")), {ui::stopWords(specimen, stop)});
  if (!r.reached && answer.stops.empty()) lines << translated(QT_TRANSLATE_NOOP("words", "the chain is stretched out"));
  for (const auto joint : r.broken)
    lines << filled(translated(QT_TRANSLATE_NOOP("words", "%1 out of range")), {id(specimen[joint].id)});
  if (!wish.bearings.empty())
    lines << filled(translated(QT_TRANSLATE_NOOP("words", "gaze off by %1")), {ui::degrees(r.bearingOff)});
  QString out = first + QLatin1Char('\n');
  for (const QString& line : lines) out += QStringLiteral("  ") + line + QLatin1Char('\n');
  return out.toStdString();
}

int reach(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  auto project = files::readProject(arguments.file);
  project.assumptions = assumptionsFrom(arguments, project.assumptions);
  const auto chosen = choosePose(project, arguments);
  const auto articulation = articulationOf(project);
  const auto wish = wishOf(project, articulation, chosen.pose, spec, arguments);
  const auto answer = answerOf(project, articulation, chosen.pose, wish);
  project.pose = answer.reached.pose;
  if (chosen.index) project.poses[*chosen.index].pose = project.pose;
  files::saveProject(project, out);
  std::cout << (arguments.has("--json") ? jsonOf(project.specimen(), wish, answer)
                                        : textOf(project.specimen(), wish, answer) + wroteLine(out));
  return answer.reached.reached ? kDone : kBeyond;
}

}  // namespace

Verb reachVerb() {
  return {
      {"reach", "FILE.zyga", "brings a bone to a point inside the joints' ranges and writes the project anew",
       withAssumptionOptions(
           {{"--bone", "ID", "what is brought there: skull, C7, Ca30, metatarsal3.L"},
            {"--to", "X,Y,Z", "the point in metres: x forwards, y left, z up from the ground"},
            {"--point", "NAME", "the bone's landmark that goes there; the snout of a skull by itself"},
            {"--gaze", "X,Y,Z", "direction the bone shall look in; keep: the present one"},
            {"--style", "WORD", "even (each joint gives the same share of its range) or base"},
            {"--free", "", "ranges do not hold; the joints out of range are named"},
            {"--lock", "ID,...", "joints that stay as they are"},
            {"--base", "ID", "the joint the bend begins at; else the base of neck, tail or limb"},
            {"--pose", "NAME", "starts from a named pose"},
            {"--out", "FILE2.zyga", "the project to write"},
            {"--json", "", "the answer for machines"}}),
       "Without --point the snout, chin or sole of the bone is meant where it has one, else its middle. The target "
       "comes\n"
       "before the gaze, the gaze before the even bend. Where the point can't be had the nearest pose within range is\n"
       "written, with what it falls short and the joints that stop it, worst first. The result becomes the present "
       "pose;\n"
       "with --pose it also replaces the named one. Exit 1: the point is missed by more than 1 mm.\n"},
      reach};
}

}  // namespace zyga::app
