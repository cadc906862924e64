#pragma once

#include "ui/theme/theme.h"
#include "ui/viewport/frame_view.h"
#include "ui/viewport/mesh_store.h"
#include "ui/viewport/scene.h"
#include "ui/viewport/shadow_pass.h"

namespace zyga::ui {

/// Draws the lit bones into colour, shape and depth of the target that is bound.
class BonePass {
 public:
  explicit BonePass(Gl& gl);
  /// Draws the bones from number `first` on and returns the number of the next one: all of them, or as many as make
  /// up `triangles`.
  std::size_t draw(const Scene& scene, const FrameView& view, MeshStore& meshes, const ShadowPass& shadow,
                   const Theme& theme, std::size_t first = 0, std::size_t triangles = ~std::size_t{0});

 private:
  void setFrame(const FrameView& view, const ShadowPass& shadow, const Theme& theme);
  void setBone(const SceneBone& bone);

  Gl& gl_;
  Program program_;
};

}  // namespace zyga::ui
