#include "ui/viewport/ground_mark_pass.h"

#include <cstddef>

namespace zyga::ui {
namespace {

using Eigen::Vector2d;

struct Vertex {
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
  const std::vector<Vertex>& vertices() const { return vertices_; }

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
  std::vector<Vertex> vertices_;
};

}  // namespace

GroundMarkPass::GroundMarkPass(Gl& gl) : gl_(gl), program_(gl, "ground_mark.vert", "ground_mark.frag") {
  gl_.glGenVertexArrays(1, &array_);
  gl_.glBindVertexArray(array_);
  gl_.glGenBuffers(1, &vertices_);
  gl_.glBindBuffer(GL_ARRAY_BUFFER, vertices_);
  gl_.glEnableVertexAttribArray(0);
  gl_.glVertexAttribPointer(0, 2, GL_FLOAT, GL_FALSE, sizeof(Vertex), nullptr);
  gl_.glEnableVertexAttribArray(1);
  gl_.glVertexAttribPointer(1, 4, GL_FLOAT, GL_FALSE, sizeof(Vertex),
                            reinterpret_cast<const void*>(offsetof(Vertex, colour)));
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
  gl_.glBufferData(GL_ARRAY_BUFFER, static_cast<GLsizeiptr>(data.size() * sizeof(Vertex)), data.data(), GL_STREAM_DRAW);
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
