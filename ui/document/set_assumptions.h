#pragma once

#include "core/kinematics/pose.h"
#include "core/range/assumptions.h"
#include "ui/document/set_value.h"

namespace zyga::ui {

class Document;

/// Assumptions, and the pose as it is under them: where the bones are to stay in space, the deflections follow.
struct AssumedPose {
  range::Assumptions assumptions;
  kinematics::Pose pose;
  bool operator==(const AssumedPose&) const = default;
};

/// From the present assumptions and pose to others.
class SetAssumptions : public SetValue<AssumedPose> {
 public:
  SetAssumptions(Document& document, AssumedPose after, const QString& text, int mergeKey = 0);
};

}  // namespace zyga::ui
