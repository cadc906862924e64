#include <algorithm>
#include <numbers>

#include "app/verbs/assess_report.h"
#include "app/verbs/assumptions_words.h"
#include "app/verbs/limits_report.h"
#include "app/verbs/summary_text.h"
#include "core/files/json/json.h"
#include "core/files/json/json_layout.h"

namespace zyga::app {
namespace {

using files::jsonString;
using files::list;
using files::member;
using files::onLines;
using files::onOneLine;

/// "torsion_left"
std::string keyOf(range::Direction direction) {
  std::string key(toText(direction));
  std::replace(key.begin(), key.end(), ' ', '_');
  return key;
}

std::string endJson(const anatomy::Joint& joint, const range::JointLimits& limits, range::Direction direction) {
  const range::Limit& limit = limits[direction];
  const bool known = limit.supported && (joint.hasFacets() || joint.typed);
  return onOneLine({member("deg", known ? millionths(degreesTowards(limits, direction)) : "null"),
                    member("motion", jsonString(range::motionName(joint, motionOf(direction), signOf(direction)))),
                    member("stopped_by", jsonString(limit.stop.text))});
}

std::string jointJson(const LimitsReport& report, const range::JointLimits& limits) {
  const anatomy::Joint& joint = report.project.specimen[limits.joint];
  std::vector<std::string> members{member("id", jsonString(joint.id)),
                                   member("judged", limits.judged ? "true" : "false")};
  for (const range::Direction direction : range::kDirections) {
    members.push_back(member(keyOf(direction), endJson(joint, limits, direction)));
  }
  return onOneLine(members);
}

std::string extremeJson(const LimitsReport& report, const study::Extreme& extreme) {
  const bool neck = extreme.chain == study::Chain::Neck;
  const study::Carriage& carriage = extreme.carriage;
  std::vector<std::string> unjudged;
  for (const auto& joint : extreme.joints) {
    if (!joint.judged) unjudged.push_back(jsonString(report.project.specimen[joint.joint].id));
  }
  return onOneLine(
      {member("chain", jsonString(toText(extreme.chain))), member("direction", jsonString(keyOf(extreme.direction))),
       member("turn_deg", millionths(range::signOf(extreme.direction) * extreme.total * 180 / std::numbers::pi)),
       member("snout_height_m", neck ? millionths(carriage.snoutHeight) : "null"),
       member("eye_height_m", neck ? millionths(carriage.eyeHeight) : "null"),
       member("tip_height_m", millionths(carriage.tipHeight)), member("ahead_of_base_m", millionths(carriage.ahead)),
       member("left_of_base_m", millionths(carriage.left)), member("slope_deg", degreesJson(carriage.slope)),
       member("swing_deg", degreesJson(carriage.swing)), member("lowest_m", millionths(carriage.lowest)),
       member("not_judged", list(unjudged))});
}

}  // namespace

std::string limitsJson(const LimitsReport& report) {
  std::vector<std::string> joints, extremes;
  for (const auto& limits : report.joints) joints.push_back(jointJson(report, limits));
  for (const auto& extreme : report.extremes) extremes.push_back(extremeJson(report, extreme));
  return onLines({member("specimen", jsonString(report.project.table.name)), member("from", jsonString(report.from)),
                  member("assumptions", assumptionsJson(report.assumptions)),
                  member("contact_judged", report.contactJudged ? "true" : "false"),
                  member("joints", onLines(joints, "  ", '[', ']')),
                  member("extremes", extremes.empty() ? "[]" : onLines(extremes, "  ", '[', ']')),
                  member("caution", jsonString(kCaution))},
                 "", '{', '}') +
         "\n";
}

}  // namespace zyga::app
