#include <QCoreApplication>
#include <QStringList>
#include <cmath>
#include <iostream>

#include "app/verbs/contact_for.h"
#include "app/verbs/project_file.h"
#include "app/verbs/text_table.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/files/json/json_write.h"
#include "core/study/stances/compare_poses.h"
#include "ui/words/numbers.h"
#include "ui/words/range_words.h"
#include "ui/words/say.h"
#include "ui/words/stance_words.h"

namespace zyga::app {
namespace {

namespace json = files::json;

/// One side of a comparison.
struct Side {
  std::string name;   ///< as it was typed, for machines
  std::string shown;  ///< for people
  range::Scenario scenario;
};

/// Named poses, or "present" for the pose the project is in.
Side sideOf(const files::Project& project, const std::string& pose,
            const std::shared_ptr<const range::ContactModel>& contact) {
  Arguments named;
  if (pose != "present") named.options.push_back({"--pose", pose});
  return {pose, pose == "present" ? said(QT_TRANSLATE_NOOP("words", "present")) : pose,
          scenarioOf(project, choosePose(project, named).pose, contact)};
}

std::string value(double number, bool angle) {
  if (!std::isfinite(number)) return "-";
  return (angle ? ui::plainDegrees(number) : ui::plain(number, 3)).toStdString();
}

std::string readingsText(const study::Comparison& comparison, const Side& a, const Side& b) {
  const std::string difference = said(QT_TRANSLATE_NOOP("words", "difference"));
  std::vector<TextRow> rows{{said(QT_TRANSLATE_NOOP("words", "reading")), said(QT_TRANSLATE_NOOP("words", "unit")),
                             a.shown, b.shown, difference}};
  for (const auto& r : comparison.readings) {
    if (!std::isfinite(r.first) && !std::isfinite(r.second)) continue;  // of a part that neither animal has
    const bool angle = isAngle(r.reading);
    rows.push_back({ui::readingName(r.reading).toStdString(), angle ? said(QT_TRANSLATE_NOOP("words", "deg")) : "m",
                    value(r.first, angle), value(r.second, angle), value(r.second - r.first, angle)});
  }
  return textTable(rows, {true, true, false, false, false});
}

std::string angles(const Eigen::Vector3d& v) {
  return QStringList{ui::plainDegrees(v[0]), ui::plainDegrees(v[1]), ui::plainDegrees(v[2])}.join(' ').toStdString();
}

std::string jointsText(const study::Comparison& comparison, const Side& a, const Side& b) {
  if (comparison.joints.empty()) return "  " + said(QT_TRANSLATE_NOOP("words", "no joint differs")) + "\n";
  const std::string verdict = said(QT_TRANSLATE_NOOP("words", "verdict"));
  std::vector<TextRow> rows{{said(QT_TRANSLATE_NOOP("words", "joint")), a.shown, b.shown,
                             said(QT_TRANSLATE_NOOP("words", "difference")), verdict, verdict}};
  for (const auto& joint : comparison.joints)
    rows.push_back({a.scenario.specimen()[joint.joint].id, angles(joint.first), angles(joint.second),
                    angles(joint.second - joint.first), ui::levelWords(joint.firstLevel).toStdString(),
                    ui::levelWords(joint.secondLevel).toStdString()});
  return textTable(rows, {true, false, false, false, true, true}) + "  " +
         said(QT_TRANSLATE_NOOP("words", "angles in degrees: dorsiflexion, left lateral flexion, axial rotation")) +
         "\n";
}

std::string levelsText(const std::string& name, const std::array<std::size_t, 4>& levels) {
  const auto count = [&](range::Level level) { return QString::number(levels[static_cast<std::size_t>(level)]); };
  return "  " +
         said(QT_TRANSLATE_NOOP("words", "%1: joints out of range %2, near limit %3, within range %4, not assessed %5"),
              {name, count(range::Level::Beyond), count(range::Level::Near), count(range::Level::Supported),
               count(range::Level::NotJudged)}) +
         "\n";
}

json::Value anglesJson(const Eigen::Vector3d& v) {
  return json::array({json::degrees(v[0]), json::degrees(v[1]), json::degrees(v[2])});
}

std::string comparisonJson(const study::Comparison& comparison, const Side& a, const Side& b) {
  std::vector<json::Value> readings, joints;
  for (const auto& r : comparison.readings)
    readings.push_back(
        json::object({{"reading", idOf(r.reading)},
                      {"unit", isAngle(r.reading) ? "deg" : "m"},
                      {"first", isAngle(r.reading) ? json::degrees(r.first) : json::millionths(r.first)},
                      {"second", isAngle(r.reading) ? json::degrees(r.second) : json::millionths(r.second)}}));
  for (const auto& joint : comparison.joints)
    joints.push_back(json::object({{"joint", a.scenario.specimen()[joint.joint].id},
                                   {"first_deg", anglesJson(joint.first)},
                                   {"second_deg", anglesJson(joint.second)},
                                   {"first_level", toText(joint.firstLevel)},
                                   {"second_level", toText(joint.secondLevel)}}));
  return json::document(json::object({{"first", a.name},
                                      {"second", b.name},
                                      {"contact_judged", a.scenario.contact() != nullptr},
                                      {"readings", json::arrayOf(readings, json::Layout::OnLines)},
                                      {"joints", json::arrayOf(joints, json::Layout::OnLines)}},
                                     json::Layout::OnLines));
}

int compareVerbRun(const VerbSpec&, const Arguments& arguments) {
  if (arguments.files.size() > 2) refuse(QT_TRANSLATE_NOOP("words", "two files can be compared, not more"));
  const std::string first = arguments.find("--first").value_or("present");
  const std::string second = arguments.find("--second").value_or("present");
  if (arguments.files.size() == 1 && first == second)
    refuse(QT_TRANSLATE_NOOP("words", "name two poses (--first NAME --second NAME) or give two files"));
  const bool two = arguments.files.size() == 2;
  const files::Project firstOf = openProject(arguments.files.front());
  const files::Project secondOf = two ? openProject(arguments.files.back()) : firstOf;
  const auto shapes = contactFor(firstOf, arguments);
  Side a = sideOf(firstOf, first, shapes), b = sideOf(secondOf, second, two ? contactFor(secondOf, arguments) : shapes);
  if (two) {
    const auto tellFile = [](Side& side, const std::string& file) {
      side.name = file + ", " + side.name;
      side.shown = said(QT_TRANSLATE_NOOP("words", "%1, %2"), {file, side.shown});
    };
    tellFile(a, arguments.files.front());
    tellFile(b, arguments.files.back());
  }
  const study::Comparison comparison = study::compare(a.scenario, b.scenario);
  if (arguments.has("--json"))
    std::cout << comparisonJson(comparison, a, b);
  else
    std::cout << readingsText(comparison, a, b) << "\n"
              << jointsText(comparison, a, b) << levelsText(a.shown, comparison.firstLevels)
              << levelsText(b.shown, comparison.secondLevels) << contactText(shapes != nullptr);
  return kDone;
}

}  // namespace

Verb compareVerb() {
  return {
      {"compare", "FILE.zyga", QT_TRANSLATE_NOOP("words", "tells how two poses, or two sets of assumptions, differ"),
       withContactOptions({{"--first", "NAME",
                            QT_TRANSLATE_NOOP("words", "a named pose, or present, which it is unless said otherwise")},
                           {"--second", "NAME", QT_TRANSLATE_NOOP("words", "the other one, likewise")},
                           {"--json", "", QT_TRANSLATE_NOOP("words", "the differences for machines")}}),
       QT_TRANSLATE_NOOP("words",
                         "With two files the animals must have the same joints; each pose is judged under its own "
                         "file's assumptions, so\n"
                         "two files that differ in nothing else compare two sets of assumptions.\n"),
       true},
      compareVerbRun};
}

}  // namespace zyga::app
