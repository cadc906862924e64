#include "ui/viewport/viewport.h"

#include <QBoxLayout>
#include <QOpenGLContext>
#include <QOpenGLVersionFunctionsFactory>
#include <QPainter>
#include <algorithm>
#include <stdexcept>

#include "ui/viewport/mark_overlays.h"
#include "ui/viewport/overlay.h"
#include "ui/viewport/scene.h"
#include "ui/viewport/study_overlays.h"

namespace zyga::ui {

namespace {

constexpr int kGlideTime = 260;  // ms
constexpr int kGlideStep = 15;   // ms
constexpr int kRest = 140;       // ms without movement before the picture is refined
constexpr std::chrono::milliseconds kRefineBudget{40};

QSurfaceFormat openGl33() {
  QSurfaceFormat format = QSurfaceFormat::defaultFormat();
  format.setRenderableType(QSurfaceFormat::OpenGL);
  format.setVersion(3, 3);
  format.setProfile(QSurfaceFormat::CoreProfile);
  format.setOption(QSurfaceFormat::ResetNotification);  // a driver that is reset says so
  format.setSamples(0);                                 // the renderer resolves its own samples
  return format;
}

double eased(double t) { return t * t * (3 - 2 * t); }

}  // namespace

Viewport::Viewport(Document& document, QWidget* parent)
    : QOpenGLWidget(parent), document_(document), ground_(document), drag_(document, this), finder_(this) {
  setFormat(openGl33());
  setMouseTracking(true);
  setFocusPolicy(Qt::StrongFocus);
  setMinimumSize(240, 180);
  setAccessibleName(tr("Viewport"));
  setAccessibleDescription(tr("The skeleton in its present pose. Arrow keys bend the chosen joint."));
  camera_.turnTo(picture::StandardView::ThreeQuarter);
  camera_.perspective = true;
  glideTimer_.setInterval(kGlideStep);
  restTimer_.setSingleShot(true);
  connect(&glideTimer_, &QTimer::timeout, this, &Viewport::glide);
  connect(&restTimer_, &QTimer::timeout, this, &Viewport::refine);
  connect(&document_, &Document::changed, this, &Viewport::onDocumentChanged);
  connect(&drag_.settings(), &ReachSettings::changed, this, qOverload<>(&QWidget::update));
  connect(&ThemeSwitch::instance(), &ThemeSwitch::changed, this, [this] {
    sceneStale_ = true;
    ++lookRevision_;
    touched();
  });
  takeSpecimen();
}

Viewport::~Viewport() {
  // The context goes when nothing of this class is left to be told.
  if (context()) context()->disconnect(this);
  freeGl();
}

void Viewport::onDocumentChanged(Changes what) {
  if (what & Change::Specimen) {
    drag_.cancel();
    takeSpecimen();
    return;
  }
  if (what & Change::Meshes) takeMeshes();
  if (what & (Changes(Change::Pose) | Change::Assumptions | Change::Contact | Change::Meshes)) ++poseRevision_;
  if (what & (Changes(Change::Bones) | Change::Compared | Change::NamedPoses | Change::Ground)) ++lookRevision_;
  sceneStale_ = true;
  touched();
}

void Viewport::takeSpecimen() {
  sticks_.clear();
  framedWhole_ = true;
  if (document_.hasProject()) {
    for (const auto& bone : document_.specimen().bones) sticks_.push_back(sticksOf(bone));
    finder_.setSpecimen(document_.specimen());
  }
  ++poseRevision_;
  takeMeshes();
}

void Viewport::takeMeshes() {
  sceneStale_ = true;
  if (document_.hasProject()) {
    boxes_ = boneBoxes(document_.specimen(), document_.meshesToShow());
    finder_.setMeshes(document_.meshesToShow());
  }
  if (renderer_) {
    makeCurrent();
    renderer_->setMeshes(document_.hasProject() ? document_.meshesToShow() : files::BoneMeshes{});
    doneCurrent();
  }
  refreshScene();
  if (framedWhole_) camera_ = framed(camera_, scene_.box);
  touched();
}

void Viewport::refreshScene() {
  if (!sceneStale_) return;
  scene_ = document_.hasProject() ? buildScene(document_, boxes_, theme()) : Scene{};
  if (document_.hasProject()) scene_.groundMarks = groundMarks(ground_, groundShown_, theme());
  if (envelope_ && !envelopeOutOfDate_) {
    for (auto& mark : envelopeMarks(*envelope_, theme())) scene_.groundMarks.push_back(std::move(mark));
  }
  sceneStale_ = false;
}

void Viewport::initializeGL() {
  connect(context(), &QOpenGLContext::aboutToBeDestroyed, this, &Viewport::freeGl, Qt::UniqueConnection);
  gl_ = QOpenGLVersionFunctionsFactory::get<Gl>(context());
  if (gl_ == nullptr || !gl_->initializeOpenGLFunctions()) {
    gl_ = nullptr;
    failure_ = tr("This display offers no OpenGL 3.3. A newer graphics driver, or Mesa's software one, is needed.");
    return;
  }
  try {
    renderer_ = std::make_unique<Renderer>(*gl_);
    renderer_->setMeshes(document_.hasProject() ? document_.meshesToShow() : files::BoneMeshes{});
    failure_.clear();
  } catch (const std::runtime_error& error) {
    failure_ = tr("The graphics driver refused a shader: %1").arg(QString::fromUtf8(error.what()));
  }
}

void Viewport::freeGl() {
  if (!renderer_) return;
  makeCurrent();
  renderer_.reset();
  gl_ = nullptr;
  doneCurrent();
}

void Viewport::resizeGL(int width, int height) {
  camera_.size = {std::max(1, width), std::max(1, height)};
  if (framedWhole_) {
    refreshScene();
    camera_ = framed(camera_, scene_.box);
  }
  touched();
}

FrameRequest Viewport::request() {
  refreshScene();
  FrameRequest request;
  request.scene = &scene_;
  request.camera = camera_;
  request.theme = theme();
  request.pixelRatio = devicePixelRatioF();
  request.pixels = (QSizeF(size()) * devicePixelRatioF()).toSize();
  request.look = lookRevision_;
  request.pose = poseRevision_;
  return request;
}

void Viewport::paintGL() {
  if (renderer_) {
    renderer_->paint(request(), defaultFramebufferObject());
    if (!restTimer_.isActive() && renderer_->unfinished(request())) restTimer_.start(renderer_->software() ? kRest : 0);
  }
  QPainter painter(this);
  paintOver(painter);
}

void Viewport::paintOver(QPainter& painter) {
  const QRectF area = rect();
  const Theme& now = theme();
  if (!failure_.isEmpty()) {
    painter.fillRect(area, now.viewportGround);
    painter.setPen(now.text);
    painter.drawText(area.adjusted(24, 24, -24, -24), Qt::AlignCenter | Qt::TextWordWrap, failure_);
    return;
  }
  if (!document_.hasProject()) return paintInvitation(painter, area, now);
  if (document_.meshesToShow().empty()) paintSticks(painter, document_, sticks_, camera_, now);
  if (envelope_) paintEnvelopeOutline(painter, area, *envelope_, envelopeOutOfDate_, camera_, now);
  paintGround(painter, area, ground_, groundShown_, camera_, now);
  paintSymbols(painter, jointSymbols(document_, camera_), now);
  paintContacts(painter, area, document_, contactMarks(document_, camera_, pointer_), now);
  paintNotes(painter, document_, camera_, now);
  paintBendBase(painter, document_, camera_, now);
  paintLocks(painter, document_, camera_, now);
  if (const auto lacks = drag_.shortfall()) paintShortfall(painter, area, *lacks, camera_, now);
  if (sculpted_ < 1) paintProgress(painter, area, sculpted_, now);
}

void Viewport::touched() {
  update();
  if (renderer_ && renderer_->software()) restTimer_.start(kRest);
}

void Viewport::refine() {
  if (!renderer_ || !isVisible()) return;
  const FrameRequest now = request();
  if (!renderer_->software()) return update();
  makeCurrent();
  const bool ready = renderer_->refine(now, kRefineBudget);
  const bool more = renderer_->unfinished(now);
  doneCurrent();
  if (ready) update();
  // Between slices the window answers whatever has come in.
  if (more) restTimer_.start(1);
}

QImage Viewport::grabPicture() {
  if (renderer_) {
    makeCurrent();
    renderer_->finish(request());
    doneCurrent();
  }
  return grabFramebuffer();
}

void Viewport::drawAsGraphicsProcessor() {
  if (renderer_) renderer_->drawAsGraphicsProcessor();
  update();
}

bool Viewport::inFullDetail() {
  return renderer_ && document_.hasProject() && !document_.meshes().empty() && !renderer_->unfinished(request());
}

bool Viewport::showsBones() {
  return renderer_ && document_.hasProject() && !document_.meshesToShow().empty() && renderer_->showsAll();
}

std::optional<QPointF> Viewport::placeOf(BoneIndex bone) const {
  if (!document_.hasProject() || bone.value >= boxes_.size()) return std::nullopt;
  const auto at = camera_.project(document_.placement()[bone.value] * boxes_[bone.value].center());
  if (!at) return std::nullopt;
  return QPointF(at->x(), at->y());
}

std::optional<FoundBone> Viewport::surfaceAt(const QPointF& at) {
  if (!document_.hasProject()) return std::nullopt;
  return finder_.find(camera_, {at.x(), at.y()}, document_.placement());
}

void Viewport::setCamera(const Camera& camera) {
  camera_ = camera;
  touched();
  emit cameraChanged();
}

Camera Viewport::framed(Camera camera, const Eigen::AlignedBox3d& box) const {
  camera.size = {std::max(1, width()), std::max(1, height())};
  camera.frame(box);
  return camera;
}

void Viewport::glideTo(const Camera& camera) {
  glideFrom_ = camera_;
  glideTo_ = camera;
  glideClock_.start();
  glideTimer_.start();
}

void Viewport::glide() {
  const double t = std::min(1.0, static_cast<double>(glideClock_.elapsed()) / kGlideTime);
  if (t >= 1) glideTimer_.stop();
  glideTo_.size = camera_.size;
  setCamera(t >= 1 ? glideTo_ : between(glideFrom_, glideTo_, eased(t)));
}

void Viewport::showView(picture::StandardView view) {
  refreshScene();
  Camera camera = glideTimer_.isActive() ? glideTo_ : camera_;
  camera.turnTo(view);
  camera.perspective = view == picture::StandardView::ThreeQuarter;
  framedWhole_ = true;
  glideTo(framed(camera, scene_.box));
}

void Viewport::frameAll() {
  refreshScene();
  framedWhole_ = true;
  glideTo(framed(glideTimer_.isActive() ? glideTo_ : camera_, scene_.box));
}

void Viewport::frameBone(BoneIndex bone) {
  if (!document_.hasProject() || bone.value >= boxes_.size()) return;
  // With its neighbours: a joint is judged by both of its bones.
  Eigen::AlignedBox3d box = worldBox(boxes_[bone.value], document_.placement()[bone.value]);
  if (const auto joint = document_.specimen().jointAbove(bone)) {
    const BoneIndex proximal = document_.specimen()[*joint].proximal;
    box.extend(document_.placement()[bone.value] * document_.specimen()[*joint].centreDistal);
    if (boxes_[proximal.value].sizes().maxCoeff() < 3 * boxes_[bone.value].sizes().maxCoeff())
      box.extend(worldBox(boxes_[proximal.value], document_.placement()[proximal.value]));
  }
  framedWhole_ = false;
  Camera camera = glideTimer_.isActive() ? glideTo_ : camera_;
  camera.size = {std::max(1, width()), std::max(1, height())};
  camera.frame(box, 0.22);
  glideTo(camera);
}

void Viewport::framePlace(const Eigen::Vector3d& p_W, double radius) {
  if (!document_.hasProject()) return;
  framedWhole_ = false;
  Camera camera = glideTimer_.isActive() ? glideTo_ : camera_;
  camera.size = {std::max(1, width()), std::max(1, height())};
  const Eigen::Vector3d reach = Eigen::Vector3d::Constant(radius);
  camera.frame(Eigen::AlignedBox3d(p_W - reach, p_W + reach));
  glideTo(camera);
}

void Viewport::setPerspective(bool perspective) {
  Camera camera = glideTimer_.isActive() ? glideTo_ : camera_;
  if (camera.perspective == perspective) return;
  camera.perspective = perspective;
  glideTo(framedWhole_ ? framed(camera, scene_.box) : camera);
}

void Viewport::setLens(double millimetres) {
  Camera camera = glideTimer_.isActive() ? glideTo_ : camera_;
  camera.lens = std::clamp(millimetres, 8.0, 800.0);
  setCamera(camera);
}

void Viewport::showOnGround(const GroundShown& shown) {
  groundShown_ = shown;
  sceneStale_ = true;
  ++lookRevision_;
  touched();
}

void Viewport::showEnvelope(const std::shared_ptr<const study::Envelope>& envelope, bool outOfDate) {
  envelope_ = envelope;
  envelopeOutOfDate_ = outOfDate;
  sceneStale_ = true;
  ++lookRevision_;
  touched();
}

void Viewport::setSculptProgress(double share) {
  sculpted_ = share;
  update();
}

/// A context that the driver has lost is found invalid once it was asked for; only a new one helps.
void Viewport::paintEvent(QPaintEvent* event) {
  QOpenGLWidget::paintEvent(event);
  if (restarting_ || !context() || context()->isValid()) return;
  restarting_ = true;
  QMetaObject::invokeMethod(
      this,
      [this] {
        startGraphicsAnew();
        restarting_ = false;
        emit graphicsRestarted();
      },
      Qt::QueuedConnection);
}

/// A widget gets a new context when it comes into another window, so it is taken out and put back.
void Viewport::startGraphicsAnew() {
  auto* layout = parentWidget() ? qobject_cast<QBoxLayout*>(parentWidget()->layout()) : nullptr;
  if (!layout) return;
  const int place = layout->indexOf(this);
  const int stretch = layout->stretch(place);
  const bool focused = hasFocus();
  layout->removeWidget(this);
  setParent(nullptr);
  layout->insertWidget(place, this, stretch);
  show();
  if (focused) setFocus();
}

}  // namespace zyga::ui
