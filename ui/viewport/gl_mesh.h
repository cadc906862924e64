#pragma once

#include "core/solid/mesh/triangle_mesh.h"
#include "ui/viewport/gl.h"

namespace zyga::ui {

/// One triangle mesh in the graphics memory. The context must be current, in the destructor too.
class GlMesh {
 public:
  GlMesh(Gl& gl, const solid::TriangleMesh& mesh);
  ~GlMesh();
  GlMesh(const GlMesh&) = delete;
  GlMesh& operator=(const GlMesh&) = delete;

  void draw();
  GLsizei triangles() const { return indices_ / 3; }

 private:
  Gl& gl_;
  GLuint array_ = 0, vertices_ = 0, elements_ = 0;
  GLsizei indices_ = 0;
};

}  // namespace zyga::ui
