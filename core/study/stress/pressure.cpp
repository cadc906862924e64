#include "core/study/stress/pressure.h"

#include <algorithm>

namespace zyga::study {
namespace {

using anatomy::BoneIndex;
using anatomy::BoneKind;
using anatomy::Side;
using Eigen::Vector3d;

constexpr int kDorsalOfTheHeart = 4;  // common practice, no source: behind the shoulder, over the elbow

/// Lowest of the ends of the ribs that hang on a dorsal; none where it has no ribs.
std::optional<double> ribEnd(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB, int dorsal) {
  std::optional<double> lowest;
  for (const Side side : {Side::Left, Side::Right}) {
    const auto rib = specimen.findBone(anatomy::toId({BoneKind::DorsalRib, dorsal, 0, side}));
    if (!rib) continue;
    const double z = (X_WB[rib->value] * specimen[*rib].landmark("tip")).z();
    lowest = std::min(lowest.value_or(z), z);
  }
  return lowest;
}

double brainHeight(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                   const kinematics::Pose& pose) {
  const auto skull = specimen.findBone("skull");
  if (!skull) throw reason::Failure(reason::Reason(kNoSkull));
  const auto X_WB = kinematics::forwardKinematics(specimen, articulation, pose);
  return (X_WB[skull->value] * specimen[*skull].landmark("foramenMagnum")).z();
}

}  // namespace

double columnPressure(double height, double bloodDensity) { return height * 1000 * bloodDensity / kMercuryDensity; }

double heartPressure(double columnPressure) { return std::max(0.0, columnPressure) + kPerfusionPressure; }

Vector3d heartAt(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB, const HeartPlace& place) {
  const int dorsal = std::min(kDorsalOfTheHeart, specimen.counts.dorsal);
  const auto vertebra = specimen.findBone(anatomy::toId({BoneKind::Dorsal, dorsal, 0, Side::Midline}));
  if (!vertebra) throw reason::Failure(reason::Reason(kNoDorsals));
  Vector3d heart = X_WB[vertebra->value].translation();
  const double lower = ribEnd(specimen, X_WB, dorsal).value_or(heart.z());
  heart.z() = lower + place.share * (heart.z() - lower);
  return heart;
}

Pressure pressure(const range::Scenario& scenario, const HeartPlace& heart) {
  Pressure made;
  made.heart = heart;
  made.elevation = elevation(scenario);
  const Vector3d at = heartAt(scenario.specimen(), scenario.placement(), heart);
  made.heartHeight = at.z();
  made.p_Heart = made.elevation.plane.flat(at);
  for (const ElevationCase& one : made.elevation.cases) {
    Pressure::Row& row = made.rows[static_cast<std::size_t>(one.which)];
    row.which = one.which;
    row.headHeight = brainHeight(scenario.specimen(), scenario.articulation(), one.pose);
    row.column = row.headHeight - made.heartHeight;
    row.pressure = columnPressure(row.column);
    row.low = columnPressure(row.column, row.column > 0 ? kThinBlood : kThickBlood);
    row.high = columnPressure(row.column, row.column > 0 ? kThickBlood : kThinBlood);
    row.atHeart = heartPressure(row.pressure);
  }
  return made;
}

}  // namespace zyga::study
