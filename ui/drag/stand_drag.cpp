#include "ui/drag/stand_drag.h"

#include <QObject>
#include <QStringList>
#include <algorithm>
#include <cmath>

#include "ui/words/ground_words.h"

namespace zyga::ui {
namespace {

using anatomy::BoneKind;
using Eigen::Isometry3d;
using Eigen::Vector3d;
using kinematics::Foot;

constexpr double kSnap = 0.06;         // m: a sole this near to the ground drops onto it
constexpr double kLookingDown = 0.15;  // of the view's direction: below that it counts as level

Vector3d levelDirection(const Vector3d& direction, const Vector3d& otherwise) {
  const Vector3d flat(direction.x(), direction.y(), 0);
  return flat.norm() > 1e-6 ? Vector3d(flat.normalized()) : otherwise;
}

}  // namespace

Vector3d onPlane(const DragPointer& pointer, const Vector3d& p_WPlane, const Vector3d& normal_W) {
  const double slant = pointer.direction_W.dot(normal_W);
  if (std::abs(slant) < 1e-3) return p_WPlane;
  return pointer.p_WOrigin + (p_WPlane - pointer.p_WOrigin).dot(normal_W) / slant * pointer.direction_W;
}

std::optional<StandDrag::Part> StandDrag::partOf(const anatomy::Specimen& specimen, kinematics::BoneIndex bone) {
  if (kinematics::footOf(specimen, bone)) return Part::Foot;
  switch (specimen[bone].name.kind) {
    case BoneKind::Sacral:
    case BoneKind::Ilium:
    case BoneKind::Pubis:
    case BoneKind::Ischium:
      return Part::Pelvis;
    case BoneKind::DorsalRib:
    case BoneKind::SternalPlate:
      return Part::Ribs;
    default:
      return std::nullopt;
  }
}

QString StandDrag::hint(const anatomy::Specimen& specimen, kinematics::BoneIndex bone) {
  switch (*partOf(specimen, bone)) {
    case Part::Foot:
      return QObject::tr("Drag to move the %1 · Shift lifts it straight up · Alt bends the leg")
          .arg(footName(*kinematics::footOf(specimen, bone)));
    case Part::Pelvis:
      return QObject::tr("Drag to move the trunk over its planted feet · Shift tilts it about the hips");
    case Part::Ribs:
      break;
  }
  return QObject::tr("Drag to raise or lower the front of the trunk over its planted feet · vertebrae bend the back");
}

StandDrag::StandDrag(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                     const kinematics::Pose& start, kinematics::BoneIndex bone, const Vector3d& p_WGrip,
                     const DragPointer& pointer)
    : specimen_(&specimen),
      articulation_(&articulation),
      start_(start),
      part_(*partOf(specimen, bone)),
      foot_(kinematics::footOf(specimen, bone)),
      p_WGrip_(p_WGrip),
      pressed_(pointer) {
  const kinematics::Placement X_WB = kinematics::forwardKinematics(specimen, articulation, start);
  planted_ = kinematics::plantedFeet(specimen, X_WB);
  if (foot_) X_WFoot_ = X_WB[kinematics::footRig(specimen, *foot_).bone.value];
  p_WHips_ = start.X_WRoot.translation();
  const auto left = specimen.findBone("femur.L"), right = specimen.findBone("femur.R");
  if (left && right) p_WHips_ = (X_WB[left->value].translation() + X_WB[right->value].translation()) / 2;
}

kinematics::Pose StandDrag::moved(const DragPointer& pointer) {
  kinematics::FeetAnswer answer = part_ == Part::Foot
                                      ? movedFoot(pointer)
                                      : kinematics::moveTrunkWithin(*specimen_, *articulation_, start_,
                                                                    trunkMove(pointer) * start_.X_WRoot, planted_);
  fits_ = std::move(answer.fits);
  return std::move(answer.pose);
}

kinematics::FeetAnswer StandDrag::movedFoot(const DragPointer& pointer) const {
  const kinematics::FootRig rig = kinematics::footRig(*specimen_, *foot_);
  const bool lifting = pointer.modifiers & Qt::ShiftModifier;
  const bool fromAbove = std::abs(pointer.back_W.z()) > kLookingDown;
  const Vector3d facing = levelDirection(pointer.back_W, Vector3d::UnitX());
  Vector3d way = Vector3d::Zero();
  if (lifting) {
    way.z() = (onPlane(pointer, p_WGrip_, facing) - p_WGrip_).z();
  } else if (fromAbove) {
    way = onPlane(pointer, p_WGrip_, Vector3d::UnitZ()) - p_WGrip_;
  } else {
    way = onPlane(pointer, p_WGrip_, facing) - p_WGrip_;
  }
  Isometry3d X_WGoal = X_WFoot_;
  X_WGoal.translation() += way;
  const double height = (X_WGoal * rig.p_BSole).z();
  // No sole goes under ground, and a foot that comes near the ground stands on it.
  if (height < (lifting ? 0 : kSnap)) X_WGoal = kinematics::flatOnGround(rig, X_WGoal);
  return kinematics::setFeet(*specimen_, *articulation_, start_, {{*foot_, X_WGoal}});
}

Isometry3d StandDrag::trunkMove(const DragPointer& pointer) const {
  if (part_ == Part::Ribs || pointer.modifiers & Qt::ShiftModifier) return turnAboutHips(pointer);
  return Isometry3d(Eigen::Translation3d(onPlane(pointer, p_WGrip_, pointer.back_W) - p_WGrip_));
}

Isometry3d StandDrag::turnAboutHips(const DragPointer& pointer) const {
  // The animal's own axis that points most nearly at the viewer: from the side it pitches, from above it yaws, from the
  // front it rolls.
  const Vector3d ahead = levelDirection(start_.X_WRoot.linear().col(0), Vector3d::UnitX());
  const std::array<Vector3d, 3> axes{ahead, Vector3d::UnitZ().cross(ahead), Vector3d::UnitZ()};
  const Vector3d axis = *std::max_element(axes.begin(), axes.end(), [&](const Vector3d& a, const Vector3d& b) {
    return std::abs(a.dot(pointer.back_W)) < std::abs(b.dot(pointer.back_W));
  });
  const auto arm = [&](const Vector3d& p_W) -> Vector3d { return (p_W - p_WHips_) - axis * axis.dot(p_W - p_WHips_); };
  const Vector3d from = arm(p_WGrip_), to = arm(onPlane(pointer, p_WGrip_, axis));
  double angle = std::atan2(from.cross(to).dot(axis), from.dot(to));
  constexpr double kShortArm = 0.4, kPerPixel = 0.003;  // m, rad
  // Grabbed close to the hips there is no arm to turn by: up and down along the screen stands in for it.
  if (from.norm() < kShortArm) {
    const double up = pressed_.at.y() - pointer.at.y();
    angle = kPerPixel * up * (axis.dot(Vector3d::UnitZ().cross(ahead)) > 0.5 ? -1 : 1);
  }
  return Eigen::Translation3d(p_WHips_) * Isometry3d(Eigen::AngleAxisd(angle, axis)) * Eigen::Translation3d(-p_WHips_);
}

QString StandDrag::telling() const {
  QStringList parts;
  if (foot_) {
    parts += QObject::tr("Moving the %1").arg(footName(*foot_));
  } else {
    parts += QObject::tr("Moving the trunk over %1 planted feet").arg(planted_.size());
  }
  QStringList joints;
  for (const kinematics::LegFit& fit : fits_)
    for (const kinematics::JointIndex joint : fit.stopping) joints += QString::fromStdString((*specimen_)[joint].id);
  if (!joints.empty()) parts += QObject::tr("stopped by %1").arg(joints.join(", "));
  return parts.join(", ") + QObject::tr(" · Esc puts it back");
}

QString StandDrag::stepText() const {
  return foot_ ? QObject::tr("Move the %1").arg(footName(*foot_)) : QObject::tr("Move the trunk");
}

}  // namespace zyga::ui
