#pragma once

#include <QOpenGLWidget>
#include <QTimer>

#include "core/files/project/project_scan.h"
#include "core/picture/picker.h"
#include "core/solid/facets/mark_fit.h"
#include "core/solid/sculpt/sculpt.h"
#include "ui/viewport/camera.h"
#include "ui/viewport/gl.h"

namespace zyga::ui {

/// Where a ray meets a scan, in the scan's own axes, m.
struct ScanHit {
  Eigen::Vector3d p_S = Eigen::Vector3d::Zero();
  Eigen::Vector3d normal_S = Eigen::Vector3d::UnitZ();  ///< unit, out of the bone
};

/// A scan made ready for the editor: its levels of detail for display, and what finds its surface exactly. Made beside
/// the window.
class ScanSurface {
 public:
  explicit ScanSurface(std::shared_ptr<const solid::TriangleMesh> mesh);

  const solid::TriangleMesh& mesh() const { return *mesh_; }
  const solid::BoneMesh& levels() const { return levels_; }
  const Eigen::AlignedBox3d& box_S() const { return box_S_; }
  /// Asked where marks lie on it.
  const solid::MarkedSurface& marked() const { return marked_; }
  /// `ray` in the editor's world, X_WS from the scan's axes to it.
  std::optional<ScanHit> pick(const Ray& ray, const Eigen::Affine3d& X_WS) const;

 private:
  std::shared_ptr<const solid::TriangleMesh> mesh_;
  solid::BoneMesh levels_;
  Eigen::AlignedBox3d box_S_;
  picture::Picker picker_;
  solid::MarkedSurface marked_;
};

/// The named triangles alone, to be drawn over the mesh.
solid::TriangleMesh partOf(const solid::TriangleMesh& mesh, const std::vector<std::uint32_t>& triangles);

/// A mark as the editor draws it, in the scan's axes, m.
struct ShownMark {
  QString title;
  Eigen::Vector3d p_S = Eigen::Vector3d::Zero();
  std::vector<Eigen::Vector3d> outline;  ///< of a facet or a ring; empty for a point
  double radius = 0;                     ///< of a ball
  bool chosen = false;
  bool doubted = false;  ///< it can hardly be right
};

/// One bone in the landmark editor: turned with the right button (or on empty space), moved with the middle one,
/// magnified with the wheel; the left button marks it, by places or with a brush. Return marks what lies under the
/// middle of the view.
class LandmarkView : public QOpenGLWidget {
  Q_OBJECT
 public:
  enum class Tool { Place, Brush };

  explicit LandmarkView(QWidget* parent = nullptr);
  ~LandmarkView() override;

  /// Shows a bone that has been made ready, X_WS from its axes to the editor's; null: `waiting` is told instead.
  void setBone(std::shared_ptr<const ScanSurface> bone, const Eigen::Affine3d& X_WS, const QString& waiting);
  void setPlace(const Eigen::Affine3d& X_WS);
  void setTool(Tool tool);
  void setBrushRadius(double metres);
  /// Triangles that lie under the brush's work so far.
  void setPatch(const std::vector<std::uint32_t>& triangles);
  void setMarks(std::vector<ShownMark> marks);
  void showView(picture::StandardView view);
  void frameAll();
  /// Turns to where the bone does not hide this place, in the scan's axes, and shows it large in the middle.
  void showPlace(const Eigen::Vector3d& p_S);

  const Camera& camera() const { return camera_; }
  /// Where a point of the scan appears, pixels.
  std::optional<QPointF> placeOf(const Eigen::Vector3d& p_S) const;
  bool ready() const { return bone_ != nullptr; }
  /// Paints what lies over the bone, or why there is none. A unit of the painter is a pixel of the view.
  void paintOver(QPainter& painter);

 signals:
  void placed(const zyga::ui::ScanHit& at);
  void brushed(const zyga::ui::ScanHit& at, bool away);
  void strokeEnded();

 protected:
  void initializeGL() override;
  void resizeGL(int width, int height) override;
  void paintGL() override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  enum class Hold { None, Turn, Move, Brush };

  std::optional<ScanHit> hitAt(const QPointF& at) const;
  void useTool(const ScanHit& hit, bool away);
  void moved();
  void freeGl();
  void drawBone();
  void drawMesh(GlMesh& mesh, const QColor& colour, float cover);
  void paintMarks(QPainter& painter);
  void paintBrush(QPainter& painter);
  bool hidden(const Eigen::Vector3d& p_S) const;
  GlMesh* levelToDraw();

  std::shared_ptr<const ScanSurface> bone_;
  Eigen::Affine3d X_WS_ = Eigen::Affine3d::Identity();
  Eigen::AlignedBox3d box_W_;
  QString waiting_, failure_;
  Camera camera_;
  Tool tool_ = Tool::Place;
  double brushRadius_ = 0.01;
  std::vector<ShownMark> marks_;
  solid::TriangleMesh patch_;
  bool patchStale_ = false, moving_ = false;
  Hold hold_ = Hold::None;
  QPointF lastAt_;
  std::optional<QPointF> pointer_;
  QTimer rest_;
  Gl* gl_ = nullptr;
  std::unique_ptr<Program> program_;
  std::vector<std::unique_ptr<GlMesh>> levels_;
  std::unique_ptr<GlMesh> patchMesh_;
};

}  // namespace zyga::ui
