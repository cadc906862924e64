#include "ui/scans/landmark_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QOpenGLContext>
#include <QOpenGLVersionFunctionsFactory>
#include <QPainter>
#include <cmath>
#include <unordered_map>

#include "core/solid/mesh/simplify.h"
#include "ui/theme/theme.h"

namespace zyga::ui {
namespace {

constexpr double kZoomPerNotch = 1.18;
constexpr double kKeyTurn = 12;                   // pixels of a drag that an arrow key stands for
constexpr int kRest = 220;                        // ms until a turned bone is drawn in full again
constexpr std::size_t kMovingTriangles = 60'000;  // drawn while it turns

QSurfaceFormat viewFormat() {
  QSurfaceFormat format = QSurfaceFormat::defaultFormat();
  format.setRenderableType(QSurfaceFormat::OpenGL);
  format.setVersion(3, 3);
  format.setProfile(QSurfaceFormat::CoreProfile);
  format.setDepthBufferSize(24);
  format.setSamples(4);
  return format;
}

Eigen::Vector2d vector(const QPointF& p) { return {p.x(), p.y()}; }

}  // namespace

LandmarkView::LandmarkView(QWidget* parent) : QOpenGLWidget(parent) {
  setFormat(viewFormat());
  setObjectName("landmarkView");
  setMouseTracking(true);
  setFocusPolicy(Qt::StrongFocus);
  setMinimumSize(320, 240);
  setAccessibleName(tr("Bone with its landmarks"));
  setAccessibleDescription(tr("Arrow keys turn it, plus and minus magnify, Return marks what lies under the middle."));
  camera_.turnTo(picture::StandardView::Left);
  rest_.setSingleShot(true);
  rest_.setInterval(kRest);
  connect(&rest_, &QTimer::timeout, this, [this] {
    moving_ = false;
    update();
  });
  connect(&ThemeSwitch::instance(), &ThemeSwitch::changed, this, qOverload<>(&QWidget::update));
}

LandmarkView::~LandmarkView() {
  // The context goes when nothing of this class is left to be told.
  if (context()) context()->disconnect(this);
  freeGl();
}

void LandmarkView::setBone(std::shared_ptr<const ScanSurface> bone, const Eigen::Affine3d& X_WS,
                           const QString& waiting) {
  bone_ = std::move(bone);
  waiting_ = waiting;
  patch_ = {};
  patchStale_ = true;
  if (gl_) {
    makeCurrent();
    levels_.clear();
    doneCurrent();
  }
  setPlace(X_WS);
  frameAll();
}

void LandmarkView::setPlace(const Eigen::Affine3d& X_WS) {
  X_WS_ = X_WS;
  box_W_.setEmpty();
  if (bone_)
    for (int i = 0; i < 8; ++i)
      box_W_.extend(X_WS_ * bone_->box_S().corner(static_cast<Eigen::AlignedBox3d::CornerType>(i)));
  update();
}

void LandmarkView::setTool(Tool tool) {
  tool_ = tool;
  setCursor(tool == Tool::Brush ? Qt::BlankCursor : Qt::CrossCursor);
  update();
}

void LandmarkView::setBrushRadius(double metres) {
  brushRadius_ = metres;
  update();
}

void LandmarkView::setPatch(const std::vector<std::uint32_t>& triangles) {
  patch_ = bone_ ? partOf(bone_->mesh(), triangles) : solid::TriangleMesh{};
  patchStale_ = true;
  update();
}

void LandmarkView::setMarks(std::vector<ShownMark> marks) {
  marks_ = std::move(marks);
  update();
}

void LandmarkView::showView(picture::StandardView view) {
  camera_.turnTo(view);
  frameAll();
}

void LandmarkView::frameAll() {
  if (box_W_.isEmpty()) return;
  camera_.size = {std::max(1, width()), std::max(1, height())};
  camera_.frame(box_W_, 0.1);
  update();
}

void LandmarkView::showPlace(const Eigen::Vector3d& p_S) {
  if (box_W_.isEmpty()) return;
  using picture::StandardView;
  const Camera before = camera_;
  for (const StandardView view :
       {StandardView::Left, StandardView::Right, StandardView::Dorsal, StandardView::Cranial, StandardView::Caudal}) {
    camera_.turnTo(view);
    frameAll();
    if (!hidden(p_S)) break;
    camera_.turnTo(StandardView::Left);
  }
  constexpr double kShown = 0.6;  // of the bone
  const Eigen::Vector3d p_W = X_WS_ * p_S;
  frameAll();
  camera_.target = p_W;
  camera_.viewHeight = std::min(camera_.viewHeight, kShown * box_W_.sizes().maxCoeff());
  camera_.lens = before.lens;
  update();
}

std::optional<QPointF> LandmarkView::placeOf(const Eigen::Vector3d& p_S) const {
  const auto at = camera_.project(X_WS_ * p_S);
  if (!at) return std::nullopt;
  return QPointF(at->x(), at->y());
}

void LandmarkView::initializeGL() {
  connect(context(), &QOpenGLContext::aboutToBeDestroyed, this, &LandmarkView::freeGl, Qt::UniqueConnection);
  gl_ = QOpenGLVersionFunctionsFactory::get<Gl>(context());
  if (gl_ == nullptr || !gl_->initializeOpenGLFunctions()) {
    gl_ = nullptr;
    failure_ = tr("This display offers no OpenGL 3.3. A newer graphics driver, or Mesa's software one, is needed.");
    return;
  }
  try {
    program_ = std::make_unique<Program>(*gl_, "scan.vert", "scan.frag");
  } catch (const std::runtime_error& error) {
    failure_ = tr("The graphics driver refused a shader: %1").arg(QString::fromUtf8(error.what()));
  }
}

void LandmarkView::freeGl() {
  if (!gl_) return;
  makeCurrent();
  levels_.clear();
  patchMesh_.reset();
  program_.reset();
  gl_ = nullptr;
  doneCurrent();
}

void LandmarkView::resizeGL(int width, int height) {
  camera_.size = {std::max(1, width), std::max(1, height)};
  update();
}

GlMesh* LandmarkView::levelToDraw() {
  const auto& sources = bone_->levels().levels;
  if (levels_.empty()) levels_.resize(sources.size());
  std::size_t wanted = 0;
  while (moving_ && wanted + 1 < sources.size() && sources[wanted].triangles.size() > kMovingTriangles) ++wanted;
  if (!levels_[wanted]) levels_[wanted] = std::make_unique<GlMesh>(*gl_, sources[wanted]);
  return levels_[wanted].get();
}

void LandmarkView::drawMesh(GlMesh& mesh, const QColor& colour, float cover) {
  program_->set("bone", linearColour(colour));
  program_->set("cover", cover);
  mesh.draw();
}

void LandmarkView::drawBone() {
  const ClipRange range = clipRange(camera_, box_W_);
  Eigen::Matrix4f normals = Eigen::Matrix4f::Identity();
  normals.topLeftCorner<3, 3>() = X_WS_.linear().inverse().transpose().cast<float>();
  program_->use();
  program_->set("X_WB", Eigen::Matrix4f(X_WS_.matrix().cast<float>()));
  program_->set("normals_WB", normals);
  program_->set("clipOfWorld", Eigen::Matrix4f(clipOfWorld(camera_, range).cast<float>()));
  program_->set("back_W", Eigen::Vector3f(camera_.back().cast<float>()));
  const Eigen::Vector3d key = camera_.back() + 0.9 * camera_.up() - 0.7 * camera_.right();
  program_->set("key_W", Eigen::Vector3f(key.normalized().cast<float>()));
  gl_->glEnable(GL_DEPTH_TEST);
  gl_->glDepthFunc(GL_LESS);
  gl_->glDepthMask(GL_TRUE);
  gl_->glDisable(GL_CULL_FACE);
  gl_->glDisable(GL_BLEND);
  gl_->glFrontFace(X_WS_.linear().determinant() < 0 ? GL_CW : GL_CCW);
  drawMesh(*levelToDraw(), theme().boneFound, 1);
  if (std::exchange(patchStale_, false)) {
    patchMesh_.reset();
    if (!patch_.empty()) patchMesh_ = std::make_unique<GlMesh>(*gl_, patch_);
  }
  if (patchMesh_) {
    gl_->glEnable(GL_BLEND);
    gl_->glBlendFunc(GL_ONE, GL_ONE_MINUS_SRC_ALPHA);
    gl_->glEnable(GL_POLYGON_OFFSET_FILL);
    gl_->glPolygonOffset(-2, -4);
    drawMesh(*patchMesh_, theme().choice, 0.6f);
    gl_->glDisable(GL_POLYGON_OFFSET_FILL);
    gl_->glDisable(GL_BLEND);
  }
  gl_->glFrontFace(GL_CCW);
  gl_->glBindVertexArray(0);
  gl_->glDisable(GL_DEPTH_TEST);
}

void LandmarkView::paintGL() {
  if (gl_) {
    const Theme& now = theme();
    const Eigen::Vector3f ground = screenColour(mixed(now.viewportTop, now.viewportGround, 0.4));
    gl_->glClearColor(ground.x(), ground.y(), ground.z(), 1);
    gl_->glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT);
    if (bone_ && program_) drawBone();
  }
  QPainter painter(this);
  paintOver(painter);
}

void LandmarkView::paintOver(QPainter& painter) {
  painter.setRenderHint(QPainter::Antialiasing);
  if (!failure_.isEmpty() || !bone_) {
    painter.setPen(theme().muted);
    const QString words = failure_.isEmpty() ? waiting_ : failure_;
    return painter.drawText(rect().adjusted(24, 24, -24, -24), Qt::AlignCenter | Qt::TextWordWrap, words);
  }
  paintMarks(painter);
  paintBrush(painter);
}

/// Whether the bone itself stands between the eye and a point.
bool LandmarkView::hidden(const Eigen::Vector3d& p_S) const {
  const Eigen::Vector3d p_W = X_WS_ * p_S;
  const auto at = camera_.project(p_W);
  if (!at) return true;
  const auto hit = bone_->pick(camera_.ray(*at), X_WS_);
  if (!hit) return false;
  const double nearer = (X_WS_ * hit->p_S - p_W).dot(camera_.back());
  return nearer > 0.01 * box_W_.diagonal().norm();
}

void LandmarkView::paintMarks(QPainter& painter) {
  const Theme& now = theme();
  const auto project = [this](const Eigen::Vector3d& p_S) { return placeOf(p_S).value_or(QPointF(-1e4, -1e4)); };
  for (const ShownMark& mark : marks_) {
    const QPointF at = project(mark.p_S);
    const bool behind = !moving_ && hidden(mark.p_S);
    const QColor ink = mark.chosen ? now.choice : now.text;
    if (mark.doubted) {
      // A triangle round the mark, as findings beyond range have it, on a ground of its own.
      painter.setOpacity(1);
      painter.setPen(Qt::NoPen);
      painter.setBrush(withAlpha(now.panel, 0.9));
      painter.drawEllipse(at, 14, 14);
      painter.setPen(QPen(now.beyond, 2));
      painter.setBrush(Qt::NoBrush);
      painter.drawPolygon(QPolygonF{at + QPointF(0, -12), at + QPointF(10.5, 7), at + QPointF(-10.5, 7)});
    }
    painter.setOpacity(behind ? 0.45 : 1);
    painter.setBrush(Qt::NoBrush);
    if (mark.outline.size() > 1) {
      QPolygonF line;
      for (const auto& p_S : mark.outline) line << project(p_S);
      painter.setPen(QPen(withAlpha(now.panel, 0.9), 4));
      painter.drawPolygon(line);
      painter.setPen(QPen(ink, mark.chosen ? 2 : 1.4, behind ? Qt::DashLine : Qt::SolidLine));
      painter.drawPolygon(line);
    }
    if (mark.radius > 0) {
      const double pixels =
          mark.radius * std::cbrt(std::abs(X_WS_.linear().determinant())) / camera_.metresPerPixelAt(X_WS_ * mark.p_S);
      painter.setPen(QPen(ink, 1.2, Qt::DashLine));
      painter.drawEllipse(at, pixels, pixels);
    }
    painter.setPen(QPen(now.panel, 1.5));
    painter.setBrush(behind ? QBrush(now.panel) : QBrush(ink));
    painter.drawEllipse(at, 4.5, 4.5);
    if (mark.chosen && !mark.title.isEmpty()) {
      const QFontMetricsF metrics(painter.font());
      QRectF box(at + QPointF(10, -metrics.height() - 8),
                 QSizeF(metrics.horizontalAdvance(mark.title) + 12, metrics.height() + 4));
      if (box.right() > width() - 4) box.moveRight(at.x() - 10);
      painter.setPen(QPen(now.line, 1));
      painter.setBrush(withAlpha(now.panel, 0.94));
      painter.drawRoundedRect(box, 4, 4);
      painter.setPen(now.text);
      painter.drawText(box, Qt::AlignCenter, mark.title);
    }
  }
  painter.setOpacity(1);
}

void LandmarkView::paintBrush(QPainter& painter) {
  if (tool_ != Tool::Brush || !pointer_ || hold_ == Hold::Turn || hold_ == Hold::Move) return;
  const double scale = std::cbrt(std::abs(X_WS_.linear().determinant()));
  const double pixels = brushRadius_ * scale / camera_.metresPerPixel();
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(withAlpha(theme().panel, 0.9), 3));
  painter.drawEllipse(*pointer_, pixels, pixels);
  painter.setPen(QPen(theme().choice, 1.4));
  painter.drawEllipse(*pointer_, pixels, pixels);
  painter.drawPoint(*pointer_);
}

void LandmarkView::moved() {
  moving_ = true;
  rest_.start();
  update();
}

std::optional<ScanHit> LandmarkView::hitAt(const QPointF& at) const {
  return bone_ ? bone_->pick(camera_.ray(vector(at)), X_WS_) : std::nullopt;
}

void LandmarkView::useTool(const ScanHit& hit, bool away) {
  if (tool_ == Tool::Brush)
    emit brushed(hit, away);
  else
    emit placed(hit);
}

void LandmarkView::mousePressEvent(QMouseEvent* event) {
  if (hold_ != Hold::None) return;
  lastAt_ = event->position();
  if (event->button() == Qt::MiddleButton ||
      (event->button() == Qt::RightButton && event->modifiers() & Qt::ShiftModifier))
    hold_ = Hold::Move;
  else if (event->button() == Qt::RightButton)
    hold_ = Hold::Turn;
  if (event->button() != Qt::LeftButton) return;
  const auto hit = hitAt(event->position());
  hold_ = !hit ? Hold::Turn : tool_ == Tool::Brush ? Hold::Brush : Hold::None;
  if (hit) useTool(*hit, event->modifiers() & Qt::ControlModifier);
}

void LandmarkView::mouseMoveEvent(QMouseEvent* event) {
  const Eigen::Vector2d travel = vector(event->position() - lastAt_);
  lastAt_ = event->position();
  pointer_ = event->position();
  if (hold_ == Hold::Turn) {
    camera_.orbit(travel);
    moved();
  } else if (hold_ == Hold::Move) {
    camera_.pan(travel);
    moved();
  } else if (hold_ == Hold::Brush) {
    if (const auto hit = hitAt(event->position())) useTool(*hit, event->modifiers() & Qt::ControlModifier);
  }
  update();
}

void LandmarkView::mouseReleaseEvent(QMouseEvent*) {
  if (std::exchange(hold_, Hold::None) == Hold::Brush) emit strokeEnded();
}

void LandmarkView::wheelEvent(QWheelEvent* event) {
  const double notches = event->angleDelta().y() / 120.0;
  camera_.zoomAt(vector(event->position()), std::pow(kZoomPerNotch, notches));
  moved();
  event->accept();
}

void LandmarkView::leaveEvent(QEvent*) {
  pointer_.reset();
  update();
}

void LandmarkView::keyPressEvent(QKeyEvent* event) {
  const Eigen::Vector2d middle = 0.5 * camera_.size;
  switch (event->key()) {
    case Qt::Key_Left:
      camera_.orbit({-kKeyTurn, 0});
      return moved();
    case Qt::Key_Right:
      camera_.orbit({kKeyTurn, 0});
      return moved();
    case Qt::Key_Up:
      camera_.orbit({0, -kKeyTurn});
      return moved();
    case Qt::Key_Down:
      camera_.orbit({0, kKeyTurn});
      return moved();
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      camera_.zoomAt(middle, kZoomPerNotch);
      return moved();
    case Qt::Key_Minus:
      camera_.zoomAt(middle, 1 / kZoomPerNotch);
      return moved();
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (const auto hit = hitAt({middle.x(), middle.y()})) {
        useTool(*hit, event->modifiers() & Qt::ControlModifier);
        if (tool_ == Tool::Brush) emit strokeEnded();
      }
      return;
    default:
      QOpenGLWidget::keyPressEvent(event);
  }
}

ScanSurface::ScanSurface(std::shared_ptr<const solid::TriangleMesh> mesh)
    : mesh_(std::move(mesh)), levels_(solid::displayLevels(*mesh_)), picker_({mesh_}), marked_(*mesh_) {
  for (const auto& p : mesh_->positions) box_S_.extend(p.cast<double>());
}

std::optional<ScanHit> ScanSurface::pick(const Ray& ray, const Eigen::Affine3d& X_WS) const {
  const Eigen::Affine3d X_SW = X_WS.inverse();
  const Eigen::Vector3d direction = (X_SW.linear() * ray.direction_W).normalized();
  // From just before the bone, where single precision is at its best.
  const Eigen::Vector3d origin = X_SW * ray.p_WOrigin;
  const double before = (box_S_.center() - origin).dot(direction) - box_S_.diagonal().norm();
  const Eigen::Vector3d start = origin + std::max(0.0, before) * direction;
  const auto hit = picker_.pick(start, direction);
  if (!hit) return std::nullopt;
  return ScanHit{hit->p_W, hit->normal_W.normalized()};
}

solid::TriangleMesh partOf(const solid::TriangleMesh& mesh, const std::vector<std::uint32_t>& triangles) {
  solid::TriangleMesh part;
  std::unordered_map<std::uint32_t, std::uint32_t> renumbered;
  for (const std::uint32_t t : triangles) {
    auto& out = part.triangles.emplace_back(mesh.triangles[t]);
    for (std::uint32_t& v : out) {
      const auto [at, fresh] = renumbered.try_emplace(v, static_cast<std::uint32_t>(part.positions.size()));
      if (fresh) part.positions.push_back(mesh.positions[v]);
      v = at->second;
    }
  }
  solid::computeNormals(part);
  return part;
}

}  // namespace zyga::ui
