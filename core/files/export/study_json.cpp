#include "core/files/export/study_json.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/files/json/json.h"
#include "core/files/json/json_layout.h"
#include "core/files/json/numeral.h"

namespace zyga::files {
namespace {

using std::numbers::pi;
using study::SpreadOf;

std::string number(double value) { return std::isfinite(value) ? toNumeral(std::round(value * 1e6) / 1e6) : "null"; }
std::string degrees(double angle) { return number(angle * 180 / pi); }
/// Whole cubic degrees tell enough.
std::string cubicDegrees(double volume) { return number(std::round(volume * std::pow(180 / pi, 3))); }
std::string optional(const std::optional<double>& value) { return value ? number(*value) : "null"; }
std::string point(const Eigen::Vector2d& p) { return list({number(p.x()), number(p.y())}); }
std::string line(const study::Line& line) {
  std::vector<std::string> points;
  for (const auto& p : line) points.push_back(point(p));
  return list(points);
}
std::string lines(const std::vector<study::Line>& all) {
  std::vector<std::string> items;
  for (const auto& one : all) items.push_back(line(one));
  return items.empty() ? "[]" : onLines(items, "    ", '[', ']');
}
std::string strings(const std::vector<std::string>& words) {
  std::vector<std::string> items;
  for (const auto& word : words) items.push_back(jsonString(word));
  return list(items);
}
/// "torsion_left"
std::string keyOf(std::string_view words) {
  std::string key(words);
  std::replace(key.begin(), key.end(), ' ', '_');
  return key;
}
std::string block(const std::vector<std::string>& parts, char open, char close) {
  return parts.empty() ? std::string{open, close} : onLines(parts, "    ", open, close);
}
std::string object(const std::vector<std::string>& members) { return onLines(members, "  ", '{', '}'); }
/// The sentences of a study, one a line.
std::string told(const std::vector<std::string>& sentences) {
  std::vector<std::string> items;
  for (const auto& sentence : sentences) items.push_back(jsonString(sentence));
  return block(items, '[', ']');
}

std::string caseJson(const study::ElevationCase& one) {
  const study::Carriage& c = one.carriage;
  return onOneLine({member("case", jsonString(toText(one.which))), member("snout_height_m", number(c.snoutHeight)),
                    member("eye_height_m", number(c.eyeHeight)), member("ahead_of_base_m", number(c.ahead)),
                    member("neck_slope_deg", degrees(one.slope)), member("neck_base_slope_deg", degrees(one.baseSlope)),
                    member("head_slope_deg", degrees(one.headSlope)), member("lowest_m", number(c.lowest))});
}

std::string spaceJson(const study::ReachSpace& space) {
  std::vector<std::string> strip;
  for (const auto& s : space.strip) {
    strip.push_back(onOneLine(
        {member("bearing_deg", degrees(s.bearing)), member("from_m", point(s.from)), member("to_m", point(s.to))}));
  }
  return onOneLine({member("volume_m3", number(space.volume)),
                    member("volume_without_ground_m3", number(space.volumeWithGround)),
                    member("share_of_directions", number(space.share)), member("rays", std::to_string(space.rays)),
                    member("precision_m", number(space.precision)), member("ground_area_m2", number(space.stripArea)),
                    member("ground_strip", list(strip))});
}

std::string rowJson(const study::RangeChart::Row& row) {
  std::vector<std::string> members{member("id", jsonString(row.id)),
                                   member("judged", row.limits.judged ? "true" : "false"),
                                   member("typed", row.typed ? "true" : "false")};
  for (const range::Direction direction : range::kDirections) {
    const range::Limit& limit = row.limits[direction];
    members.push_back(member(keyOf(toText(direction)) + "_deg",
                             limit.supported && row.limits.judged ? degrees(limit.angle) : "null"));
  }
  members.push_back(
      member("present_deg", list({degrees(row.present[0]), degrees(row.present[1]), degrees(row.present[2])})));
  members.push_back(member("level", jsonString(toText(row.level))));
  members.push_back(member("rotations_deg3", cubicDegrees(row.rotations.corrected)));
  members.push_back(member("rotations_uncorrected_deg3", cubicDegrees(row.rotations.plain)));
  return onOneLine(members);
}

std::string quantityJson(const study::SpreadStudy& spread, SpreadOf what) {
  const auto i = static_cast<std::size_t>(what);
  const study::Quantiles& q = spread.quantiles[i];
  const bool angle = study::isAngle(what);
  const auto value = [&](double v) { return angle ? degrees(v) : number(v); };
  return onOneLine({member("quantity", jsonString(toText(what))), member("unit", jsonString(angle ? "deg" : "m")),
                    member("as_is", value(spread.asIs[i])), member("q05", value(q.q05)), member("q50", value(q.q50)),
                    member("q95", value(q.q95)), member("mean", value(q.mean)),
                    member("standard_deviation", value(q.deviation))});
}

std::string optionsJson(const study::SpreadOptions& o) {
  const auto between = [](const study::Between& b, double scale) {
    return list({number(b.least * scale), number(b.most * scale)});
  };
  std::vector<std::string> members{
      member("measured_percent", number(o.errors.measured * 100)),
      member("inferred_percent", number(o.errors.inferred * 100)),
      member("measured_angle_deg", degrees(o.errors.measuredAngle)),
      member("inferred_angle_deg", degrees(o.errors.inferredAngle)),
      member("least_overlap_percent", o.varyAssumptions ? between(o.overlap, 100) : "null"),
      member("cartilage_percent", o.varyAssumptions ? between(o.cartilagePercent, 1) : "null")};
  return onOneLine(members);
}

std::string pressureRow(const study::Pressure::Row& row) {
  return onOneLine({member("case", jsonString(toText(row.which))), member("head_height_m", number(row.headHeight)),
                    member("column_m", number(row.column)), member("pressure_mmhg", number(row.pressure)),
                    member("low_mmhg", number(row.low)), member("high_mmhg", number(row.high))});
}

}  // namespace

std::string studyJson(const study::Elevation& elevation) {
  std::vector<std::string> cases;
  for (const auto& one : elevation.cases) cases.push_back(caseJson(one));
  return object({member("kind", jsonString("elevation")), member("cases", block(cases, '[', ']')),
                 member("fore_feet_ahead_of_neck_base_m", optional(elevation.foreFeet)),
                 member("not_judged", strings(elevation.unjudged)), member("told", told(sentences(elevation)))});
}

std::string studyJson(const study::Envelope& envelope) {
  std::vector<std::string> ground;
  for (const auto& stretch : envelope.ground) ground.push_back(list({number(stretch.from), number(stretch.to)}));
  return object({member("kind", jsonString("envelope")),
                 member("coordinates", jsonString("m ahead of the neck's base, m over the ground")),
                 member("highest_m", point(envelope.highest)), member("farthest_m", point(envelope.farthest)),
                 member("lowest_m", point(envelope.lowest)), member("ground_ahead_m", list(ground)),
                 member("area_over_ground_m2", number(envelope.area)),
                 member("precision_m", number(envelope.precision)),
                 member("fore_feet_ahead_of_neck_base_m", optional(envelope.foreFeet)),
                 member("neck_out_of_plane_m", number(envelope.outOfPlane)),
                 member("space", envelope.space ? spaceJson(*envelope.space) : "null"),
                 member("not_judged", strings(envelope.unjudged)), member("told", told(sentences(envelope))),
                 member("outlines", lines(envelope.outlines))});
}

std::string studyJson(const study::RangeChart& chart) {
  std::vector<std::string> rows;
  for (const auto& row : chart.rows) rows.push_back(rowJson(row));
  return object({member("kind", jsonString("range")), member("joints", block(rows, '[', ']')),
                 member("told", told(sentences(chart)))});
}

std::string studyJson(const study::SpreadStudy& spread) {
  std::vector<std::string> quantities;
  for (const SpreadOf what : study::kSpreads) quantities.push_back(quantityJson(spread, what));
  return object({member("kind", jsonString("spread")), member("seed", std::to_string(spread.options.seed)),
                 member("draws", std::to_string(spread.draws.size())), member("failed", std::to_string(spread.failed)),
                 member("errors", optionsJson(spread.options)), member("quantities", block(quantities, '[', ']')),
                 member("present_pose_supported_share", number(spread.supportedShare)),
                 member("told", told(sentences(spread)))});
}

std::string studyJson(const study::Pressure& pressure) {
  std::vector<std::string> rows;
  for (const auto& row : pressure.rows) rows.push_back(pressureRow(row));
  return object({member("kind", jsonString("pressure")), member("heart_height_m", number(pressure.heartHeight)),
                 member("heart_share_of_chest", number(pressure.heart.share)),
                 member("blood_density_kg_l", number(study::kBloodDensity)),
                 member("mercury_density_kg_l", number(study::kMercuryDensity)), member("cases", block(rows, '[', ']')),
                 member("told", told(sentences(pressure))),
                 member("views", list({jsonString(study::kPressureViews[0]), jsonString(study::kPressureViews[1])})),
                 member("caution", jsonString(study::kPressureCaution))});
}

}  // namespace zyga::files
