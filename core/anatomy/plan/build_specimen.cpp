#include "core/anatomy/plan/build_specimen.h"

#include <cmath>
#include <cstdio>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/limb_rig.h"
#include "core/anatomy/plan/plan_table.h"
#include "core/anatomy/specimen_reasons.h"

namespace zyga::anatomy {
namespace {

/// "× 1.25": a sign, not a word, because it stands in the source of a bone.
std::string times(double factor) {
  char digits[32];
  std::snprintf(digits, sizeof digits, "%.4g", factor);
  return std::string("× ") + digits;
}

bool wasFound(Evidence evidence) { return evidence == Evidence::Found || evidence == Evidence::FoundDeformed; }

/// Head and neck share their signs: dorsiflexion, left, "left side rises" are positive.
std::array<Eigen::Vector3d, 3> headAxes() {
  return {-Eigen::Vector3d::UnitY(), Eigen::Vector3d::UnitZ(), Eigen::Vector3d::UnitX()};
}

Joint headJoint(const std::string& id, BoneIndex proximal, BoneIndex distal, const Eigen::Vector3d& p_P) {
  Joint joint;
  joint.id = id;
  joint.kind = JointKind::Typed;
  joint.region = Region::Skull;
  joint.proximal = proximal;
  joint.distal = distal;
  joint.centreProximal = p_P;
  joint.axes = headAxes();
  joint.longAxisProximal = joint.longAxisDistal = Eigen::Vector3d::UnitX();
  return joint;
}

void markSkull(Bone& skull, const SkullPlan& plan) {
  const Eigen::Vector3d size(skull.measures.value(Measure::Length), skull.measures.value(Measure::Width) / 2,
                             skull.measures.value(Measure::Height));
  const auto at = [&](const Eigen::Vector3d& share) -> Eigen::Vector3d { return share.cwiseProduct(size); };
  skull.landmarks["snout"] = at(plan.snout);
  skull.landmarks["jawHinge"] = at(plan.jawHinge);
  skull.landmarks["foramenMagnum"] = at({-0.01, 0, 0.13});
  for (Side side : {Side::Left, Side::Right}) {
    const std::string end = side == Side::Left ? ".L" : ".R";
    skull.landmarks["eye" + end] = at(sided(side, plan.eye));
    skull.landmarks["nostril" + end] = at(sided(side, plan.nostril));
  }
}

}  // namespace

BoneIndex addBone(Specimen& specimen, const MeasurementTable& filled, const BoneName& name) {
  const TableRow* row = filled.find(name);
  if (!row) throw reason::Failure({specimen::kNoRow, {reason::text(toId(name))}});
  for (const Measure measure : measuresOf(name.kind)) {
    if (row->measures[measure].known()) continue;
    throw reason::Failure({specimen::kNotFilled, {reason::text(toId(name)), termOf(measure)}});
  }
  Bone bone;
  bone.name = name;
  bone.id = toId(name);
  bone.evidence = row->evidence;
  bone.source = row->source;
  bone.measures = row->measures;
  specimen.bones.push_back(std::move(bone));
  return BoneIndex{specimen.bones.size() - 1};
}

Specimen buildSpecimen(const MeasurementTable& filled) {
  Specimen specimen;
  specimen.name = filled.name;
  specimen.counts = filled.counts;
  specimen.plan = filled.plan;
  addColumn(specimen, filled);
  if (!planTable(filled.plan).limbs) return specimen;
  addHead(specimen, filled);
  addLimbs(specimen, filled);
  return specimen;
}

MeasurementTable scaledTable(MeasurementTable table, double factor) {
  if (!(factor > 0) || !std::isfinite(factor)) throw reason::Failure(specimen::kScaleNotPositive);
  for (TableRow& row : table.rows) {
    for (int m = 0; m < kMeasureCount; ++m) {
      const auto measure = static_cast<Measure>(m);
      if (isAngle(measure)) continue;
      row.measures[measure].value *= factor;
      row.measures[measure].standardError *= factor;
    }
    if (!wasFound(row.evidence)) continue;
    row.evidence = Evidence::Scaled;
    row.source += (row.source.empty() ? "" : "; ") + times(factor);
  }
  for (auto& [region, total] : table.regionTotals) total *= factor;
  return table;
}

void addHead(Specimen& specimen, const MeasurementTable& filled) {
  const SkullPlan& plan = planTable(filled.plan).skull;
  const auto atlas = specimen.findBone("C1");
  if (!atlas) throw reason::Failure(specimen::kNoAtlas);

  const BoneIndex skull = addBone(specimen, filled, {BoneKind::Skull});
  markSkull(specimen.bones[skull.value], plan);
  Joint neck = headJoint("skull-C1", *atlas, skull, specimen[*atlas].landmark("cranial"));
  neck.restRotation = Eigen::AngleAxisd(radians(plan.tip), Eigen::Vector3d::UnitY()).toRotationMatrix();
  neck.longAxisDistal = neck.restRotation.transpose() * neck.longAxisProximal;
  neck.centrumLength = specimen[*atlas].measures.valueOr(Measure::Length, 0);
  neck.typed = limitsInDegrees({-45, 35}, {-25, 25}, {-20, 20});
  specimen.joints.push_back(neck);

  const BoneIndex jaw = addBone(specimen, filled, {BoneKind::Jaw});
  Bone& lower = specimen.bones[jaw.value];
  lower.landmarks["chin"] = {0.94 * lower.measures.value(Measure::Length), 0,
                             -0.80 * lower.measures.value(Measure::Height)};
  // The jaw's signs are the neck's, so that opening, which lowers the chin, is negative. The teeth meet at zero; a few
  // degrees beyond are left so that a closed mouth is not at the edge of its range.
  Joint hinge = headJoint("jaw", skull, jaw, specimen[skull].landmark("jawHinge"));
  hinge.typed = limitsInDegrees({-40, 5}, {0, 0}, {0, 0});
  specimen.joints.push_back(hinge);
}

}  // namespace zyga::anatomy
