#include <QKeyEvent>

#include "ui/theme/words.h"
#include "ui/viewport/viewport.h"

namespace zyga::ui {
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
  const QString name = text(range::motionName(j, step->motion, step->sign));
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
