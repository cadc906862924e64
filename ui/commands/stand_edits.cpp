#include "ui/commands/stand_edits.h"

#include <QObject>
#include <algorithm>
#include <numbers>

#include "core/kinematics/feet.h"
#include "ui/words/numbers.h"
#include "ui/words/stance_words.h"

namespace zyga::ui {
namespace {

using kinematics::FeetAnswer;
using kinematics::Foot;

constexpr double kLift = 0.25;                          // m
constexpr double kDroop = 25 * std::numbers::pi / 180;  // of the hanging foot
constexpr double kSeen = 5e-4;                          // m: less is not worth a word

FeetAnswer commit(Document& document, FeetAnswer answer, const QString& name, int mergeKey = 0) {
  document.changePose(answer.pose, name, mergeKey);
  return answer;
}

}  // namespace

std::vector<Foot> plantedFeet(const Document& document) {
  return kinematics::plantedFeet(document.specimen(), document.placement());
}

FeetAnswer liftFoot(Document& document, Foot foot) {
  return commit(
      document,
      kinematics::liftFoot(document.specimen(), document.articulation(), document.pose(), foot, kLift, kDroop),
      QObject::tr("Lift the %1").arg(footName(foot)));
}

FeetAnswer plantFeet(Document& document, const std::vector<Foot>& feet) {
  const QString name =
      feet.size() == 1 ? QObject::tr("Plant the %1").arg(footName(feet.front())) : QObject::tr("Plant the feet");
  return commit(document, kinematics::plantFeet(document.specimen(), document.articulation(), document.pose(), feet),
                name);
}

FeetAnswer liftOrPlant(Document& document, Foot foot) {
  const std::vector<Foot> planted = plantedFeet(document);
  const bool stands = std::find(planted.begin(), planted.end(), foot) != planted.end();
  return stands ? liftFoot(document, foot) : plantFeet(document, {foot});
}

FeetAnswer movedTrunk(const Document& document, const kinematics::Pose& start, const Eigen::Isometry3d& move) {
  const auto& specimen = document.specimen();
  const std::vector<Foot> planted =
      kinematics::plantedFeet(specimen, kinematics::forwardKinematics(specimen, document.articulation(), start));
  return kinematics::moveTrunkWithin(specimen, document.articulation(), start, move * start.X_WRoot, planted);
}

FeetAnswer moveTrunk(Document& document, const Eigen::Isometry3d& move, const QString& name, int mergeKey) {
  return commit(document, movedTrunk(document, document.pose(), move), name, mergeKey);
}

Eigen::Isometry3d turnAboutHips(const Document& document, const kinematics::Pose& pose, const Eigen::Vector3d& axis_W,
                                double angle) {
  const auto& specimen = document.specimen();
  const kinematics::Placement X_WB = kinematics::forwardKinematics(specimen, document.articulation(), pose);
  Eigen::Vector3d hips = pose.X_WRoot.translation();
  const auto left = specimen.findBone("femur.L"), right = specimen.findBone("femur.R");
  if (left && right) hips = (X_WB[left->value].translation() + X_WB[right->value].translation()) / 2;
  return Eigen::Translation3d(hips) * Eigen::Isometry3d(Eigen::AngleAxisd(angle, axis_W.normalized())) *
         Eigen::Translation3d(-hips);
}

FeetAnswer placeBlades(Document& document, const std::vector<anatomy::Side>& sides,
                       const kinematics::BladePlace& wanted, int mergeKey) {
  const auto& specimen = document.specimen();
  kinematics::Pose pose = document.pose();
  for (const anatomy::Side side : sides)
    pose = kinematics::placeBlade(specimen, document.articulation(), pose, side, wanted);
  std::vector<kinematics::LegTask> tasks;
  for (const Foot foot : plantedFeet(document)) {
    if (isFore(foot)) tasks.push_back({foot, document.placement()[kinematics::footRig(specimen, foot).bone.value]});
  }
  return commit(document, kinematics::setFeet(specimen, document.articulation(), pose, tasks),
                QObject::tr("Place the shoulder blades"), mergeKey);
}

study::StanceAnswer takeStance(Document& document, study::Stance stance) {
  study::StanceAnswer answer = study::takeStance(document.scenario(), stance, document.project().densities);
  document.changePose(answer.pose, stanceName(stance));
  return answer;
}

QString missWords(const Document& document, const std::vector<kinematics::LegFit>& fits) {
  QStringList parts;
  for (const kinematics::LegFit& fit : fits) {
    if (fit.miss < kSeen) continue;
    QStringList joints;
    for (const JointIndex joint : fit.stopping) joints += QString::fromStdString(document.specimen()[joint].id);
    const QString why =
        joints.empty() ? QObject::tr("the leg is stretched out") : QObject::tr("stopped by %1").arg(joints.join(", "));
    parts += QObject::tr("%1 %2 from its place, %3").arg(footName(fit.foot), millimetres(fit.miss, 0), why);
  }
  return parts.join("; ");
}

}  // namespace zyga::ui
