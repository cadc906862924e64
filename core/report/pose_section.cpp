#include <cmath>

#include "core/kinematics/stand_readings.h"
#include "core/report/sections.h"
#include "core/report/words.h"

namespace zyga::report {
namespace {

std::string cartilageWords(const range::Cartilage& cartilage) {
  // At most two places, without zeros that say nothing.
  std::string amount = fixed(cartilage.amount, 2);
  amount.erase(amount.find_last_not_of('0') + 1);
  if (amount.ends_with('.')) amount.pop_back();
  return amount + (cartilage.in == range::Cartilage::In::Millimetres ? " mm" : " % of the centrum's length");
}

std::string thousandths(double metres) { return fixed(metres * 1000, 1) + " mm"; }

struct Reading {
  const char* words;
  const char* key;
  double value;
  bool angle;
};

Table readingsTable(const std::vector<Reading>& readings, Numbers& numbers) {
  Table table{"", {"reading", "value"}, {true, false}, {}};
  for (const Reading& reading : readings) {
    if (!std::isfinite(reading.value)) continue;
    table.rows.push_back({reading.words, reading.angle ? degrees(reading.value) : metres(reading.value)});
    numbers.push_back(
        {reading.key, reading.angle ? reading.value * 180 / M_PI : reading.value, reading.angle ? "deg" : "m"});
  }
  return table;
}

}  // namespace

Section assumptionsSection(const Matter& matter, Numbers& numbers) {
  const range::Assumptions& a = matter.project.assumptions;
  const char* by = a.overlapBy == range::OverlapBy::Length ? "length" : "area";
  numbers.push_back({"assumptions.least_overlap", 100 * a.leastOverlap, "%"});
  Section section;
  section.heading = "Assumptions";
  section.tables = {
      {"",
       {"what is taken for granted", "value"},
       {true, true},
       {{"least overlap of the facets, by " + std::string(by), percent(a.leastOverlap)},
        {"cartilage in the neck", cartilageWords(a.neck)},
        {"cartilage in the trunk", cartilageWords(a.trunk)},
        {"cartilage in the tail", cartilageWords(a.tail)},
        {"neutral articulation by", a.neutralBy == range::NeutralBy::Facets ? "facets" : "facets and centra"},
        {"facets may press into each other by", percent(a.facetContactTolerated) + " of their length"},
        {"facets may gape by", percent(a.facetGapTolerated) + " of their length"},
        {"bones may enter each other by", thousandths(a.contactTolerated)},
        {"near the edge within", percent(a.nearMargin) + " of a limit"}}}};
  section.cautions = {
      "At least half of the facet's length covered is the common published rule (Cobley, Rayfield & Barrett 2013, PLoS "
      "ONE 8(8):e72187); living animals keep 50 %, 25 % or almost none (Kambic et al. 2017, Front. Zool. 14:37). No "
      "amount of cartilage is known to be right."};
  return section;
}

Section poseSection(const Matter& matter, Numbers& numbers) {
  const kinematics::StandReadings stand = kinematics::readStand(matter.project.specimen, matter.X_WB);
  Section section;
  section.heading = "Pose";
  section.sentences = {"Pose: " + matter.poseName + "."};
  section.figure = Figure::Pose;
  section.figureCaption = "From the left. Found bones are warm, mirrored and scaled ones darker, inferred ones grey.";
  const double nothing = std::nan("");
  section.tables = {
      readingsTable({{"snout over the ground", "stand.snout_height",
                      kinematics::snoutHeight(matter.project.specimen, matter.X_WB).value_or(nothing), false},
                     {"hip over the ground", "stand.hip_height", stand.hipHeight, false},
                     {"shoulder over the ground", "stand.shoulder_height", stand.shoulderHeight, false},
                     {"glenoacetabular distance", "stand.glenoacetabular", stand.glenoacetabular, false},
                     {"trunk, rising forwards", "stand.trunk_slope", stand.trunkSlope, true},
                     {"neck base, rising forwards", "stand.neck_base_slope", stand.neckBaseSlope, true},
                     {"tail base, rising backwards", "stand.tail_base_slope", stand.tailBaseSlope, true}},
                    numbers)};
  return section;
}

Section anglesSection(const Matter& matter, Numbers& numbers) {
  Section section;
  section.heading = "Angles of every joint";
  section.sentences = {
      "Degrees from the neutral articulation: up, left and left side rising are positive in the column; flexion, "
      "abduction and long-axis rotation in the limbs. Joints at zero that are supported are left out."};
  Table table{
      "", {"joint", "up or flexion", "left or abduction", "torsion", "verdict"}, {true, false, false, false, true}, {}};
  for (const range::JointVerdict& verdict : matter.assessment.joints) {
    const std::string& id = matter.project.specimen[verdict.joint].id;
    const Eigen::Vector3d& angles = matter.pose[verdict.joint];
    static constexpr const char* kMotions[] = {"flexion", "lateral", "torsion"};
    for (int m = 0; m < 3; ++m) numbers.push_back({"joint." + id + "." + kMotions[m], angles[m] * 180 / M_PI, "deg"});
    const bool quiet = verdict.level == range::Level::Supported && angles.cwiseAbs().maxCoeff() < 1e-4;
    if (quiet) continue;
    table.rows.push_back({id, signedDegrees(angles[0]), signedDegrees(angles[1]), signedDegrees(angles[2]),
                          std::string(toText(verdict.level))});
  }
  section.tables = {std::move(table)};
  return section;
}

}  // namespace zyga::report
