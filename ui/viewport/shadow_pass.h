#pragma once

#include "ui/viewport/gl.h"
#include "ui/viewport/mesh_store.h"
#include "ui/viewport/scene.h"

namespace zyga::ui {

/// The key light's shadow: a depth map for the bones on each other, and a soft map on the ground with the cast shadow
/// in red and the contact in green. Drawn again only when bones move.
class ShadowPass {
 public:
  /// `fine`: the size of the maps on a machine with a graphics processor.
  ShadowPass(Gl& gl, bool fine);

  enum class Map { OnBones, OnGround };
  void draw(Map map, const Scene& scene, const Eigen::Vector3f& light_W, MeshStore& meshes);
  const Eigen::Matrix4f& lightOfWorld() const { return lightOfWorld_; }
  GLuint lightDepth() const { return lightDepth_.depth(); }
  GLuint ground() const { return ground_.colour(0); }
  /// Centre and half size of the ground map, m.
  const Eigen::Vector4f& region() const { return region_; }

 private:
  void drawDepth(const Scene& scene, const Eigen::Vector3f& light_W, MeshStore& meshes);
  void drawGround(const Scene& scene, const Eigen::Vector3f& light_W, MeshStore& meshes);
  void blur();
  void drawBones(const Scene& scene, MeshStore& meshes, Program& program);

  Gl& gl_;
  Program depthProgram_, groundProgram_, blurProgram_;
  ScreenTriangle screen_;
  Framebuffer lightDepth_, ground_, halfBlurred_;
  Eigen::Matrix4f lightOfWorld_ = Eigen::Matrix4f::Identity();
  Eigen::Vector4f region_{0, 0, 1, 1};
};

}  // namespace zyga::ui
