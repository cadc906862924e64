#include "ui/document/set_pose.h"

#include "ui/document/document.h"

namespace zyga::ui {

SetPose::SetPose(Document& document, kinematics::Pose after, const QString& text, int mergeKey)
    : QUndoCommand(text),
      document_(document),
      before_(document.project().pose),
      after_(std::move(after)),
      mergeKey_(mergeKey) {}

void SetPose::undo() { document_.setPose(before_); }

void SetPose::redo() { document_.setPose(after_); }

int SetPose::id() const { return mergeKey_ == 0 ? -1 : mergeKey_; }

bool SetPose::mergeWith(const QUndoCommand* other) {
  const auto* next = dynamic_cast<const SetPose*>(other);
  if (!next) return false;
  after_ = next->after_;
  setText(next->text());
  setObsolete(after_ == before_);
  return true;
}

}  // namespace zyga::ui
