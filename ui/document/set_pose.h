#pragma once

#include "core/kinematics/pose.h"
#include "ui/document/set_value.h"

namespace zyga::ui {

class Document;

/// From the present pose to another one.
class SetPose : public SetValue<kinematics::Pose> {
 public:
  SetPose(Document& document, kinematics::Pose after, const QString& text, int mergeKey = 0);
};

}  // namespace zyga::ui
