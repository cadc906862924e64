#include "ui/viewport/ground_pass.h"

#include <algorithm>
#include <cstddef>

namespace zyga::ui {

GroundPass::GroundPass(Gl& gl) : gl_(gl), program_(gl, "screen.vert", "ground.frag"), screen_(gl) {}

void GroundPass::draw(const Scene& scene, const FrameView& view, const ShadowPass& shadow, const Theme& theme) {
  const Camera& c = view.camera;
  const bool animal = !scene.box.isEmpty();
  const double reach = animal ? 1.1 * scene.box.sizes().head<2>().norm() + 3 : 12;
  const Eigen::Vector2f middle =
      animal ? Eigen::Vector2f(scene.box.center().head<2>().cast<float>()) : Eigen::Vector2f(0, 0);
  program_.use();
  program_.set("target_W", Eigen::Vector3f(c.target.cast<float>()));
  program_.set("right_W", Eigen::Vector3f(c.right().cast<float>()));
  program_.set("up_W", Eigen::Vector3f(c.up().cast<float>()));
  program_.set("back_W", Eigen::Vector3f(c.back().cast<float>()));
  program_.set("half_",
               Eigen::Vector2f(Eigen::Vector2d(0.5 * c.viewHeight * c.aspect(), 0.5 * c.viewHeight).cast<float>()));
  program_.set("distance_", static_cast<float>(c.eyeDistance()));
  program_.set("perspective", c.perspective ? 1.0f : 0.0f);
  program_.set("metresPerPixel", static_cast<float>(c.metresPerPixel() / view.pixelScale));
  program_.set("top", screenColour(theme.viewportTop));
  program_.set("bottom", screenColour(theme.viewportGround));
  program_.set("line",
               screenColour(mixed(theme.viewportGround, theme.muted, theme.scheme == Scheme::Dark ? 0.38 : 0.42)));
  program_.set("middle", Eigen::Vector4f(middle.x(), middle.y(), static_cast<float>(reach), 0));
  program_.set("region", shadow.region());
  program_.set("shadowStrength", theme.scheme == Scheme::Dark ? 0.75f : 0.55f);
  program_.set("hasShadow", animal ? 1.0f : 0.0f);
  program_.set("shadow", 0);
  bindTexture(gl_, 0, shadow.ground());
  gl_.glDisable(GL_DEPTH_TEST);
  gl_.glDisable(GL_BLEND);
  screen_.draw();
}

namespace {

using Eigen::Vector2d;

struct MarkVertex {
  float place[2];
  float colour[4];
};

class Triangles {
 public:
  explicit Triangles(const FrameView& view) : view_(view) {}

  void add(const GroundMark& mark) {
    if (mark.fill.isValid()) {
      for (std::size_t i = 2; i < mark.points.size(); ++i)
        add(mark.points[0], mark.points[i - 1], mark.points[i], mark.fill);
    }
    if (!mark.line.isValid()) return;
    const std::size_t n = mark.points.size();
    for (std::size_t i = 0; i + (mark.closed ? 0 : 1) < n; ++i) stroke(mark.points[i], mark.points[(i + 1) % n], mark);
  }
  const std::vector<MarkVertex>& vertices() const { return vertices_; }

 private:
  /// Of constant width on screen as far as the ground is not seen aslant; a little longer, so that corners close.
  void stroke(const Vector2d& a, const Vector2d& b, const GroundMark& mark) {
    const Vector2d middle = (a + b) / 2;
    const double pixel = view_.camera.metresPerPixelAt({middle.x(), middle.y(), 0});
    if ((b - a).norm() < 1e-9) return;
    const Vector2d along = (b - a).normalized() * 0.4 * mark.width * pixel;
    const Vector2d across = Vector2d(-along.y(), along.x()) * 1.25;
    const Vector2d from = a - along, to = b + along;
    add(from - across, to - across, to + across, mark.line);
    add(from - across, to + across, from + across, mark.line);
  }
  void add(const Vector2d& a, const Vector2d& b, const Vector2d& c, const QColor& colour) {
    for (const auto& p : {a, b, c}) {
      vertices_.push_back({{static_cast<float>(p.x()), static_cast<float>(p.y())},
                           {static_cast<float>(colour.redF()), static_cast<float>(colour.greenF()),
                            static_cast<float>(colour.blueF()), static_cast<float>(colour.alphaF())}});
    }
  }

  const FrameView& view_;
  std::vector<MarkVertex> vertices_;
};

}  // namespace

GroundMarkPass::GroundMarkPass(Gl& gl) : gl_(gl), program_(gl, "ground_mark.vert", "ground_mark.frag") {
  gl_.glGenVertexArrays(1, &array_);
  gl_.glBindVertexArray(array_);
  gl_.glGenBuffers(1, &vertices_);
  gl_.glBindBuffer(GL_ARRAY_BUFFER, vertices_);
  gl_.glEnableVertexAttribArray(0);
  gl_.glVertexAttribPointer(0, 2, GL_FLOAT, GL_FALSE, sizeof(MarkVertex), nullptr);
  gl_.glEnableVertexAttribArray(1);
  gl_.glVertexAttribPointer(1, 4, GL_FLOAT, GL_FALSE, sizeof(MarkVertex),
                            reinterpret_cast<const void*>(offsetof(MarkVertex, colour)));
  gl_.glBindVertexArray(0);
}

GroundMarkPass::~GroundMarkPass() {
  gl_.glDeleteBuffers(1, &vertices_);
  gl_.glDeleteVertexArrays(1, &array_);
}

void GroundMarkPass::draw(const std::vector<GroundMark>& marks, const FrameView& view) {
  if (marks.empty()) return;
  Triangles triangles(view);
  for (const auto& mark : marks) triangles.add(mark);
  const auto& data = triangles.vertices();
  gl_.glBindVertexArray(array_);
  gl_.glBindBuffer(GL_ARRAY_BUFFER, vertices_);
  gl_.glBufferData(GL_ARRAY_BUFFER, static_cast<GLsizeiptr>(data.size() * sizeof(MarkVertex)), data.data(),
                   GL_STREAM_DRAW);
  program_.use();
  program_.set("clipOfWorld", view.clipOfWorld);
  gl_.glDisable(GL_DEPTH_TEST);
  gl_.glEnable(GL_BLEND);
  gl_.glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
  // Only the colour: what the edges are found from stays that of the ground.
  gl_.glColorMaski(0, GL_TRUE, GL_TRUE, GL_TRUE, GL_FALSE);
  gl_.glColorMaski(1, GL_FALSE, GL_FALSE, GL_FALSE, GL_FALSE);
  gl_.glDrawArrays(GL_TRIANGLES, 0, static_cast<GLsizei>(data.size()));
  gl_.glColorMaski(0, GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
  gl_.glColorMaski(1, GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
  gl_.glDisable(GL_BLEND);
  gl_.glBindVertexArray(0);
}

}  // namespace zyga::ui
