#pragma once

#include <QObject>
#include <memory>
#include <optional>

#include "core/kinematics/bend.h"
#include "ui/document/document.h"
#include "ui/drag/drag_pointer.h"
#include "ui/drag/reach_drag.h"
#include "ui/drag/stand_drag.h"

namespace zyga::ui {

enum class DragMotion { Bend, Lateral, Twist };

/// Bends the chain of a bone that is dragged. The pose is previewed on the way and becomes one undoable step on
/// release; nothing else changes the document. The ranges hold a drag unless settings() lets it pass them. A press
/// without travel is left to the caller as a click. Feet, pelvis and ribs are StandDrag's, unless Alt or Ctrl asks for
/// a twist.
class DragTool : public QObject {
  Q_OBJECT
 public:
  explicit DragTool(Document& document, QObject* parent = nullptr);

  static DragMotion motionOf(Qt::KeyboardModifiers modifiers);
  /// The joints a drag of this bone would bend, root side first; empty for a bone that cannot move.
  std::vector<JointIndex> chainOf(BoneIndex bone) const;

  /// Whether a drag of this bone would do anything.
  bool canMove(BoneIndex bone) const;

  /// The joint nearest to the bone, towards the root, that can move: a rib stands for its vertebra.
  std::optional<JointIndex> jointOf(BoneIndex bone) const;

  /// Takes hold of a bone at a point on it (world, m).
  void press(BoneIndex bone, const Eigen::Vector3d& p_W, const DragPointer& pointer);
  void move(const DragPointer& pointer);
  /// True when a drag has ended (and was committed); false when it was a click.
  bool release();
  /// Puts the pose back as it was before the press.
  void cancel();

  bool pressed() const { return grip_.has_value(); }
  bool dragging() const { return grip_ && grip_->dragging; }
  DragMotion motion() const { return grip_ ? grip_->motion : DragMotion::Bend; }

  /// Habits of reaching.
  ReachSettings& settings() { return settings_; }
  /// What the present drag lacks to the pointer.
  std::optional<Shortfall> shortfall() const;

  /// What a drag of this bone will do, or what the present one does: "Drag to bend the neck from C13-D1 ..."
  QString hint(std::optional<BoneIndex> bone, Qt::KeyboardModifiers modifiers) const;

 private:
  struct Grip {
    BoneIndex bone;
    Eigen::Vector3d p_BPoint, p_WPoint;
    std::vector<JointIndex> chain;
    kinematics::Pose start;
    QPointF pressedAt;
    DragMotion motion = DragMotion::Bend;
    bool dragging = false;
    std::unique_ptr<ReachDrag> reach;
    std::optional<StandDrag> stand;  ///< has the drag, if it has a part for the bone
  };
  kinematics::Pose bent(const DragPointer& pointer) const;
  kinematics::Pose pulled(const DragPointer& pointer, std::array<bool, 3> motions) const;
  /// Each joint of the chain takes the same share of `degrees`.
  kinematics::Pose turned(int motion, double degrees) const;
  double leftwards() const;
  QString stepText() const;

  Document& document_;
  ReachSettings settings_;
  std::optional<Grip> grip_;
};

}  // namespace zyga::ui
