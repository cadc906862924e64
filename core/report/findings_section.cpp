#include <algorithm>
#include <array>

#include "core/range/limits.h"
#include "core/report/sections.h"
#include "core/report/words.h"
#include "core/study/reach/extremes.h"

namespace zyga::report {
namespace {

using range::Direction;
using range::Level;

std::array<std::size_t, 4> countLevels(const range::Assessment& assessment) {
  std::array<std::size_t, 4> counts{};
  for (const auto& joint : assessment.joints) ++counts[static_cast<std::size_t>(joint.level)];
  return counts;
}

std::vector<const range::JointVerdict*> worstFirst(const range::Assessment& assessment) {
  std::vector<const range::JointVerdict*> out;
  for (const auto& joint : assessment.joints)
    if (joint.level == Level::Near || joint.level == Level::Beyond) out.push_back(&joint);
  std::stable_sort(out.begin(), out.end(), [](const auto* a, const auto* b) { return a->level > b->level; });
  return out;
}

/// "C6-C7 beyond: right facets share 38 %" without the name and level that stand in columns of their own.
std::string reasonOf(const range::JointVerdict& verdict) {
  const auto colon = verdict.sentence.find(": ");
  return colon == std::string::npos ? verdict.sentence : verdict.sentence.substr(colon + 2);
}

std::string endOf(const range::JointLimits& limits, Direction direction) {
  if (!limits[direction].supported) return "none";
  return limits.judged ? signedDegrees(limits[direction].angle) : "not judged";
}

}  // namespace

Section findingsSection(const Matter& matter, Numbers& numbers) {
  const auto counts = countLevels(matter.assessment);
  const auto count = [&](Level level) { return counts[static_cast<std::size_t>(level)]; };
  for (const Level level : {Level::Supported, Level::Near, Level::Beyond, Level::NotJudged}) {
    std::string key = "joints." + std::string(toText(level));
    std::replace(key.begin(), key.end(), ' ', '_');
    numbers.push_back({key, static_cast<double>(count(level)), ""});
  }
  Section section;
  section.heading = "Findings";
  section.sentences = {"Of " + counted(matter.assessment.joints.size(), "joint", "joints") + " " +
                       std::to_string(count(Level::Beyond)) + " are beyond their range, " +
                       std::to_string(count(Level::Near)) + " near its edge, " +
                       std::to_string(count(Level::Supported)) + " supported and " +
                       std::to_string(count(Level::NotJudged)) + " not judged."};
  const auto findings = worstFirst(matter.assessment);
  if (findings.empty()) section.sentences.push_back("Every joint that can be judged is inside its range.");
  Table table{"", {"joint", "level", "why"}, {true, true, true}, {}};
  for (const auto* verdict : findings)
    table.rows.push_back(
        {matter.project.specimen[verdict->joint].id, std::string(toText(verdict->level)), reasonOf(*verdict)});
  if (!table.rows.empty()) section.tables.push_back(std::move(table));
  for (const auto& verdict : matter.assessment.joints)
    if (!verdict.articulation.empty()) section.cautions.push_back(verdict.articulation);
  section.cautions.push_back("Contact between bones away from their joints is not part of this report.");
  return section;
}

Section neckLimitsSection(const Matter& matter, Numbers& numbers) {
  Section section;
  section.heading = "Limits of the neck";
  Table table{"Degrees from neutral, one motion at a time, the joint's other angles at zero.",
              {"joint", "up", "down", "left", "right", "what stops it upwards"},
              {true, false, false, false, false, true},
              {}};
  for (const auto joint : jointsOf(matter.project.specimen, study::Chain::Neck)) {
    const range::JointLimits limits = range::limits(matter.project.specimen, matter.articulation,
                                                    matter.project.assumptions, joint, Eigen::Vector3d::Zero());
    const std::string& id = matter.project.specimen[joint].id;
    table.rows.push_back({id, endOf(limits, Direction::Dorsal), endOf(limits, Direction::Ventral),
                          endOf(limits, Direction::Left), endOf(limits, Direction::Right),
                          limits[Direction::Dorsal].stop.text});
    for (const Direction direction : {Direction::Dorsal, Direction::Ventral, Direction::Left, Direction::Right})
      if (limits[direction].supported && limits.judged)
        numbers.push_back(
            {"limit." + id + "." + std::string(toText(direction)), limits[direction].angle * 180 / M_PI, "deg"});
  }
  section.tables = {std::move(table)};
  section.cautions = {
      "Ranges are of bare bones. They may be off by 5 degrees a joint (Kuznetsov & Tereschenko 2010), and soft tissue "
      "may lessen them or not (Cobley, Rayfield & Barrett 2013; Hutson & Hutson 2012)."};
  return section;
}

}  // namespace zyga::report
