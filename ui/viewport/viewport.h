#pragma once

#include <QElapsedTimer>
#include <QImage>
#include <QOpenGLWidget>
#include <QTimer>

#include "core/study/reach/envelope.h"
#include "ui/document/document.h"
#include "ui/drag/drag_tool.h"
#include "ui/ground/ground_state.h"
#include "ui/viewport/bone_finder.h"
#include "ui/viewport/camera.h"
#include "ui/viewport/renderer.h"

namespace zyga::ui {

/// The animal, to be looked at and bent. Left-drag on a bone bends its chain, a click chooses it, a double-click makes
/// its joint the base of further bends; right-drag (or left-drag on empty space) turns the view, middle-drag or
/// Shift+right-drag moves it, the wheel magnifies at the pointer.
class Viewport : public QOpenGLWidget {
  Q_OBJECT
 public:
  explicit Viewport(Document& document, QWidget* parent = nullptr);
  ~Viewport() override;

  const Camera& camera() const { return camera_; }
  /// The window as it would be at rest, in full detail.
  QImage grabPicture();
  /// Where the middle of a bone appears, pixels; nothing when it is behind the eye.
  std::optional<QPointF> placeOf(BoneIndex bone) const;
  /// The bone at a place of the window, pixels, and the point of it that is seen there.
  std::optional<FoundBone> surfaceAt(const QPointF& at);
  /// How drags reach.
  ReachSettings& reachSettings() { return drag_.settings(); }
  /// True once the bones' surfaces are there and the pointer finds them exactly.
  bool ready() const { return !document_.meshes().empty() && finder_.exact(); }
  /// True while the picture on screen shows all bones, be they rough ones until they are sculpted.
  bool showsBones();
  /// True while the picture on screen shows all surfaces as finely as it can.
  bool inFullDetail();
  /// See Renderer::drawAsGraphicsProcessor.
  void drawAsGraphicsProcessor();
  /// Makes everything that lives in the graphics driver anew.
  void startGraphicsAnew();
  /// Paints what lies over the bones: symbols, marks and words. A unit of the painter is a pixel of the window.
  void paintOver(QPainter& painter);

 public slots:
  void showView(zyga::picture::StandardView view);
  void frameAll();
  void frameBone(zyga::ui::BoneIndex bone);
  /// Shows a place of the world and what lies within `radius` of it, m.
  void framePlace(const Eigen::Vector3d& p_W, double radius);
  void setPerspective(bool perspective);
  /// Focal length on film 24 mm high, mm.
  void setLens(double millimetres);
  /// Whether footprints, and centre of mass with what carries it, are drawn on the ground.
  void showOnGround(const zyga::ui::GroundShown& shown);
  /// The outline and the strip of ground that the snout reaches; none takes them away. Out of date it is dashed.
  void showEnvelope(const std::shared_ptr<const study::Envelope>& envelope, bool outOfDate);
  /// How far the sculpting has come; a total of 0 hides it.
  /// Share of the bones that have been sculpted; 1 where nothing is being sculpted.
  void setSculptProgress(double share);

 signals:
  /// What the pointer can do now, for the status bar.
  void hint(const QString& text);
  /// Id and title of the bone under the pointer; empty when there is none.
  void hovered(const QString& bone);
  void cameraChanged();
  /// The graphics driver had lost the picture (a reset, a changed card); it has been started anew.
  void graphicsRestarted();
  /// A click with the right button, or the menu key with a bone chosen: what can be done with this bone?
  void menuAsked(zyga::ui::BoneIndex bone, const QPoint& global);

 protected:
  void initializeGL() override;
  void resizeGL(int width, int height) override;
  void paintGL() override;
  void paintEvent(QPaintEvent* event) override;
  bool event(QEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;

 private:
  enum class Hold { None, Bone, Turn, Move };

  void onDocumentChanged(Changes what);
  void takeSpecimen();
  void takeMeshes();
  void freeGl();
  void touched();  // something moved: draw soon, refine when it rests
  void refine();
  FrameRequest request();

  void setCamera(const Camera& camera);
  void glideTo(const Camera& camera);
  void glide();
  Camera framed(Camera camera, const Eigen::AlignedBox3d& box) const;
  void refreshScene();

  DragPointer pointerAt(const QPointF& at, Qt::KeyboardModifiers modifiers) const;
  void hoverAt(const QPointF& at);
  void setHovered(std::optional<BoneIndex> bone);
  void tellHint(Qt::KeyboardModifiers modifiers);
  void click(const QPointF& at);
  bool nudge(int key, Qt::KeyboardModifiers modifiers);

  Document& document_;
  GroundState ground_;
  GroundShown groundShown_{.trackway = true, .balance = false};
  std::shared_ptr<const study::Envelope> envelope_;
  bool envelopeOutOfDate_ = false;
  DragTool drag_;
  BoneFinder finder_;
  Camera camera_;
  Scene scene_;
  std::vector<Eigen::AlignedBox3d> boxes_;
  std::vector<Sticks> sticks_;
  Gl* gl_ = nullptr;  // the context owns it
  std::unique_ptr<Renderer> renderer_;
  QString failure_;  // why there is no picture
  bool sceneStale_ = true;
  bool framedWhole_ = true;  // nobody has turned away from the whole animal yet
  std::uint64_t lookRevision_ = 0, poseRevision_ = 0;
  Camera glideFrom_, glideTo_;
  QElapsedTimer glideClock_;
  QTimer glideTimer_, restTimer_;
  Hold hold_ = Hold::None;
  bool pressedEmpty_ = false;
  QPointF pressedAt_, lastAt_;
  std::optional<QPointF> pointer_;
  double sculpted_ = 1;  ///< share of the bones
  bool restarting_ = false;
  QString lastHint_;
};

}  // namespace zyga::ui
