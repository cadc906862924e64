#include "ui/commands/lock_joints.h"

#include <QCoreApplication>
#include <algorithm>
#include <vector>

#include "ui/document/document.h"
#include "ui/document/set_value.h"

namespace zyga::ui {
namespace {

using Joints = std::vector<JointIndex>;

void push(Document& document, Joints after, const QString& text) {
  const auto set = [&document](const Joints& joints) { document.setLockedJoints(joints); };
  document.undoStack().push(new SetValue<Joints>(document.project().lockedJoints, std::move(after), set, text));
}

}  // namespace

void lockOrUnlock(Document& document, JointIndex joint) {
  const QString id = QString::fromStdString(document.specimen()[joint].id);
  Joints joints = document.project().lockedJoints;
  if (document.isLocked(joint)) {
    std::erase(joints, joint);
    return push(document, joints, QCoreApplication::translate("zyga::ui::Steps", "Unlock %1").arg(id));
  }
  joints.insert(std::lower_bound(joints.begin(), joints.end(), joint), joint);
  push(document, joints, QCoreApplication::translate("zyga::ui::Steps", "Lock %1").arg(id));
}

void unlockAllJoints(Document& document) {
  if (document.project().lockedJoints.empty()) return;
  push(document, {}, QCoreApplication::translate("zyga::ui::Steps", "Unlock all joints"));
}

}  // namespace zyga::ui
