#pragma once

#include <Eigen/Core>
#include <QPointF>
#include <Qt>

namespace zyga::ui {

/// The pointer in the view and in the world (m).
struct DragPointer {
  QPointF at;  ///< pixels from the upper left
  Eigen::Vector3d p_WOrigin = Eigen::Vector3d::Zero();
  Eigen::Vector3d direction_W = -Eigen::Vector3d::UnitZ();  ///< of the line of sight, unit
  Eigen::Vector3d back_W = Eigen::Vector3d::UnitZ();        ///< from the screen to the viewer, unit
  bool sideView = false;                                    ///< exactly from the side, without perspective
  bool topView = false;                                     ///< exactly from above or below, without perspective
  Qt::KeyboardModifiers modifiers;
};

/// Where the line of sight meets the plane through `p_WPlane` with this normal; `p_WPlane` itself where they hardly
/// meet.
Eigen::Vector3d onPlane(const DragPointer& pointer, const Eigen::Vector3d& p_WPlane, const Eigen::Vector3d& normal_W);

}  // namespace zyga::ui
