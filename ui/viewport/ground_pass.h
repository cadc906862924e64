#pragma once

#include "ui/theme/theme.h"
#include "ui/viewport/gl.h"
#include "ui/viewport/scene.h"
#include "ui/viewport/screen_tiles.h"
#include "ui/viewport/shadow_pass.h"

namespace zyga::ui {

/// Draws background, ground, metre grid and shadow behind everything; writes no depth.
class GroundPass {
 public:
  explicit GroundPass(Gl& gl);
  void draw(const Scene& scene, const FrameView& view, const ShadowPass& shadow, const Theme& theme);

 private:
  Gl& gl_;
  Program program_;
  ScreenTriangle screen_;
};

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
