#include "ui/viewport/renderer.h"

#include <algorithm>
#include <cmath>

namespace zyga::ui {
namespace {

using Clock = std::chrono::steady_clock;

constexpr double kFineEdge = 2.2, kMovingEdge = 5.0;  // pixels
constexpr std::chrono::milliseconds kUploadBudget{8};
constexpr int kShadowTurns = 4;  // each map is drawn once in so many moving frames

bool drawsOnProcessor(Gl& gl) {
  const QString name = reinterpret_cast<const char*>(gl.glGetString(GL_RENDERER));
  for (const char* software : {"llvmpipe", "softpipe", "swrast", "SWR", "Basic Render", "Software"})
    if (name.contains(software, Qt::CaseInsensitive)) return true;
  return false;
}

int samplesOf(Gl& gl) {
  GLint most = 0;
  gl.glGetIntegerv(GL_MAX_SAMPLES, &most);
  return std::min<int>(most, 4);
}

double since(Clock::time_point start) {
  return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

}  // namespace

Renderer::Renderer(Gl& gl)
    : gl_(gl),
      software_(drawsOnProcessor(gl)),
      samples_(samplesOf(gl)),
      meshes_(gl),
      shadow_(gl, !software_),
      ground_(gl),
      groundMarks_(gl),
      bones_(gl),
      edges_(gl) {}

void Renderer::setMeshes(const files::BoneMeshes& meshes) { meshes_.setMeshes(meshes); }

Renderer::Key Renderer::keyOf(const FrameRequest& request) const {
  return {request.camera, request.pixels,     request.theme.scheme, request.look,
          request.pose,   meshes_.arrivals(), meshes_.revision()};
}

FrameView Renderer::viewOf(const FrameRequest& request, double scale, double edgePixels) const {
  Eigen::AlignedBox3d box = request.scene->box;
  // The compared pose is clipped with the same range; room enough on every side holds it.
  if (!request.scene->ghost.empty()) {
    const Eigen::Vector3d centre = box.center(), half = 1.6 * box.sizes().maxCoeff() * Eigen::Vector3d::Ones();
    box = Eigen::AlignedBox3d(centre - half, centre + half);
  }
  FrameView view(request.camera, box);
  view.pixelScale = static_cast<float>(scale * request.pixelRatio);
  view.edgePixels = edgePixels;
  return view;
}

bool Renderer::drawShadow(const FrameRequest& request, const FrameView& view, bool inTurn) {
  const Casters now{request.pose, meshes_.revision()};
  bool drew = false;
  if (inTurn) ++shadowTurn_;
  for (const auto map : {ShadowPass::Map::OnBones, ShadowPass::Map::OnGround}) {
    auto& done = shadowed_[static_cast<std::size_t>(map)];
    const bool waits = inTurn && done && shadowTurn_ % kShadowTurns != 2 * static_cast<int>(map);
    if (done == now || waits) continue;
    shadow_.draw(map, *request.scene, view.light_W, meshes_);
    done = now;
    drew = true;
  }
  return drew;
}

void Renderer::prepare(std::unique_ptr<Framebuffer>& buffer, QSize size, int samples) {
  if (buffer && buffer->size() == size && buffer->samples() == samples) return;
  buffer = std::make_unique<Framebuffer>(gl_, size, samples, std::vector<GLenum>{GL_RGBA8, GL_RGBA8},
                                         Framebuffer::Depth::Plain);
}

void Renderer::beginScene(Framebuffer& buffer, const FrameRequest& request, const FrameView& view) {
  buffer.bind();
  gl_.glDepthMask(GL_TRUE);
  gl_.glClearColor(0, 0, 0, 0);
  gl_.glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT);
  ground_.draw(*request.scene, view, shadow_, request.theme);
  groundMarks_.draw(request.scene->groundMarks, view);
}

void Renderer::drawMoving(const FrameRequest& request) {
  const auto start = Clock::now();
  shownScale_ = pace_.scale();
  const FrameView view = viewOf(request, shownScale_, kMovingEdge);
  const QSize size = (QSizeF(request.pixels) * shownScale_).toSize().expandedTo({16, 16});
  drawShadow(request, view, true);
  prepare(coarse_, size, 0);
  beginScene(*coarse_, request, view);
  bones_.draw(*request.scene, view, meshes_, shadow_, request.theme);
  gl_.glFinish();
  lastFrame_ = since(start);
  pace_.took(lastFrame_);
  shownFine_ = false;
  shownComplete_ = meshes_.complete();
}

bool Renderer::refineSlice(const FrameRequest& request, std::size_t triangles) {
  const FrameView view = viewOf(request, 1, kFineEdge);
  if (!refinement_ || refinement_->key != keyOf(request)) {
    refinement_ = Refinement{keyOf(request)};
    if (drawShadow(request, view, false) && software_) return true;
  }
  if (!refinement_->begun) {
    refinement_->begun = true;
    prepare(multisampled_, request.pixels, samples_);
    beginScene(*multisampled_, request, view);
    if (software_) return true;
  }
  multisampled_->bind();
  refinement_->nextBone =
      bones_.draw(*request.scene, view, meshes_, shadow_, request.theme, refinement_->nextBone, triangles);
  if (refinement_->nextBone < request.scene->bones.size()) return true;
  prepare(fine_, request.pixels, 0);
  multisampled_->resolveInto(*fine_);
  shown_ = refinement_->key;
  refinement_.reset();
  shownFine_ = shownComplete_ = true;
  shownScale_ = 1;
  return false;
}

bool Renderer::unfinished(const FrameRequest& request) const {
  return meshes_.waiting() || !shownFine_ || shown_ != keyOf(request);
}

bool Renderer::showsAll() const { return shown_ && shown_->arrivals == meshes_.arrivals() && shownComplete_; }

bool Renderer::refine(const FrameRequest& request, std::chrono::milliseconds budget) {
  const auto end = Clock::now() + budget;
  meshes_.upload(kUploadBudget);
  if (meshes_.waiting()) return false;
  while (Clock::now() < end) {
    const bool more = refineSlice(request, 20000);
    gl_.glFinish();
    if (!more) return true;
  }
  return false;
}

void Renderer::finish(const FrameRequest& request) {
  // The first round asks for the levels it needs; the second has them.
  for (int round = 0; round < 2; ++round) {
    while (meshes_.waiting()) meshes_.upload(std::chrono::milliseconds(1000));
    refinement_.reset();
    while (refineSlice(request, ~std::size_t{0})) {
    }
  }
}

void Renderer::paint(const FrameRequest& request, GLuint target) {
  Key now = keyOf(request);
  // Finer levels carried over since matter to a coarse picture at once; a fine one waits for its refinement.
  if (shownFine_ && software_ && shown_) now.meshes = shown_->meshes;
  // A graphics processor draws anew at once, and asks for finer levels while it draws: those are waiting by now.
  if (shown_ != now || !shown_ || (!software_ && meshes_.waiting())) {
    meshes_.upload(kUploadBudget);
    if (software_)
      drawMoving(request);
    else
      refineSlice(request, ~std::size_t{0});
    shown_ = keyOf(request);
  }
  Framebuffer& shown = shownFine_ ? *fine_ : *coarse_;
  const FrameView view = viewOf(request, shownScale_, shownFine_ ? kFineEdge : kMovingEdge);
  edges_.drawMask(*request.scene, view, meshes_, shown.size());
  if (shownScale_ == 1) return edges_.draw(shown, *request.scene, view, meshes_, request.theme, target, request.pixels);
  if (!finished_ || finished_->size() != shown.size())
    finished_ =
        std::make_unique<Framebuffer>(gl_, shown.size(), 0, std::vector<GLenum>{GL_RGBA8}, Framebuffer::Depth::None);
  edges_.draw(shown, *request.scene, view, meshes_, request.theme, finished_->id(), shown.size());
  finished_->copyTo(target, request.pixels);
  gl_.glBindFramebuffer(GL_FRAMEBUFFER, target);
  gl_.glViewport(0, 0, request.pixels.width(), request.pixels.height());
}

}  // namespace zyga::ui
