#pragma once

#include <QUndoCommand>

#include "core/kinematics/pose.h"

namespace zyga::ui {

class Document;

/// From the present pose to another one. Steps with the same non-zero key that follow each other become one step, which
/// vanishes when it ends where it began.
class SetPose : public QUndoCommand {
 public:
  SetPose(Document& document, kinematics::Pose after, const QString& text, int mergeKey = 0);

  void undo() override;
  void redo() override;
  int id() const override;
  bool mergeWith(const QUndoCommand* other) override;

 private:
  Document& document_;
  kinematics::Pose before_;
  kinematics::Pose after_;
  int mergeKey_;
};

}  // namespace zyga::ui
