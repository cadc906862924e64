#include "core/study/stances/compare_poses.h"

#include <algorithm>
#include <limits>

#include "core/kinematics/stand_readings.h"

namespace zyga::study {
namespace {

constexpr double kSame = 1e-6;  ///< rad

void checkSameJoints(const anatomy::Specimen& a, const anatomy::Specimen& b) {
  const std::size_t common = std::min(a.joints.size(), b.joints.size());
  for (std::size_t i = 0; i < common; ++i) {
    const std::string &first = a.joints[i].id, &second = b.joints[i].id;
    if (first != second) throw reason::Failure({kDifferentJoints, {reason::text(first), reason::text(second)}});
  }
  if (a.joints.size() == b.joints.size()) return;
  const anatomy::Specimen& longer = a.joints.size() > common ? a : b;
  throw reason::Failure({kMoreJoints, {reason::text(longer.joints[common].id)}});
}

std::vector<ComparedReading> readBoth(const range::Scenario& first, const range::Scenario& second) {
  const auto read = [](const range::Scenario& s) {
    return kinematics::readStand(s.specimen(), s.placement(), s.assumptions().horizontalBy);
  };
  const auto snout = [](const range::Scenario& s) {
    return kinematics::snoutHeight(s.specimen(), s.placement()).value_or(std::numeric_limits<double>::quiet_NaN());
  };
  const kinematics::StandReadings a = read(first), b = read(second);
  return {{Reading::SnoutHeight, snout(first), snout(second)},
          {Reading::HipHeight, a.hipHeight, b.hipHeight},
          {Reading::ShoulderHeight, a.shoulderHeight, b.shoulderHeight},
          {Reading::Glenoacetabular, a.glenoacetabular, b.glenoacetabular},
          {Reading::TrunkSlope, a.trunkSlope, b.trunkSlope},
          {Reading::NeckBaseSlope, a.neckBaseSlope, b.neckBaseSlope},
          {Reading::TailBaseSlope, a.tailBaseSlope, b.tailBaseSlope}};
}

std::array<std::size_t, 4> levelsOf(const range::Assessment& assessment) {
  std::array<std::size_t, 4> counts{};
  for (const auto& joint : assessment.joints) ++counts[static_cast<std::size_t>(joint.level)];
  return counts;
}

}  // namespace

Comparison compare(const range::Scenario& first, const range::Scenario& second) {
  checkSameJoints(first.specimen(), second.specimen());
  const range::Assessment &a = first.assessment(), &b = second.assessment();
  Comparison comparison;
  comparison.readings = readBoth(first, second);
  comparison.firstLevels = levelsOf(a);
  comparison.secondLevels = levelsOf(b);
  for (const auto& verdict : a.joints) {
    const auto* other = b.find(verdict.joint);
    ComparedJoint joint{verdict.joint, first.pose()[verdict.joint], second.pose()[verdict.joint], verdict.level,
                        other ? other->level : verdict.level};
    if (joint.difference() > kSame || joint.firstLevel != joint.secondLevel) comparison.joints.push_back(joint);
  }
  return comparison;
}

}  // namespace zyga::study
