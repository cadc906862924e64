#include "ui/drag/drag_tool.h"

#include <QApplication>
#include <QObject>
#include <cmath>

#include "ui/drag/drag_words.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

constexpr double kRadians = 3.14159265358979323846 / 180;
constexpr double kDegreesPerPixel = 0.35;  // of twist or swing, over the whole chain

QString verb(DragMotion motion) {
  switch (motion) {
    case DragMotion::Bend:
      return "bend";
    case DragMotion::Lateral:
      return "swing";
    case DragMotion::Twist:
      return "twist";
  }
  return {};
}

QString gerund(DragMotion motion) {
  switch (motion) {
    case DragMotion::Bend:
      return "Bending";
    case DragMotion::Lateral:
      return "Swinging";
    case DragMotion::Twist:
      return "Twisting";
  }
  return {};
}

}  // namespace

DragTool::DragTool(Document& document, QObject* parent) : QObject(parent), document_(document) {}

DragMotion DragTool::motionOf(Qt::KeyboardModifiers modifiers) {
  if (modifiers & (Qt::AltModifier | Qt::ControlModifier)) return DragMotion::Twist;
  return modifiers & Qt::ShiftModifier ? DragMotion::Lateral : DragMotion::Bend;
}

std::vector<JointIndex> DragTool::chainOf(BoneIndex bone) const {
  const auto& specimen = document_.specimen();
  auto chain = kinematics::dragChain(specimen, bone, document_.bendBase());
  // The jaw opens; it is not a handle for the neck.
  if (specimen[bone].name.kind == anatomy::BoneKind::Jaw && chain.size() > 1)
    chain.erase(chain.begin(), chain.end() - 1);
  if (!chain.empty()) return chain;
  // A rib, or any bone that does not move by itself, stands for the bone that carries it.
  const auto joint = specimen.jointAbove(bone);
  return joint ? chainOf(specimen[*joint].proximal) : chain;
}

bool DragTool::canMove(BoneIndex bone) const {
  return StandDrag::partOf(document_.specimen(), bone) || !chainOf(bone).empty();
}

std::optional<JointIndex> DragTool::jointOf(BoneIndex bone) const {
  const auto& specimen = document_.specimen();
  auto joint = specimen.jointAbove(bone);
  while (joint && specimen[*joint].kind == anatomy::JointKind::Fixed)
    joint = specimen.jointAbove(specimen[*joint].proximal);
  return joint;
}

void DragTool::press(BoneIndex bone, const Eigen::Vector3d& p_W, const DragPointer& pointer) {
  Grip grip;
  grip.bone = bone;
  grip.p_WPoint = p_W;
  grip.p_BPoint = document_.placement()[bone.value].inverse() * p_W;
  grip.chain = chainOf(bone);
  grip.start = document_.pose();
  grip.pressedAt = pointer.at;
  grip.motion = motionOf(pointer.modifiers);
  if (grip.motion != DragMotion::Twist && StandDrag::partOf(document_.specimen(), bone)) {
    grip.stand.emplace(document_.specimen(), document_.articulation(), grip.start, bone, p_W, pointer);
  }
  if (!grip.stand && !grip.chain.empty()) {
    grip.reach = std::make_unique<ReachDrag>(document_, settings_, bone, grip.p_BPoint, grip.chain);
  }
  grip_ = std::move(grip);
}

void DragTool::move(const DragPointer& pointer) {
  if (!grip_ || (grip_->chain.empty() && !grip_->stand)) return;
  const QPointF travel = pointer.at - grip_->pressedAt;
  if (!grip_->dragging && travel.manhattanLength() < QApplication::startDragDistance()) return;
  grip_->dragging = true;
  document_.previewPose(grip_->stand ? grip_->stand->moved(pointer) : bent(pointer));
}

kinematics::Pose DragTool::bent(const DragPointer& pointer) const {
  const QPointF travel = pointer.at - grip_->pressedAt;
  switch (grip_->motion) {
    case DragMotion::Twist:
      return turned(2, kDegreesPerPixel * travel.x());
    case DragMotion::Lateral:
      // Seen from the side a swing goes towards the viewer or away: pulled down it comes nearer, as on a table top.
      if (std::abs(pointer.back_W.y()) > 0.8)
        return turned(1, kDegreesPerPixel * travel.y() * pointer.back_W.y() * leftwards());
      return pulled(pointer, {false, true, false});
    case DragMotion::Bend:
      break;
  }
  if (pointer.sideView) return pulled(pointer, {true, false, false});
  if (pointer.topView) return pulled(pointer, {false, true, false});
  return pulled(pointer, {true, true, false});
}

kinematics::Pose DragTool::pulled(const DragPointer& pointer, std::array<bool, 3> motions) const {
  // A swing alone takes a raised neck up and down as well: all that counts is that it stays under the pointer.
  const bool swing = !motions[0] && motions[1];
  return grip_->reach->reached(onPlane(pointer, grip_->p_WPoint, pointer.back_W), motions,
                               swing ? pointer.direction_W : Eigen::Vector3d(Eigen::Vector3d::Zero()));
}

kinematics::Pose DragTool::turned(int motion, double degrees) const {
  Eigen::Vector3d turn = Eigen::Vector3d::Zero();
  turn[motion] = degrees * kRadians;
  const std::size_t n = grip_->chain.size();
  const std::vector<double> even(n, 1.0 / static_cast<double>(n));
  return grip_->reach->turned(
      kinematics::spreadTurn(document_.specimen(), document_.articulation(), grip_->start, grip_->chain, even, turn));
}

// The second motion is to the left in the column, but away from the mid-plane in a limb.
double DragTool::leftwards() const {
  const auto& specimen = document_.specimen();
  return specimen[specimen[grip_->chain.front()].distal].name.side == anatomy::Side::Right ? -1 : 1;
}

std::optional<Shortfall> DragTool::shortfall() const {
  return dragging() && grip_->reach ? grip_->reach->shortfall() : std::nullopt;
}

bool DragTool::release() {
  if (!grip_) return false;
  const bool dragged = grip_->dragging;
  if (dragged) document_.commitPreview(stepText());
  grip_.reset();
  return dragged;
}

void DragTool::cancel() {
  if (!grip_) return;
  if (grip_->dragging) document_.cancelPreview();
  grip_.reset();
}

QString DragTool::stepText() const {
  if (grip_->stand) return grip_->stand->stepText();
  const QString text = verb(grip_->motion) + " " + partName(document_.specimen(), grip_->chain) + " at " +
                       QString::fromStdString(document_.specimen()[grip_->bone].id);
  return capital(text);
}

QString DragTool::hint(std::optional<BoneIndex> bone, Qt::KeyboardModifiers modifiers) const {
  const auto& specimen = document_.specimen();
  if (dragging() && grip_->stand) return grip_->stand->telling();
  if (dragging()) {
    QString text = gerund(grip_->motion) + " the " + partName(specimen, grip_->chain) + " from " +
                   QString::fromStdString(specimen[grip_->chain.front()].id);
    const QString telling = grip_->reach ? grip_->reach->telling() : QString();
    if (!telling.isEmpty()) text += QStringLiteral(" · ") + telling;
    return text + QObject::tr(" · Esc puts it back");
  }
  if (!bone) return QObject::tr("Drag empty space to turn the view · wheel zooms · middle button moves");
  const bool stands = motionOf(modifiers) != DragMotion::Twist && StandDrag::partOf(specimen, *bone);
  if (stands) return StandDrag::hint(specimen, *bone);
  const auto chain = chainOf(*bone);
  if (chain.empty()) return QString::fromStdString(specimen[*bone].id) + " does not move against its neighbours";
  const DragMotion motion = motionOf(modifiers);
  const QString what = "Drag to " + verb(motion) + " the " + partName(specimen, chain) + " from " +
                       QString::fromStdString(specimen[chain.front()].id);
  if (motion != DragMotion::Bend) return what;
  return what + QObject::tr(" · Shift lateral · Alt twist");
}

}  // namespace zyga::ui
