#include "core/study/stances/compare_poses.h"

#include <limits>
#include <stdexcept>

#include "core/kinematics/stand_readings.h"

namespace zyga::study {
namespace {

constexpr double kSame = 1e-6;  ///< rad

void checkSameJoints(const anatomy::Specimen& a, const anatomy::Specimen& b) {
  for (std::size_t i = 0; i < std::max(a.joints.size(), b.joints.size()); ++i) {
    const std::string first = i < a.joints.size() ? a.joints[i].id : "none",
                      second = i < b.joints.size() ? b.joints[i].id : "none";
    if (first != second)
      throw std::invalid_argument("the two have different joints: " + first + " in the first, " + second +
                                  " in the second");
  }
}

std::vector<ComparedReading> readingsOf(const Subject& first, const Subject& second) {
  const auto placed = [](const Subject& s) { return place(s.specimen, s.articulation, s.pose); };
  const kinematics::Placement X_WA = placed(first), X_WB = placed(second);
  const auto a = kinematics::readStand(first.specimen, X_WA), b = kinematics::readStand(second.specimen, X_WB);
  constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
  return {{"snout over the ground", false, kinematics::snoutHeight(first.specimen, X_WA).value_or(kNone),
           kinematics::snoutHeight(second.specimen, X_WB).value_or(kNone)},
          {"hip over the ground", false, a.hipHeight, b.hipHeight},
          {"shoulder over the ground", false, a.shoulderHeight, b.shoulderHeight},
          {"glenoacetabular distance", false, a.glenoacetabular, b.glenoacetabular},
          {"trunk, rising forwards", true, a.trunkSlope, b.trunkSlope},
          {"neck base, rising forwards", true, a.neckBaseSlope, b.neckBaseSlope},
          {"tail base, rising backwards", true, a.tailBaseSlope, b.tailBaseSlope}};
}

std::array<std::size_t, 4> levelsOf(const range::Assessment& assessment) {
  std::array<std::size_t, 4> counts{};
  for (const auto& joint : assessment.joints) ++counts[static_cast<std::size_t>(joint.level)];
  return counts;
}

}  // namespace

Comparison compare(const Subject& first, const Subject& second) {
  checkSameJoints(first.specimen, second.specimen);
  const auto judged = [](const Subject& s) { return assess(s.specimen, s.articulation, s.assumptions, s.pose); };
  const range::Assessment a = judged(first), b = judged(second);
  Comparison comparison;
  comparison.readings = readingsOf(first, second);
  comparison.firstLevels = levelsOf(a);
  comparison.secondLevels = levelsOf(b);
  for (const auto& verdict : a.joints) {
    const auto* other = b.find(verdict.joint);
    ComparedJoint joint{verdict.joint, first.pose[verdict.joint], second.pose[verdict.joint], verdict.level,
                        other ? other->level : verdict.level};
    if (joint.difference() > kSame || joint.firstLevel != joint.secondLevel) comparison.joints.push_back(joint);
  }
  return comparison;
}

}  // namespace zyga::study
