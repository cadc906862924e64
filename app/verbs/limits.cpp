#include "core/range/limits.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <iostream>
#include <memory>
#include <numbers>

#include "app/verbs/assumption_options.h"
#include "app/verbs/assumptions_words.h"
#include "app/verbs/contact_for.h"
#include "app/verbs/joint_names.h"
#include "app/verbs/project_file.h"
#include "app/verbs/text_table.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/files/json/json_write.h"
#include "core/range/contact/contact.h"
#include "core/range/neutral.h"
#include "core/study/reach/extremes.h"
#include "ui/words/numbers.h"
#include "ui/words/range_words.h"
#include "ui/words/say.h"

namespace zyga::app {
namespace {

namespace json = files::json;

using anatomy::JointIndex;
using range::Direction;
using ui::filled;
using ui::translated;

/// Limits of joints from one starting pose, and where they take neck and tail.
struct LimitsReport {
  const files::Project& project;
  range::Assumptions assumptions;
  std::optional<std::string> pose;         ///< whose angles the other motions keep; none: neutral
  bool contactJudged = false;              ///< bones that collide stopped motions as well
  std::vector<range::JointLimits> joints;  ///< in joint order
  std::vector<study::Extreme> extremes;    ///< empty when single joints were asked for

  const anatomy::Specimen& specimen() const { return project.specimen(); }
};

/// How far a limit lies in the direction it is named after, rad: below zero where the range ends on the other side of
/// neutral.
double angleTowards(const range::JointLimits& limits, Direction direction) {
  return range::signOf(direction) * limits[direction].angle;
}

/// Where nothing judges a joint no end is known.
bool endKnown(const anatomy::Joint& joint, const range::JointLimits& limits, Direction direction) {
  return limits[direction].supported && (joint.hasFacets() || joint.typed);
}

// For machines.

/// "torsion_left"
std::string keyOf(range::Direction direction) {
  std::string key(toText(direction));
  std::replace(key.begin(), key.end(), ' ', '_');
  return key;
}

json::Value endJson(const anatomy::Specimen& specimen, const range::JointLimits& limits, Direction direction) {
  const anatomy::Joint& joint = specimen[limits.joint];
  const range::Motion motion = range::motionName(joint, motionOf(direction), signOf(direction));
  json::Value end = json::object(
      {{"deg", endKnown(joint, limits, direction) ? json::degrees(angleTowards(limits, direction)) : json::Value()},
       {"motion", ui::motionWords(motion).toStdString()},
       {"stopped_by", ui::stopWords(specimen, limits.joint, limits[direction].stop).toStdString()},
       {"by_default", range::byDefault(joint, limits[direction].stop)},
       {"contact", limits[direction].stop.kind == range::FindingKind::BoneContact}});
  // Lateral flexion goes with the axial rotation that the facets ask for, left side up.
  if (motionOf(direction) == 1)
    end.add("axial_deg", endKnown(joint, limits, direction) ? json::degrees(limits[direction].axial) : json::Value());
  return end;
}

json::Value jointJson(const LimitsReport& report, const range::JointLimits& limits) {
  const anatomy::Joint& joint = report.specimen()[limits.joint];
  json::Value members = json::object({{"id", joint.id}, {"judged", limits.judged}});
  for (const range::Direction direction : range::kDirections) {
    members.add(keyOf(direction), endJson(report.specimen(), limits, direction));
  }
  return members;
}

json::Value extremeJson(const LimitsReport& report, const study::Extreme& extreme) {
  const bool neck = extreme.chain == study::Chain::Neck;
  const study::Carriage& carriage = extreme.carriage;
  std::vector<std::string> unjudged;
  for (const auto& joint : extreme.joints) {
    if (!joint.judged) unjudged.push_back(report.specimen()[joint.joint].id);
  }
  return json::object(
      {{"chain", toText(extreme.chain)},
       {"direction", keyOf(extreme.direction)},
       {"turn_deg", json::millionths(range::signOf(extreme.direction) * extreme.total * 180 / std::numbers::pi)},
       {"snout_height_m", neck ? json::millionths(carriage.snoutHeight) : json::Value()},
       {"eye_height_m", neck ? json::millionths(carriage.eyeHeight) : json::Value()},
       {"tip_height_m", json::millionths(carriage.tipHeight)},
       {"ahead_of_base_m", json::millionths(carriage.ahead)},
       {"left_of_base_m", json::millionths(carriage.left)},
       {"slope_deg", json::degrees(carriage.slope)},
       {"swing_deg", json::degrees(carriage.swing)},
       {"lowest_m", json::millionths(carriage.lowest)},
       {"not_judged", json::arrayOf(unjudged)}});
}

std::string jsonOf(const LimitsReport& report) {
  std::vector<json::Value> joints, extremes;
  for (const auto& limits : report.joints) joints.push_back(jointJson(report, limits));
  for (const auto& extreme : report.extremes) extremes.push_back(extremeJson(report, extreme));
  return json::document(json::object({{"specimen", report.project.table.name},
                                      {"from", report.pose.value_or("neutral")},
                                      {"assumptions", assumptionsJson(report.assumptions)},
                                      {"contact_judged", report.contactJudged},
                                      {"joints", json::arrayOf(joints, json::Layout::OnLines)},
                                      {"extremes", json::arrayOf(extremes, json::Layout::OnLines)},
                                      {"caution", caution()}},
                                     json::Layout::OnLines));
}

// For people.

std::string metresCell(double length) { return ui::plain(length, 2).toStdString(); }

std::string degreesCell(double angle) { return ui::plainDegrees(angle).toStdString(); }

/// What stops a motion, without the angle that the row shows anyway.
QString stopCell(const anatomy::Specimen& specimen, JointIndex joint, const range::Stop& stop,
                 ui::StopSide side = ui::StopSide::Own) {
  if (stop.kind == range::FindingKind::TypedLimit)
    return filled(translated(QT_TRANSLATE_NOOP("words", "limit (%1)")),
                  {ui::limitSourceWords(specimen[joint].typed->source)});
  const QString words = ui::stopWords(specimen, joint, stop, side);
  return range::byDefault(specimen[joint], stop) ? words + QStringLiteral(" *") : words;
}

/// The same in words that fit left and right alike: "zygapophyseal overlap 50 % on that side".
QString bySide(const anatomy::Specimen& specimen, JointIndex joint, const range::Stop& stop, bool leftwards) {
  if (stop.side == anatomy::Side::Midline) return stopCell(specimen, joint, stop);
  const bool same = (stop.side == anatomy::Side::Left) == leftwards;
  return stopCell(specimen, joint, stop, same ? ui::StopSide::Same : ui::StopSide::Other);
}

/// Directions that the same thing stops, told once: "dorsal, ventral: zygapophyseal overlap 50 % on both sides; ...".
std::string stops(const anatomy::Specimen& specimen, const range::JointLimits& limits) {
  std::vector<std::pair<QString, QStringList>> groups;  // what stops, which ways
  for (const Direction direction : range::kDirections) {
    const auto k = static_cast<std::size_t>(direction);
    const range::Stop &left = limits.ends[k & ~std::size_t{1}].stop, &right = limits.ends[k | 1].stop;
    QString stop = stopCell(specimen, limits.joint, limits.ends[k].stop);
    const QString eitherWay = bySide(specimen, limits.joint, left, true);
    const bool sided = k >= 2 && limits.ends[k].stop.side != anatomy::Side::Midline;
    if (sided && eitherWay == bySide(specimen, limits.joint, right, false)) stop = eitherWay;
    const auto same = std::find_if(groups.begin(), groups.end(), [&](const auto& g) { return g.first == stop; });
    if (same == groups.end()) {
      groups.emplace_back(stop, QStringList{ui::directionWords(direction)});
    } else {
      same->second << ui::directionWords(direction);
    }
  }
  if (groups.size() == 1) return groups.front().first.toStdString();
  QStringList parts;
  for (const auto& [stop, ways] : groups)
    parts << filled(translated(QT_TRANSLATE_NOOP("words", "%1: %2")), {ui::inOneLine(ways), stop});
  return parts.join(QStringLiteral("; ")).toStdString();
}

std::string jointsTable(const LimitsReport& report) {
  TextRow head{said(QT_TRANSLATE_NOOP("words", "joint"))};
  for (const Direction direction : range::kDirections) head.push_back(ui::directionWords(direction).toStdString());
  head.push_back(said(QT_TRANSLATE_NOOP("words", "stopped by")));
  std::vector<TextRow> rows{head};
  for (const auto& limits : report.joints) {
    const anatomy::Joint& joint = report.specimen()[limits.joint];
    TextRow row{joint.id};
    for (const Direction direction : range::kDirections) {
      row.push_back(endKnown(joint, limits, direction) ? degreesCell(angleTowards(limits, direction)) : "-");
    }
    std::string stopped = stops(report.specimen(), limits);
    for (const Direction direction : {Direction::Left, Direction::Right}) {
      const QString along = ui::alongWords(joint, limits[direction].axial);
      if (along.isEmpty() || !endKnown(joint, limits, direction)) continue;
      stopped += "; " + said(QT_TRANSLATE_NOOP("words", "%1: %2"), {ui::directionWords(direction), along});
    }
    row.push_back(limits.judged ? stopped : said(QT_TRANSLATE_NOOP("words", "not assessed: %1"), {stopped}));
    rows.push_back(row);
  }
  return textTable(rows, {true, false, false, false, false, false, false, true});
}

/// With an unnamed column for remarks.
TextRow headOf(std::initializer_list<const char*> names) {
  TextRow row;
  for (const char* name : names) row.push_back(said(name));
  row.emplace_back();
  return row;
}

/// An animal without a head is a column alone, and stands on nothing.
bool headless(const std::vector<study::Extreme>& extremes) {
  return std::none_of(extremes.begin(), extremes.end(), [](const study::Extreme& extreme) {
    return extreme.chain == study::Chain::Neck && !std::isnan(extreme.carriage.snoutHeight);
  });
}

std::string extremesTable(const std::vector<study::Extreme>& extremes, study::Chain chain) {
  const bool column = headless(extremes);
  const bool neck = chain == study::Chain::Neck && !column;
  std::vector<TextRow> rows;
  rows.push_back(chain == study::Chain::Neck && column
                     ? headOf({QT_TRANSLATE_NOOP("words", "neck"), QT_TRANSLATE_NOOP("words", "turn"),
                               QT_TRANSLATE_NOOP("words", "tip"), QT_TRANSLATE_NOOP("words", "ahead"),
                               QT_TRANSLATE_NOOP("words", "left"), QT_TRANSLATE_NOOP("words", "slope"),
                               QT_TRANSLATE_NOOP("words", "swing")})
                 : neck ? headOf({QT_TRANSLATE_NOOP("words", "neck"), QT_TRANSLATE_NOOP("words", "turn"),
                                  QT_TRANSLATE_NOOP("words", "snout"), QT_TRANSLATE_NOOP("words", "eyes"),
                                  QT_TRANSLATE_NOOP("words", "ahead"), QT_TRANSLATE_NOOP("words", "left"),
                                  QT_TRANSLATE_NOOP("words", "slope"), QT_TRANSLATE_NOOP("words", "swing")})
                        : headOf({QT_TRANSLATE_NOOP("words", "tail"), QT_TRANSLATE_NOOP("words", "turn"),
                                  QT_TRANSLATE_NOOP("words", "tip"), QT_TRANSLATE_NOOP("words", "behind"),
                                  QT_TRANSLATE_NOOP("words", "left"), QT_TRANSLATE_NOOP("words", "slope"),
                                  QT_TRANSLATE_NOOP("words", "swing")}));
  for (const auto& extreme : extremes) {
    if (extreme.chain != chain) continue;
    const study::Carriage& c = extreme.carriage;
    TextRow row{ui::directionWords(extreme.direction).toStdString(),
                degreesCell(range::signOf(extreme.direction) * extreme.total)};
    if (neck) {
      row.insert(row.end(), {metresCell(c.snoutHeight), metresCell(c.eyeHeight), metresCell(c.ahead)});
    } else {
      row.insert(row.end(), {metresCell(c.tipHeight), metresCell(chain == study::Chain::Neck ? c.ahead : -c.ahead)});
    }
    row.insert(row.end(), {metresCell(c.left), degreesCell(c.slope), degreesCell(c.swing)});
    const auto open = std::count_if(extreme.joints.begin(), extreme.joints.end(), [](auto& j) { return !j.judged; });
    QStringList remarks;
    if (c.lowest < 0 && !column)
      remarks << filled(translated(QT_TRANSLATE_NOOP("words", "%1 into the ground")), {ui::metres(-c.lowest)});
    if (open > 0) remarks << translated(QT_TRANSLATE_N_NOOP("words", "%n joints not assessed"), static_cast<int>(open));
    row.push_back(ui::inOneLine(remarks).toStdString());
    rows.push_back(row);
  }
  std::vector<bool> toTheLeft(rows.front().size(), false);
  toTheLeft.front() = toTheLeft.back() = true;
  return textTable(rows, toTheLeft);
}

std::string extremesText(const LimitsReport& report) {
  if (report.extremes.empty()) return "";
  return "\n  " +
         said(QT_TRANSLATE_NOOP("words",
                                "every joint at its own limit from neutral; heights over the ground and ways from the "
                                "base in m, angles in degrees")) +
         "\n" + extremesTable(report.extremes, study::Chain::Neck) + "\n" +
         extremesTable(report.extremes, study::Chain::Tail);
}

std::string textOf(const LimitsReport& report) {
  const std::string& name = report.project.table.name;
  const std::string title = report.pose ? said(QT_TRANSLATE_NOOP("words", "%1: limits from %2"), {name, *report.pose})
                                        : said(QT_TRANSLATE_NOOP("words", "%1: limits from neutral"), {name});
  return title + "\n" + assumptionsText(report.assumptions) + contactText(report.contactJudged) + "\n" +
         jointsTable(report) + extremesText(report) + "\n  " + caution() + "\n  " +
         said(QT_TRANSLATE_NOOP("words", "(Kuznetsov & Tereschenko 2010; Cobley et al. 2013; Hutson & Hutson 2012)")) +
         "\n  " +
         said(QT_TRANSLATE_NOOP("words", "* ended by a tolerance of the program alone: program default, no source")) +
         "\n  " +
         said(QT_TRANSLATE_NOOP("words",
                                "degrees from neutral in the direction named, one motion at a time; the side named "
                                "rises in axial rotation")) +
         "\n";
}

/// Those that were named, else every joint of the column that moves.
std::vector<JointIndex> jointsAsked(const anatomy::Specimen& specimen, const Arguments& arguments) {
  std::vector<JointIndex> joints;
  for (const auto& option : arguments.options) {
    if (option.name == "--joint") joints.push_back(movableJoint(specimen, option.value));
  }
  for (std::size_t j = 0; !arguments.has("--joint") && j < specimen.joints.size(); ++j) {
    const anatomy::Joint& joint = specimen.joints[j];
    const bool column = joint.region <= anatomy::Region::Caudal && joint.id != "jaw";
    if (column && joint.kind != anatomy::JointKind::Fixed) joints.push_back({j});
  }
  return joints;
}

int limits(const VerbSpec&, const Arguments& arguments) {
  const auto project = openProject(arguments.file);
  const auto& specimen = project.specimen();
  const bool fromPose = arguments.has("--from-pose") || arguments.has("--pose");
  const auto chosen = choosePose(project, arguments);
  LimitsReport report{project, assumptionsFrom(arguments, project.assumptions), std::nullopt, false, {}, {}};
  if (fromPose) report.pose = chosen.name;
  const auto shapes = contactFor(project, arguments);
  const range::NeighbourContact* contact = shapes.get();
  report.contactJudged = contact != nullptr;
  const auto articulation = range::articulate(specimen, report.assumptions);
  for (const JointIndex joint : jointsAsked(specimen, arguments)) {
    const Eigen::Vector3d start = fromPose ? chosen.pose[joint] : Eigen::Vector3d::Zero();
    report.joints.push_back(range::limits(specimen, articulation, report.assumptions, joint, start, contact));
  }
  if (!arguments.has("--joint")) {
    report.extremes = study::extremes(specimen, articulation, report.assumptions, chosen.pose, contact);
  }
  std::cout << (arguments.has("--json") ? jsonOf(report) : textOf(report));
  return kDone;
}

}  // namespace

Verb limitsVerb() {
  return {
      {"limits", "FILE.zyga", QT_TRANSLATE_NOOP("words", "tells how far each joint goes and what stops it"),
       withAssumptionOptions(withContactOptions(
           {{"--joint", "ID", QT_TRANSLATE_NOOP("words", "one joint instead of the whole column; may be given again")},
            {"--from-pose", "", QT_TRANSLATE_NOOP("words", "other motions as in the present pose instead of neutral")},
            {"--pose", "NAME", QT_TRANSLATE_NOOP("words", "the same with a named pose")},
            {"--json", "", QT_TRANSLATE_NOOP("words", "for machines")}})),
       QT_TRANSLATE_NOOP(
           "words",
           "Each limit is measured from neutral in the direction it is named after, in degrees; one motion moves "
           "while\n"
           "the other two stay. torsion_left of the JSON is axial rotation with the left side up. Neck and tail at "
           "their\n"
           "extremes take every joint to its own limit from neutral, the rest of the animal as it stands.\n")},
      limits};
}

}  // namespace zyga::app
