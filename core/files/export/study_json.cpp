#include "core/files/export/study_json.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace zyga::files {
namespace {

using std::numbers::pi;
using study::SpreadOf;

constexpr json::Layout kOnLines = json::Layout::OnLines;

/// A volume of rotations (rad^3) in cubic degrees, rounded to whole ones: it is sampled, and known no better.
json::Value cubicDegrees(double volume) { return json::millionths(std::round(volume * std::pow(180 / pi, 3))); }

json::Value line(const study::Line& line) {
  json::Value points = json::Value::array(json::Layout::OnOneLine);
  for (const auto& p : line) points.push(json::point(p));
  return points;
}

json::Value lines(const std::vector<study::Line>& all) {
  json::Value items = json::Value::array(kOnLines);
  for (const auto& one : all) items.push(line(one));
  return items;
}

/// "torsion_left"
std::string keyOf(std::string_view words) {
  std::string key(words);
  std::replace(key.begin(), key.end(), ' ', '_');
  return key;
}

json::Value caseJson(const study::ElevationCase& one) {
  const study::Carriage& c = one.carriage;
  return json::object({{"case", toText(one.which)},
                       {"snout_height_m", json::millionths(c.snoutHeight)},
                       {"eye_height_m", json::millionths(c.eyeHeight)},
                       {"ahead_of_base_m", json::millionths(c.ahead)},
                       {"neck_slope_deg", json::degrees(one.slope)},
                       {"neck_base_slope_deg", json::degrees(one.baseSlope)},
                       {"head_slope_deg", json::degrees(one.headSlope)},
                       {"lowest_m", json::millionths(c.lowest)}});
}

json::Value spaceJson(const study::ReachSpace& space) {
  std::vector<json::Value> strip;
  for (const auto& s : space.strip) {
    strip.push_back(json::object(
        {{"bearing_deg", json::degrees(s.bearing)}, {"from_m", json::point(s.from)}, {"to_m", json::point(s.to)}}));
  }
  return json::object({{"volume_m3", json::millionths(space.volume)},
                       {"volume_without_ground_m3", json::millionths(space.volumeWithGround)},
                       {"share_of_directions", json::millionths(space.share)},
                       {"rays", space.rays},
                       {"precision_m", json::millionths(space.precision)},
                       {"ground_area_m2", json::millionths(space.stripArea)},
                       {"ground_strip", json::arrayOf(strip)}});
}

json::Value rowJson(const study::RangeChart::Row& row) {
  json::Value members = json::object({{"id", row.id}, {"judged", row.limits.judged}, {"typed", row.typed}});
  for (const range::Direction direction : range::kDirections) {
    const range::Limit& limit = row.limits[direction];
    members.add(keyOf(toText(direction)) + "_deg",
                limit.supported && row.limits.judged ? json::degrees(limit.angle) : json::Value());
  }
  members.add("present_deg", json::array({json::degrees(row.present[0]), json::degrees(row.present[1]),
                                          json::degrees(row.present[2])}));
  members.add("level", toText(row.level));
  members.add("rotations_deg3", cubicDegrees(row.rotations.corrected));
  members.add("rotations_uncorrected_deg3", cubicDegrees(row.rotations.plain));
  return members;
}

json::Value quantityJson(const study::SpreadStudy& spread, SpreadOf what) {
  const auto i = static_cast<std::size_t>(what);
  const study::Quantiles& q = spread.quantiles[i];
  const bool angle = study::isAngle(what);
  const auto value = [&](double v) { return angle ? json::degrees(v) : json::millionths(v); };
  return json::object({{"quantity", toText(what)},
                       {"unit", angle ? "deg" : "m"},
                       {"as_is", value(spread.asIs[i])},
                       {"q05", value(q.q05)},
                       {"q50", value(q.q50)},
                       {"q95", value(q.q95)},
                       {"mean", value(q.mean)},
                       {"standard_deviation", value(q.deviation)}});
}

json::Value optionsJson(const study::SpreadOptions& o) {
  const auto between = [](const study::Between& b, double scale) {
    return json::array({json::millionths(b.min * scale), json::millionths(b.max * scale)});
  };
  json::Value members =
      json::object({{"measured_percent", json::millionths(o.errors.measured * 100)},
                    {"inferred_percent", json::millionths(o.errors.inferred * 100)},
                    {"measured_angle_deg", json::degrees(o.errors.measuredAngle)},
                    {"inferred_angle_deg", json::degrees(o.errors.inferredAngle)},
                    {"least_overlap_percent", o.varyAssumptions ? between(o.overlap, 100) : json::Value()},
                    {"cartilage_percent", o.varyAssumptions ? between(o.cartilagePercent, 1) : json::Value()}});
  return members;
}

json::Value pressureRow(const study::Pressure::Row& row) {
  return json::object({{"case", toText(row.which)},
                       {"head_height_m", json::millionths(row.headHeight)},
                       {"column_m", json::millionths(row.column)},
                       {"pressure_mmhg", json::millionths(row.pressure)},
                       {"low_mmhg", json::millionths(row.low)},
                       {"high_mmhg", json::millionths(row.high)},
                       {"at_heart_mmhg", json::millionths(row.atHeart)}});
}

json::Value loadJson(const study::JointStress::Place& place, const study::JointLoad& load) {
  return json::object({{"id", place.id},
                       {"measured", place.measured},
                       {"mass_kg", json::millionths(load.mass)},
                       {"moment_n_m", json::millionths(load.moment)},
                       {"sideways_n_m", json::millionths(load.sideways)},
                       {"lever_m", json::millionths(load.lever)},
                       {"cosine_to_vertical", json::millionths(load.cosine)},
                       {"area_m2", json::millionths(place.area)},
                       {"force_n", json::millionths(load.force)},
                       {"stress_pa", json::millionths(load.stress)}});
}

json::Value postureJson(const study::JointStress& stress, const study::NeckLoads& posture) {
  const study::Evenness& even = posture.evenness;
  std::vector<json::Value> joints;
  for (std::size_t i = 0; i < posture.joints.size(); ++i)
    joints.push_back(loadJson(stress.joints[i], posture.joints[i]));
  return json::object({{"case", toText(posture.which)},
                       {"neck_slope_deg", json::degrees(posture.slope)},
                       {"mean_stress_pa", json::millionths(even.mean)},
                       {"coefficient_of_variation", json::millionths(even.variation)},
                       {"coefficient_low", json::millionths(posture.variationLow)},
                       {"coefficient_high", json::millionths(posture.variationHigh)},
                       {"peak_joint", stress.joints[even.peak].id},
                       {"peak_to_mean", json::millionths(even.peakToMean)},
                       {"joints", json::arrayOf(joints, kOnLines)}},
                      kOnLines);
}

json::Value bendJson(const study::EvenBend& bend) {
  return json::object({{"share_of_range", json::millionths(bend.share)},
                       {"neck_slope_deg", json::degrees(bend.slope)},
                       {"coefficient_of_variation", json::millionths(bend.variation)}});
}

json::Value jsonOf(const study::Elevation& elevation, const StudyTold& words) {
  std::vector<json::Value> cases;
  for (const auto& one : elevation.cases) cases.push_back(caseJson(one));
  return json::object({{"kind", "elevation"},
                       {"cases", json::arrayOf(cases, kOnLines)},
                       {"fore_feet_ahead_of_neck_base_m", json::millionths(elevation.foreFeet)},
                       {"not_judged", json::arrayOf(elevation.unjudged)},
                       {"told", json::arrayOf(words.sentences, kOnLines)}},
                      kOnLines);
}

json::Value jsonOf(const study::Envelope& envelope, const StudyTold& words) {
  std::vector<json::Value> ground;
  for (const auto& stretch : envelope.ground)
    ground.push_back(json::array({json::millionths(stretch.from), json::millionths(stretch.to)}));
  return json::object({{"kind", "envelope"},
                       {"coordinates", "m ahead of the neck's base, m over the ground"},
                       {"highest_m", json::point(envelope.highest)},
                       {"farthest_m", json::point(envelope.farthest)},
                       {"lowest_m", json::point(envelope.lowest)},
                       {"ground_ahead_m", json::arrayOf(ground)},
                       {"area_over_ground_m2", json::millionths(envelope.area)},
                       {"precision_m", json::millionths(envelope.precision)},
                       {"fore_feet_ahead_of_neck_base_m", json::millionths(envelope.foreFeet)},
                       {"neck_out_of_plane_m", json::millionths(envelope.outOfPlane)},
                       {"space", envelope.space ? spaceJson(*envelope.space) : json::Value()},
                       {"not_judged", json::arrayOf(envelope.unjudged)},
                       {"told", json::arrayOf(words.sentences, kOnLines)},
                       {"outlines", lines(envelope.outlines)}},
                      kOnLines);
}

json::Value jsonOf(const study::RangeChart& chart, const StudyTold& words) {
  std::vector<json::Value> rows;
  for (const auto& row : chart.rows) rows.push_back(rowJson(row));
  return json::object({{"kind", "range"},
                       {"joints", json::arrayOf(rows, kOnLines)},
                       {"told", json::arrayOf(words.sentences, kOnLines)}},
                      kOnLines);
}

json::Value jsonOf(const study::SpreadStudy& spread, const StudyTold& words) {
  std::vector<json::Value> quantities;
  for (const SpreadOf what : study::kSpreads) quantities.push_back(quantityJson(spread, what));
  return json::object({{"kind", "spread"},
                       {"seed", spread.options.seed},
                       {"draws", spread.draws.size()},
                       {"failed", spread.failed},
                       {"errors", optionsJson(spread.options)},
                       {"quantities", json::arrayOf(quantities, kOnLines)},
                       {"present_pose_supported_share", json::millionths(spread.supportedShare)},
                       {"told", json::arrayOf(words.sentences, kOnLines)}},
                      kOnLines);
}

json::Value jsonOf(const study::Pressure& pressure, const StudyTold& words) {
  std::vector<json::Value> rows;
  for (const auto& row : pressure.rows) rows.push_back(pressureRow(row));
  return json::object({{"kind", "pressure"},
                       {"heart_height_m", json::millionths(pressure.heartHeight)},
                       {"heart_share_of_chest", json::millionths(pressure.heart.share)},
                       {"blood_density_kg_l", json::millionths(study::kBloodDensity)},
                       {"mercury_density_kg_l", json::millionths(study::kMercuryDensity)},
                       {"perfusion_mmhg", json::millionths(study::kPerfusionPressure)},
                       {"cases", json::arrayOf(rows, kOnLines)},
                       {"told", json::arrayOf(words.sentences, kOnLines)},
                       {"views", json::arrayOf(words.views)},
                       {"caution", words.caution}},
                      kOnLines);
}

json::Value jsonOf(const study::JointStress& stress, const StudyTold& words) {
  std::vector<json::Value> postures, bends;
  for (const auto& posture : stress.postures) postures.push_back(postureJson(stress, posture));
  for (const auto& bend : stress.bends) bends.push_back(bendJson(bend));
  const auto& density = stress.densities;
  return json::object({{"kind", "stress"},
                       {"mass_kg", json::array({json::millionths(stress.mass.low), json::millionths(stress.mass.mass),
                                                json::millionths(stress.mass.high)})},
                       {"head_density_kg_m3", json::millionths(density[study::BodyPart::Head])},
                       {"neck_density_kg_m3", json::millionths(density[study::BodyPart::Neck])},
                       {"tension_share_of_spine", json::millionths(stress.tension.share)},
                       {"joints_measured", stress.measured()},
                       {"cases", json::arrayOf(postures, kOnLines)},
                       {"even_bends", json::arrayOf(bends, kOnLines)},
                       {"evenest", stress.evenest ? bendJson(stress.bends[*stress.evenest]) : json::Value()},
                       {"alike_neck_slope_deg", stress.alike ? json::array({json::degrees(stress.alike->front()),
                                                                            json::degrees(stress.alike->back())})
                                                             : json::Value()},
                       {"told", json::arrayOf(words.sentences, kOnLines)},
                       {"views", json::arrayOf(words.views)},
                       {"caution", words.caution}},
                      kOnLines);
}

}  // namespace

json::Value studyJson(const study::StudyResult& result, const StudyTold& told) {
  json::Value made = std::visit([&](const auto& found) { return jsonOf(found, told); }, result);
  made.add("contact_judged", study::contactJudged(result));
  return made;
}

}  // namespace zyga::files
