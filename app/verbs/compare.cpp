#include <cmath>
#include <iostream>

#include "app/verbs/project_file.h"
#include "app/verbs/summary_text.h"
#include "app/verbs/text_table.h"
#include "app/verbs/verbs.h"
#include "core/files/json/json.h"
#include "core/files/json/json_layout.h"
#include "core/study/stances/compare_poses.h"

namespace zyga::app {
namespace {

using files::jsonString;
using files::member;

/// One side of a comparison, with all that its subject refers to.
struct Side {
  std::string name;
  files::Project project;
  kinematics::Pose pose;
  kinematics::Articulation articulation;

  study::Subject subject() const { return {project.specimen, articulation, project.assumptions, pose}; }
};

/// Named poses, or "present" for the pose the project is in.
Side sideOf(const std::string& file, const std::string& pose) {
  Side side{pose, files::readProject(file), {}, {}};
  Arguments named;
  if (pose != "present") named.options.push_back({"--pose", pose});
  side.pose = choosePose(side.project, named).pose;
  side.articulation = articulationOf(side.project);
  return side;
}

std::string value(double number, bool angle) {
  if (!std::isfinite(number)) return "-";
  return angle ? degreesText(number) : fixed(number, 3);
}

std::string readingsText(const study::Comparison& comparison, const Side& a, const Side& b) {
  std::vector<TextRow> rows{{"reading", "unit", a.name, b.name, "difference"}};
  for (const auto& r : comparison.readings)
    rows.push_back({r.words, r.angle ? "deg" : "m", value(r.first, r.angle), value(r.second, r.angle),
                    value(r.second - r.first, r.angle)});
  return textTable(rows, {true, true, false, false, false});
}

std::string angles(const Eigen::Vector3d& v) {
  return degreesText(v[0]) + " " + degreesText(v[1]) + " " + degreesText(v[2]);
}

std::string jointsText(const study::Comparison& comparison, const Side& a, const Side& b) {
  if (comparison.joints.empty()) return "  no joint differs\n";
  std::vector<TextRow> rows{{"joint", a.name, b.name, "difference", "verdict", "verdict"}};
  for (const auto& joint : comparison.joints)
    rows.push_back({a.project.specimen[joint.joint].id, angles(joint.first), angles(joint.second),
                    angles(joint.second - joint.first), std::string(toText(joint.firstLevel)),
                    std::string(toText(joint.secondLevel))});
  return textTable(rows, {true, false, false, false, true, true}) + "  angles in degrees: up, left, torsion\n";
}

std::string levelsText(const std::string& name, const std::array<std::size_t, 4>& levels) {
  const auto count = [&](range::Level level) { return std::to_string(levels[static_cast<std::size_t>(level)]); };
  return "  " + name + ": " + count(range::Level::Beyond) + " joints beyond, " + count(range::Level::Near) +
         " near the edge, " + count(range::Level::Supported) + " supported, " + count(range::Level::NotJudged) +
         " not judged\n";
}

std::string anglesJson(const Eigen::Vector3d& v) {
  return files::list({degreesJson(v[0]), degreesJson(v[1]), degreesJson(v[2])});
}

std::string comparisonJson(const study::Comparison& comparison, const Side& a, const Side& b) {
  std::vector<std::string> readings, joints;
  for (const auto& r : comparison.readings)
    readings.push_back(
        files::onOneLine({member("reading", jsonString(r.words)), member("unit", jsonString(r.angle ? "deg" : "m")),
                          member("first", r.angle ? degreesJson(r.first) : millionths(r.first)),
                          member("second", r.angle ? degreesJson(r.second) : millionths(r.second))}));
  for (const auto& joint : comparison.joints)
    joints.push_back(files::onOneLine(
        {member("joint", jsonString(a.project.specimen[joint.joint].id)), member("first_deg", anglesJson(joint.first)),
         member("second_deg", anglesJson(joint.second)), member("first_level", jsonString(toText(joint.firstLevel))),
         member("second_level", jsonString(toText(joint.secondLevel)))}));
  return files::onLines({member("first", jsonString(a.name)), member("second", jsonString(b.name)),
                         member("readings", files::onLines(readings, "  ", '[', ']')),
                         member("joints", files::onLines(joints, "  ", '[', ']'))},
                        "", '{', '}') +
         "\n";
}

int compareVerbRun(const VerbSpec&, const Arguments& arguments) {
  if (arguments.files.size() > 2) throw BadInput("two files can be compared, not more");
  const std::string first = arguments.find("--first").value_or("present");
  const std::string second = arguments.find("--second").value_or("present");
  if (arguments.files.size() == 1 && first == second)
    throw BadInput("name two poses (--first NAME --second NAME) or give two files");
  Side a = sideOf(arguments.files.front(), first), b = sideOf(arguments.files.back(), second);
  if (arguments.files.size() == 2) {
    a.name = arguments.files.front() + ", " + first;
    b.name = arguments.files.back() + ", " + second;
  }
  const study::Comparison comparison = compare(a.subject(), b.subject());
  if (arguments.has("--json"))
    std::cout << comparisonJson(comparison, a, b);
  else
    std::cout << readingsText(comparison, a, b) << "\n"
              << jointsText(comparison, a, b) << levelsText(a.name, comparison.firstLevels)
              << levelsText(b.name, comparison.secondLevels);
  return kDone;
}

}  // namespace

Verb compareVerb() {
  return {{"compare",
           "FILE.zyga",
           "tells how two poses, or two sets of assumptions, differ",
           {{"--first", "NAME", "a named pose, or present, which it is unless said otherwise"},
            {"--second", "NAME", "the other one, likewise"},
            {"--json", "", "the differences for machines"}},
           "With two files the animals must have the same joints; each pose is judged under its own file's "
           "assumptions, so\n"
           "two files that differ in nothing else compare two sets of assumptions.\n",
           true},
          compareVerbRun};
}

}  // namespace zyga::app
