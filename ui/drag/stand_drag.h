#pragma once

#include <QString>
#include <optional>

#include "core/kinematics/limb_reach.h"
#include "ui/drag/drag_pointer.h"

namespace zyga::ui {

/// A drag of a foot, of the pelvis or of the ribs. A foot goes where the pointer goes, its leg inside the typed ranges:
/// seen level it leaves the ground when it is pulled up and snaps onto it when it comes near; seen from above it slides
/// along at its height; with Shift it goes straight up and down and does not snap. The pelvis moves the trunk, and with
/// Shift turns it about the hips; the ribs turn it about the hips in the plane that one looks at. Feet that stand on
/// the ground stay where they are, and the trunk goes no farther than they hold.
class StandDrag {
 public:
  enum class Part { Foot, Pelvis, Ribs };

  /// What a drag of this bone would take hold of.
  static std::optional<Part> partOf(const anatomy::Specimen& specimen, kinematics::BoneIndex bone);
  /// "Drag to move the left hind foot ..."
  static QString hint(const anatomy::Specimen& specimen, kinematics::BoneIndex bone);

  /// `p_WGrip` is the grabbed point; specimen and articulation must outlive the drag. `bone` must have a part.
  StandDrag(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
            const kinematics::Pose& start, kinematics::BoneIndex bone, const Eigen::Vector3d& p_WGrip,
            const DragPointer& pointer);

  /// The pose with the pointer there; always from where the drag began.
  kinematics::Pose moved(const DragPointer& pointer);
  /// "Moving the trunk over 4 planted feet, stopped by elbow.L · Esc puts it back"
  QString telling() const;
  /// Name of the undo step.
  QString stepText() const;

 private:
  kinematics::FeetAnswer movedFoot(const DragPointer& pointer) const;
  Eigen::Isometry3d trunkMove(const DragPointer& pointer) const;
  Eigen::Isometry3d turnAboutHips(const DragPointer& pointer) const;

  const anatomy::Specimen* specimen_;
  const kinematics::Articulation* articulation_;
  kinematics::Pose start_;
  Part part_;
  std::optional<kinematics::Foot> foot_;
  std::vector<kinematics::Foot> planted_;
  Eigen::Isometry3d X_WFoot_ = Eigen::Isometry3d::Identity();
  Eigen::Vector3d p_WGrip_, p_WHips_ = Eigen::Vector3d::Zero();
  DragPointer pressed_;
  std::vector<kinematics::LegFit> fits_;
};

}  // namespace zyga::ui
