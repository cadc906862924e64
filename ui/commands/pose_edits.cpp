#include "ui/commands/pose_edits.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/document/document.h"
#include "ui/words/stance_words.h"

namespace zyga::ui {
namespace {

using kinematics::Pose;
using study::Chain;
using study::Extreme;
using Joints = std::vector<JointIndex>;
using Poses = std::vector<files::NamedPose>;

QString tr(const char* text) { return QCoreApplication::translate("PoseEdits", text); }

/// The joint that carries the mirror image of the joint's distal bone; the joint itself on the midline.
kinematics::JointIndex partner(const anatomy::Specimen& specimen, kinematics::JointIndex joint) {
  const auto& distal = specimen[specimen[joint].distal];
  if (distal.name.side == anatomy::Side::Midline) return joint;
  const auto bone = specimen.findBone(toId(anatomy::mirrored(distal.name)));
  const auto other = bone ? specimen.jointAbove(*bone) : std::nullopt;
  return other.value_or(joint);
}

bool taken(const Poses& poses, const std::string& name) {
  return std::any_of(poses.begin(), poses.end(), [&](const files::NamedPose& p) { return p.name == name; });
}

QString freeName(const Poses& poses, const QString& wanted) {
  QString name = wanted;
  for (int n = 2; taken(poses, name.toStdString()); ++n) name = QString("%1 %2").arg(wanted).arg(n);
  return name;
}

void keepPoses(Document& document, Poses after, const QString& text) {
  document.undoStack().push(new EditNamedPoses(document, std::move(after), text));
}

void replaceOrAdd(std::vector<files::NamedPose>& poses, const Extreme& extreme) {
  const std::string name = extremeName(extreme.chain, extreme.direction).toStdString();
  const auto same = std::find_if(poses.begin(), poses.end(), [&](const auto& pose) { return pose.name == name; });
  if (same == poses.end())
    poses.push_back({name, extreme.pose});
  else
    same->pose = extreme.pose;
}

void lockThese(Document& document, Joints after, const QString& text) {
  const auto set = [&document](const Joints& joints) { document.setLockedJoints(joints); };
  document.undoStack().push(new SetValue<Joints>(document.project().lockedJoints, std::move(after), set, text));
}

}  // namespace

Pose atNeutral(const Pose& pose, const std::vector<kinematics::JointIndex>& joints) {
  Pose neutral = pose;
  for (const auto joint : joints) {
    neutral[joint].setZero();
    neutral.setAxialTyped(joint, false);
  }
  return neutral;
}

Pose mirrored(const anatomy::Specimen& specimen, const Pose& pose) {
  Pose image = pose;
  for (std::size_t j = 0; j < pose.angles.size(); ++j) {
    const auto other = partner(specimen, {j});
    image.angles[j] = pose[other];
    image.setAxialTyped({j}, pose.isAxialTyped(other));
    // Abduction and rotation of limbs are counted from the mid-plane, so sides are merely exchanged; on the midline
    // lateral flexion and torsion change their sign.
    if (other.value == j) image.angles[j].tail<2>() *= -1;
  }
  const Eigen::Vector3d flip(1, -1, 1);
  image.X_WRoot.linear() = flip.asDiagonal() * pose.X_WRoot.linear() * flip.asDiagonal();
  image.X_WRoot.translation() = flip.cwiseProduct(pose.X_WRoot.translation());
  return image;
}

EditNamedPoses::EditNamedPoses(Document& document, Poses after, const QString& text)
    : SetValue(
          document.project().poses, std::move(after),
          [&document](const Poses& poses) { document.setNamedPoses(poses); }, text) {}

void addNamedPose(Document& document, const QString& name) {
  Poses poses = document.project().poses;
  const QString trimmed = name.trimmed();
  const QString kept = freeName(poses, trimmed.isEmpty() ? tr("Pose") : trimmed);
  poses.push_back({kept.toStdString(), document.pose()});
  keepPoses(document, std::move(poses), tr("Add pose “%1”").arg(kept));
}

bool renameNamedPose(Document& document, std::size_t index, const QString& name) {
  Poses poses = document.project().poses;
  const std::string wanted = name.trimmed().toStdString();
  if (poses.at(index).name == wanted) return true;
  if (wanted.empty() || taken(poses, wanted)) return false;
  poses[index].name = wanted;
  keepPoses(document, std::move(poses), tr("Rename pose to “%1”").arg(name.trimmed()));
  return true;
}

void deleteNamedPose(Document& document, std::size_t index) {
  Poses poses = document.project().poses;
  const QString name = QString::fromStdString(poses.at(index).name);
  poses.erase(poses.begin() + static_cast<std::ptrdiff_t>(index));
  keepPoses(document, std::move(poses), tr("Delete pose “%1”").arg(name));
}

void replaceNamedPose(Document& document, std::size_t index) {
  Poses poses = document.project().poses;
  if (poses.at(index).pose == document.pose()) return;
  poses[index].pose = document.pose();
  keepPoses(document, std::move(poses),
            tr("Update pose “%1”").arg(QString::fromStdString(document.project().poses[index].name)));
}

Extreme takeExtreme(Document& document, Chain chain, range::Direction direction) {
  Extreme extreme = study::extreme(document.specimen(), document.articulation(), document.assumptions(),
                                   document.pose(), chain, direction, document.contact());
  document.changePose(extreme.pose, extremeName(chain, direction));
  return extreme;
}

std::vector<Extreme> keepExtremes(Document& document) {
  std::vector<Extreme> extremes = study::extremes(document.specimen(), document.articulation(), document.assumptions(),
                                                  document.pose(), document.contact());
  std::vector<files::NamedPose> poses = document.project().poses;
  for (const Extreme& extreme : extremes) replaceOrAdd(poses, extreme);
  document.undoStack().push(new EditNamedPoses(document, std::move(poses), tr("Keep the limits of neck and tail")));
  return extremes;
}

void lockOrUnlock(Document& document, JointIndex joint) {
  const QString id = QString::fromStdString(document.specimen()[joint].id);
  Joints joints = document.project().lockedJoints;
  if (document.isLocked(joint)) {
    std::erase(joints, joint);
    return lockThese(document, joints, tr("Unlock %1").arg(id));
  }
  joints.insert(std::lower_bound(joints.begin(), joints.end(), joint), joint);
  lockThese(document, joints, tr("Lock %1").arg(id));
}

void unlockAllJoints(Document& document) {
  if (document.project().lockedJoints.empty()) return;
  lockThese(document, {}, tr("Unlock all joints"));
}

}  // namespace zyga::ui
