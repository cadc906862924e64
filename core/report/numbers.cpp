#include "core/report/numbers.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/files/json/json_write.h"
#include "core/files/json/numeral.h"

namespace zyga::report {
namespace {

namespace json = files::json;

using range::Direction;
using range::Level;

/// "most_dorsiflexed" from an id of several words.
std::string keyOf(std::string_view id) {
  std::string key(id);
  std::replace(key.begin(), key.end(), ' ', '_');
  return key;
}

class Collector {
 public:
  explicit Collector(const ReportData& data) : data_(data) {}

  std::vector<Number> all() {
    if (!data_.claimsOnly) {
      stand();
      levels();
    }
    claims();
    if (!data_.claimsOnly) {
      lengths();
      completeness();
    }
    add("assumptions.least_overlap", 100 * data_.scenario.assumptions().minOverlap, "%");
    if (data_.claimsOnly) return std::move(numbers_);
    neckLimits();
    studies();
    masses();
    angles();
    return std::move(numbers_);
  }

 private:
  void add(std::string key, double value, std::string_view unit) {
    if (std::isfinite(value)) numbers_.push_back({std::move(key), value, unit});
  }
  void addAngle(std::string key, double angle) { add(std::move(key), angle * 180 / std::numbers::pi, "deg"); }

  void stand() {
    if (data_.snoutHeight) add("stand.snout_height", *data_.snoutHeight, "m");
    add("stand.hip_height", data_.stand.hipHeight, "m");
    add("stand.shoulder_height", data_.stand.shoulderHeight, "m");
    add("stand.glenoacetabular", data_.stand.glenoacetabular, "m");
    addAngle("stand.trunk_slope", data_.stand.trunkSlope);
    addAngle("stand.neck_base_slope", data_.stand.neckBaseSlope);
    addAngle("stand.tail_base_slope", data_.stand.tailBaseSlope);
  }

  void levels() {
    const auto& joints = data_.scenario.assessment().joints;
    for (const Level level : {Level::Supported, Level::Near, Level::Beyond, Level::NotJudged})
      add("joints." + keyOf(toText(level)),
          static_cast<double>(
              std::count_if(joints.begin(), joints.end(), [level](const auto& joint) { return joint.level == level; })),
          "");
  }

  void claims() {
    for (std::size_t i = 0; i < data_.claims.size(); ++i) {
      const auto& [claim, answer, probability] = data_.claims[i];
      const std::string key = "claim." + std::to_string(i + 1);
      add(key + ".supported", answer->supported ? 1 : 0, "");
      if (probability && probability->answered() > 0) {
        add(key + ".probability", 100 * probability->probability, "%");
        add(key + ".probability_standard_error", 100 * probability->standardError, "%");
        add(key + ".samples", probability->answered(), "");
      }
      add(key + ".joints_measured", answer->tally.measured, "");
      add(key + ".joints_partly_measured", answer->tally.partly, "");
      add(key + ".joints_inferred", answer->tally.inferred, "");
      add(key + ".joints_by_default", answer->tally.byDefault, "");
      add(key + ".joints_not_answered", static_cast<double>(answer->notAnswered.size()), "");
      if (answer->contact.judged) add(key + ".contacts", static_cast<double>(answer->contact.findings.size()), "");
      if (answer->best && traitsOf(claim.kind).angle) addAngle(key + ".best", *answer->best);
      if (answer->best && !traitsOf(claim.kind).angle) add(key + ".best", *answer->best, "m");
      if (answer->minOverlap) add(key + ".least_overlap", 100 * *answer->minOverlap, "%");
      if (answer->minCartilage) add(key + ".least_cartilage", *answer->minCartilage, "%");
      besideClaim(key, claim, *answer);
    }
  }

  void besideClaim(const std::string& key, const study::Claim& claim, const study::ClaimAnswer& answer) {
    const auto addClaimed = [&](const std::string& what, double value) {
      traitsOf(claim.kind).angle ? addAngle(key + what, value) : add(key + what, value, "m");
    };
    if (answer.margin && answer.margin->narrowing) addAngle(key + ".narrowed_by", *answer.margin->narrowing);
    if (answer.margin && answer.margin->widening) addAngle(key + ".widened_by", *answer.margin->widening);
    if (answer.dorsals && answer.dorsals->best) addClaimed(".with_foremost_dorsals.best", *answer.dorsals->best);
    if (!answer.habit) return;
    addClaimed(".habitual.undeflected", answer.habit->undeflected);
    addClaimed(".habitual.extended", answer.habit->extended);
  }

  void lengths() {
    const anatomy::Summary& s = data_.lengths;
    for (const auto& [key, value] : {std::pair{"length.total", s.total},
                                     {"length.skull", s.skull},
                                     {"length.neck", s.neck},
                                     {"length.trunk", s.trunk},
                                     {"length.sacrum", s.sacrum},
                                     {"length.tail", s.tail},
                                     {"length.humerus", s.humerus},
                                     {"length.femur", s.femur}})
      add(key, value, "m");
  }

  void completeness() {
    add("completeness.bones", static_cast<double>(data_.completeness.bones), "");
    add("completeness.found", static_cast<double>(data_.completeness.found), "");
    add("completeness.found_or_mirrored", static_cast<double>(data_.completeness.withMirrored), "");
  }

  void neckLimits() {
    for (const range::JointLimits& limits : data_.neckLimits)
      for (const Direction direction : {Direction::Dorsal, Direction::Ventral, Direction::Left, Direction::Right})
        if (limits[direction].supported && limits.judged)
          addAngle("limit." + data_.scenario.specimen()[limits.joint].id + "." + std::string(toText(direction)),
                   limits[direction].angle);
  }

  void studies() {
    if (const auto* elevation = data_.find<study::Elevation>())
      for (const auto& one : elevation->cases) {
        add("elevation." + keyOf(toText(one.which)) + ".snout_height", one.carriage.snoutHeight, "m");
        addAngle("elevation." + keyOf(toText(one.which)) + ".neck_slope", one.slope);
      }
    if (const auto* envelope = data_.find<study::Envelope>()) {
      add("reach.highest", envelope->highest.y(), "m");
      add("reach.area", envelope->area, "m2");
    }
    if (const auto* pressure = data_.find<study::Pressure>())
      for (const auto& row : pressure->rows) {
        add("pressure." + keyOf(toText(row.which)), row.pressure, "mmHg");
        add("pressure." + keyOf(toText(row.which)) + ".at_heart", row.atHeart, "mmHg");
      }
    if (const auto* stress = data_.find<study::JointStress>()) jointStress(*stress);
  }

  void jointStress(const study::JointStress& stress) {
    mass("stress.head_and_neck", stress.mass);
    for (const auto& posture : stress.postures) {
      const std::string key = "stress." + keyOf(toText(posture.which));
      add(key + ".mean", posture.evenness.mean / 1000, "kPa");
      if (posture.evenness.variation) add(key + ".variation", 100 * *posture.evenness.variation, "%");
      if (posture.evenness.peakToMean) add(key + ".peak_to_mean", *posture.evenness.peakToMean, "");
    }
    const auto& present = stress[study::NeckCarriage::Present].joints;
    for (std::size_t i = 0; i < present.size(); ++i) {
      add("stress.joint." + stress.joints[i].id + ".force", present[i].force, "N");
      add("stress.joint." + stress.joints[i].id, present[i].stress / 1000, "kPa");
    }
    if (!stress.evenest) return;
    addAngle("stress.evenest.neck_slope", stress.bends[*stress.evenest].slope);
    add("stress.evenest.variation", 100 * *stress.bends[*stress.evenest].variation, "%");
  }

  void mass(const std::string& key, const study::MassRange& mass) {
    add(key + ".low", mass.low, "kg");
    add(key + ".middle", mass.mass, "kg");
    add(key + ".high", mass.high, "kg");
  }

  void masses() {
    mass("mass.by_volume", data_.balance.body.mass);
    if (data_.massByCircumference) mass("mass.by_circumference", data_.massByCircumference->mass);
    if (data_.balance.margin) add("balance.margin", *data_.balance.margin, "m");
    if (data_.balance.foreShare) add("balance.fore_share", 100 * *data_.balance.foreShare, "%");
    if (data_.balance.feetMargin) add("balance.feet_margin", *data_.balance.feetMargin, "m");
    if (const auto& load = data_.balance.tailLoad) {
      add("balance.tail_share.least", 100 * load->least, "%");
      add("balance.tail_share.most", 100 * load->most, "%");
    }
  }

  void angles() {
    static constexpr std::array<const char*, 3> kMotions{"flexion", "lateral", "torsion"};
    for (const range::JointVerdict& verdict : data_.scenario.assessment().joints)
      for (std::size_t m = 0; m < 3; ++m)
        addAngle("joint." + data_.scenario.specimen()[verdict.joint].id + "." + kMotions[m],
                 data_.scenario.pose()[verdict.joint][static_cast<Eigen::Index>(m)]);
  }

  const ReportData& data_;
  std::vector<Number> numbers_;
};

}  // namespace

std::vector<Number> numbersOf(const ReportData& data) { return Collector(data).all(); }

std::string numbersCsv(const ReportData& data) {
  std::string out = "key,value,unit\n";
  for (const Number& number : numbersOf(data))
    out += number.key + "," + files::toNumeral(number.value) + "," + std::string(number.unit) + "\n";
  return out;
}

std::string numbersJson(const ReportData& data, std::string_view subtitle) {
  namespace json = files::json;
  json::Value members = json::Value::object(json::Layout::OnLines);
  for (const Number& number : numbersOf(data)) {
    json::Value parts = json::object({{"value", json::number(number.value)}});
    if (!number.unit.empty()) parts.add("unit", number.unit);
    members.add(number.key, std::move(parts));
  }
  return json::document(
      json::object({{"title", data.name}, {"subtitle", subtitle}, {"numbers", members}}, json::Layout::OnLines));
}

}  // namespace zyga::report
