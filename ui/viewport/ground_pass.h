#pragma once

#include "ui/theme/theme.h"
#include "ui/viewport/frame_view.h"
#include "ui/viewport/scene.h"
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

}  // namespace zyga::ui
