#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <cmath>

#include "ui/drag/drag_words.h"
#include "ui/viewport/overlay.h"
#include "ui/viewport/viewport.h"
#include "ui/words/range_words.h"

namespace zyga::ui {

namespace {

constexpr double kZoomPerNotch = 1.18;
constexpr double kClickTravel = 4;  // pixels

Eigen::Vector2d vector(const QPointF& p) { return {p.x(), p.y()}; }

// A ring with an arrow head: no standard cursor says "twist".
QCursor twistCursor() {
  QPixmap pixmap(32, 32);
  pixmap.fill(Qt::transparent);
  QPainter painter(&pixmap);
  painter.setRenderHint(QPainter::Antialiasing);
  for (const auto& [colour, width] : {std::pair(Qt::white, 5.0), std::pair(Qt::black, 2.2)}) {
    painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawArc(QRectF(7, 7, 18, 18), 40 * 16, 280 * 16);
    painter.drawPolyline(QPolygonF{{19.0, 5.5}, {23.0, 10.3}, {17.0, 12.0}});
  }
  return QCursor(pixmap, 16, 16);
}

QCursor cursorOf(DragMotion motion, bool held) {
  switch (motion) {
    case DragMotion::Twist:
      return twistCursor();
    case DragMotion::Lateral:
      return Qt::SizeHorCursor;
    case DragMotion::Bend:
      break;
  }
  return held ? Qt::ClosedHandCursor : Qt::OpenHandCursor;
}

}  // namespace

DragPointer Viewport::pointerAt(const QPointF& at, Qt::KeyboardModifiers modifiers) const {
  const Ray ray = camera_.ray(vector(at));
  return {at, ray.p_WOrigin, ray.direction_W, camera_.back(), isSideView(camera_), isTopView(camera_), modifiers};
}

void Viewport::mousePressEvent(QMouseEvent* event) {
  setFocus(Qt::MouseFocusReason);
  if (hold_ != Hold::None || !document_.hasProject()) return;
  glideTimer_.stop();
  pressedAt_ = lastAt_ = event->position();
  pressedEmpty_ = false;
  if (event->button() == Qt::LeftButton) {
    const auto found = finder_.find(camera_, vector(event->position()), document_.placement());
    pressedEmpty_ = !found;
    hold_ = found ? Hold::Bone : Hold::Turn;
    if (found) {
      setHovered(found->bone);
      drag_.press(found->bone, found->p_W, pointerAt(event->position(), event->modifiers()));
    }
  } else if (event->button() == Qt::MiddleButton) {
    hold_ = Hold::Move;
  } else if (event->button() == Qt::RightButton) {
    hold_ = event->modifiers() & Qt::ShiftModifier ? Hold::Move : Hold::Turn;
  }
  tellHint(event->modifiers());
}

void Viewport::mouseMoveEvent(QMouseEvent* event) {
  const QPointF at = event->position();
  const Eigen::Vector2d travel = vector(at - lastAt_);
  lastAt_ = at;
  pointer_ = at;
  Camera camera = camera_;
  switch (hold_) {
    case Hold::None:
      hoverAt(at);
      break;
    case Hold::Bone:
      drag_.move(pointerAt(at, event->modifiers()));
      break;
    case Hold::Turn:
      // A click must not turn the view out of its standard direction by a pixel.
      if (pressedEmpty_ && (at - pressedAt_).manhattanLength() < kClickTravel) return;
      pressedEmpty_ = false;
      framedWhole_ = false;
      camera.orbit(travel);
      setCamera(camera);
      break;
    case Hold::Move:
      framedWhole_ = false;
      camera.pan(travel);
      setCamera(camera);
      break;
  }
  tellHint(event->modifiers());
}

void Viewport::mouseReleaseEvent(QMouseEvent* event) {
  const Hold held = std::exchange(hold_, Hold::None);
  if (held == Hold::Bone && !drag_.release()) click(event->position());
  if (held == Hold::Turn && pressedEmpty_) document_.selectBone(std::nullopt);
  pressedEmpty_ = false;
  hoverAt(event->position());
  tellHint(event->modifiers());
  const bool rightClick = event->button() == Qt::RightButton && held == Hold::Turn &&
                          (event->position() - pressedAt_).manhattanLength() < kClickTravel;
  const auto bone = document_.hasProject() ? document_.hoveredBone() : std::nullopt;
  if (rightClick && bone) emit menuAsked(*bone, event->globalPosition().toPoint());
}

void Viewport::contextMenuEvent(QContextMenuEvent* event) {
  // With the mouse a menu comes on release, because the right button turns the view.
  if (event->reason() == QContextMenuEvent::Mouse || !document_.hasProject()) return;
  const auto bone = document_.selectedBone();
  const auto at = bone ? placeOf(*bone) : std::nullopt;
  if (at) emit menuAsked(*bone, mapToGlobal(at->toPoint()));
}

void Viewport::click(const QPointF& at) {
  if (const auto found = finder_.find(camera_, vector(at), document_.placement())) document_.selectBone(found->bone);
}

void Viewport::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || !document_.hasProject()) return;
  const auto found = finder_.find(camera_, vector(event->position()), document_.placement());
  if (!found) return document_.setBendBase(std::nullopt);
  const auto joint = drag_.jointOf(found->bone);
  if (!joint) return;
  document_.setBendBase(document_.bendBase() == joint ? std::nullopt : joint);
  tellHint(event->modifiers());
}

void Viewport::wheelEvent(QWheelEvent* event) {
  const double notches = event->angleDelta().y() / 120.0;
  if (notches == 0 || !document_.hasProject()) return;
  glideTimer_.stop();
  framedWhole_ = false;
  Camera camera = camera_;
  camera.zoomAt(vector(event->position()), std::pow(kZoomPerNotch, notches));
  setCamera(camera);
  event->accept();
}

void Viewport::leaveEvent(QEvent*) {
  pointer_.reset();
  if (hold_ == Hold::None) setHovered(std::nullopt);
}

void Viewport::hoverAt(const QPointF& at) {
  if (!document_.hasProject()) return;
  const auto found = finder_.find(camera_, vector(at), document_.placement());
  setHovered(found ? std::optional(found->bone) : std::nullopt);
}

void Viewport::setHovered(std::optional<BoneIndex> bone) {
  if (!document_.hasProject() || bone == document_.hoveredBone()) return;
  document_.hoverBone(bone);
  emit hovered(bone ? boneLabel(document_.specimen()[*bone]) : QString());
}

void Viewport::tellHint(Qt::KeyboardModifiers modifiers) {
  if (!document_.hasProject()) return;
  const auto bone = document_.hoveredBone();
  const bool movable = hold_ == Hold::Bone || (bone && drag_.canMove(*bone));
  const DragMotion motion = drag_.pressed() ? drag_.motion() : DragTool::motionOf(modifiers);
  if (hold_ == Hold::Turn || hold_ == Hold::Move)
    setCursor(hold_ == Hold::Move ? Qt::SizeAllCursor : Qt::CrossCursor);
  else if (movable)
    setCursor(cursorOf(motion, drag_.dragging()));
  else
    unsetCursor();
  QString text = drag_.hint(bone, modifiers);
  if (hold_ == Hold::None && pointer_)
    for (const ContactMark& mark : contactMarks(document_, camera_, std::nullopt))
      if ((mark.at - *pointer_).manhattanLength() < kClickTravel * 3)
        text = contactWords(document_.specimen(), document_.assessment().contacts[mark.index]);
  if (text != lastHint_) emit hint(text);
  lastHint_ = text;
}

namespace {

constexpr double kRadians = 3.14159265358979323846 / 180;
constexpr double kNudge = 0.5, kLargeNudge = 5;  // degrees
constexpr double kKeyZoom = 1.18;

struct Nudge {
  int motion = 0;
  double sign = 1;
};

std::optional<Nudge> nudgeOf(int key, Qt::KeyboardModifiers modifiers) {
  const int sideways = modifiers & (Qt::ControlModifier | Qt::AltModifier) ? 2 : 1;
  switch (key) {
    case Qt::Key_Up:
      return Nudge{0, 1};
    case Qt::Key_Down:
      return Nudge{0, -1};
    case Qt::Key_Left:
      return Nudge{sideways, 1};
    case Qt::Key_Right:
      return Nudge{sideways, -1};
    default:
      return std::nullopt;
  }
}

// Steps of the same joint and motion that follow each other become one; never 0, which merges nothing.
int mergeKey(JointIndex joint, int motion) { return 1 + 3 * static_cast<int>(joint.value) + motion; }

}  // namespace

bool Viewport::nudge(int key, Qt::KeyboardModifiers modifiers) {
  const auto step = nudgeOf(key, modifiers);
  const auto joint = document_.hasProject() ? document_.selectedJoint() : std::nullopt;
  if (!step || !joint || document_.specimen()[*joint].kind == anatomy::JointKind::Fixed) return false;
  const double degrees = step->sign * (modifiers & Qt::ShiftModifier ? kLargeNudge : kNudge);
  kinematics::Pose pose = document_.pose();
  pose[*joint][step->motion] += degrees * kRadians;
  const auto& j = document_.specimen()[*joint];
  const QString name = motionWords(range::motionName(j, step->motion, step->sign));
  document_.changePose(pose, tr("Nudge %1, %2").arg(QString::fromStdString(j.id), name),
                       mergeKey(*joint, step->motion));
  return true;
}

void Viewport::keyPressEvent(QKeyEvent* event) {
  tellHint(event->modifiers());
  if (event->key() == Qt::Key_Escape && drag_.pressed()) {
    drag_.cancel();
    hold_ = Hold::None;
    return tellHint(event->modifiers());
  }
  if (drag_.pressed()) return;
  if (nudge(event->key(), event->modifiers())) return;
  if (event->key() == Qt::Key_Plus || event->key() == Qt::Key_Minus) {
    Camera camera = camera_;
    camera.zoomAt(0.5 * camera.size, event->key() == Qt::Key_Plus ? kKeyZoom : 1 / kKeyZoom);
    framedWhole_ = false;
    return setCamera(camera);
  }
  QOpenGLWidget::keyPressEvent(event);
}

void Viewport::keyReleaseEvent(QKeyEvent* event) {
  tellHint(event->modifiers());
  QOpenGLWidget::keyReleaseEvent(event);
}

bool Viewport::event(QEvent* event) {
  // Escape during a drag is ours even where a menu or dialog has a shortcut for it; so are the arrows of a chosen
  // joint.
  if (event->type() == QEvent::ShortcutOverride) {
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool arrows = document_.hasProject() && document_.selectedJoint() && nudgeOf(key->key(), key->modifiers());
    if ((key->key() == Qt::Key_Escape && drag_.pressed()) || arrows) {
      event->accept();
      return true;
    }
  }
  return QOpenGLWidget::event(event);
}

}  // namespace zyga::ui
