#include "ui/document/set_pose.h"

#include "ui/document/document.h"

namespace zyga::ui {

SetPose::SetPose(Document& document, kinematics::Pose after, const QString& text, int mergeKey)
    : SetValue(
          document.project().pose, std::move(after), [&document](const auto& pose) { document.setPose(pose); }, text,
          mergeKey) {}

}  // namespace zyga::ui
