#include "core/study/stress/pressure.h"

#include <stdexcept>

#include "core/study/figures_text.h"

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
  if (!skull) throw std::invalid_argument("the specimen has no skull to carry blood to");
  const auto X_WB = kinematics::place(specimen, articulation, pose);
  return (X_WB[skull->value] * specimen[*skull].landmark("foramenMagnum")).z();
}

}  // namespace

double columnPressure(double height, double bloodDensity) { return height * 1000 * bloodDensity / kMercuryDensity; }

Vector3d heartAt(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB, const HeartPlace& place) {
  const int dorsal = std::min(kDorsalOfTheHeart, specimen.counts.dorsal);
  const auto vertebra = specimen.findBone(anatomy::toId({BoneKind::Dorsal, dorsal, 0, Side::Midline}));
  if (!vertebra) throw std::invalid_argument("the specimen has no dorsal vertebrae to place a heart under");
  Vector3d heart = X_WB[vertebra->value].translation();
  const double lower = ribEnd(specimen, X_WB, dorsal).value_or(heart.z());
  heart.z() = lower + place.share * (heart.z() - lower);
  return heart;
}

Pressure pressure(const Subject& subject, const HeartPlace& heart) {
  Pressure made;
  made.heart = heart;
  made.elevation = elevation(subject);
  const auto X_WB = kinematics::place(subject.specimen, subject.articulation, subject.pose);
  const Vector3d at = heartAt(subject.specimen, X_WB, heart);
  made.heartHeight = at.z();
  made.p_Heart = made.elevation.plane.flat(at);
  for (const ElevationCase& one : made.elevation.cases) {
    Pressure::Row& row = made.rows[static_cast<std::size_t>(one.which)];
    row.which = one.which;
    row.headHeight = brainHeight(subject.specimen, subject.articulation, one.pose);
    row.column = row.headHeight - made.heartHeight;
    row.pressure = columnPressure(row.column);
    row.low = columnPressure(row.column, row.column > 0 ? kThinBlood : kThickBlood);
    row.high = columnPressure(row.column, row.column > 0 ? kThickBlood : kThinBlood);
  }
  return made;
}

std::vector<std::string> sentences(const Pressure& pressure) {
  std::vector<std::string> all{"The heart is taken to lie " + metresWord(pressure.heartHeight) +
                               " over the ground, in the lower part of the chest."};
  for (const Pressure::Row& row : pressure.rows) {
    all.push_back(capitalised(toText(row.which)) + ": head " + metresWord(row.column) + " over the heart, " +
                  figure(row.pressure, 0) + " mmHg (" + figure(row.low, 0) + " to " + figure(row.high, 0) + ").");
  }
  return all;
}

}  // namespace zyga::study
