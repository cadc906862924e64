#pragma once

#include <QString>

#include "core/range/contact/clear_reach.h"
#include "ui/document/document.h"
#include "ui/drag/reach_settings.h"

namespace zyga::ui {

/// What a grabbed point lacks to the pointer.
struct Shortfall {
  Eigen::Vector3d p_WPoint, p_WTarget;  ///< m
  double length = 0;                    ///< m
};

/// One drag of a bone by its chain, inside the ranges and out of contact unless the settings let it pass them. Always
/// from where the drag began, so that the way the pointer took leaves no trace. Document and settings must outlive it.
class ReachDrag {
 public:
  ReachDrag(const Document& document, const ReachSettings& settings, BoneIndex bone, const Eigen::Vector3d& p_BPoint,
            const std::vector<JointIndex>& chain);

  /// The pose that brings the grabbed point to the target, or as near as the ranges let it come.
  /// `alongLine_W` as in kinematics::IkGoal.
  kinematics::Pose reached(const Eigen::Vector3d& p_WTarget, const std::array<bool, 3>& motions,
                           const Eigen::Vector3d& alongLine_W = Eigen::Vector3d::Zero());
  /// The chain turned to these angles, each joint as far as its range lets it.
  kinematics::Pose turned(const kinematics::Pose& wished);

  /// None while the grabbed point is under the pointer.
  std::optional<Shortfall> shortfall() const;
  /// "1.24 m short, stopped by C13-D1 dorsiflexion 8.2°: both facets share 50 % and 3 more", where bones meet with the
  /// names of those that do; "past the range at C6-C7"; empty when there is nothing to tell.
  QString telling() const;

 private:
  bool turns(JointIndex joint) const;

  const Document& document_;
  const ReachSettings& settings_;
  range::Scenario begun_;  ///< as it was when the drag began, contact with it
  range::ReachRanges ranges_;
  std::vector<JointIndex> chain_;
  kinematics::IkGoal goal_;
  kinematics::Pose start_;
  Eigen::Vector3d d_WGaze_;
  range::ClearReach last_;
  bool searched_ = false;  ///< last_ holds an answer
};

/// "35 mm short", "1.24 m short".
QString shortfallText(double length);

}  // namespace zyga::ui
