#pragma once

#include "ui/viewport/frame_view.h"
#include "ui/viewport/gl.h"
#include "ui/viewport/scene.h"

namespace zyga::ui {

/// Draws lines and patches that lie on the ground, over the ground and under everything else; writes no depth.
class GroundMarkPass {
 public:
  explicit GroundMarkPass(Gl& gl);
  ~GroundMarkPass();
  GroundMarkPass(const GroundMarkPass&) = delete;
  GroundMarkPass& operator=(const GroundMarkPass&) = delete;

  void draw(const std::vector<GroundMark>& marks, const FrameView& view);

 private:
  Gl& gl_;
  Program program_;
  GLuint array_ = 0, vertices_ = 0;
};

}  // namespace zyga::ui
