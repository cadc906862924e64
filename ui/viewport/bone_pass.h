#pragma once

#include "ui/theme/theme.h"
#include "ui/viewport/gl.h"
#include "ui/viewport/mesh_store.h"
#include "ui/viewport/scene.h"
#include "ui/viewport/screen_tiles.h"
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

/// Puts the finished picture together: bones and ground, ink along edges of depth and direction, the outlines of the
/// chosen bone, the one under the pointer and the compared pose.
class EdgePass {
 public:
  explicit EdgePass(Gl& gl);

  /// Draws the silhouettes that get outlines, into a target of their own; call before drawing.
  void drawMask(const Scene& scene, const FrameView& view, MeshStore& meshes, QSize size);
  /// Into `target`, over all of it. `picture` has colour, shape and depth.
  void draw(Framebuffer& picture, const Scene& scene, const FrameView& view, const MeshStore& meshes,
            const Theme& theme, GLuint target, QSize size);

 private:
  void setFrame(const Framebuffer& picture, const FrameView& view, const Theme& theme);
  void drawOne(const SceneBone& bone, const FrameView& view, MeshStore& meshes, const Eigen::Vector4f& mask);

  Gl& gl_;
  Program maskProgram_, edgeProgram_;
  ScreenRectangles rectangles_;
  std::unique_ptr<Framebuffer> mask_;
  bool choice_ = false, ghost_ = false;
};

}  // namespace zyga::ui
