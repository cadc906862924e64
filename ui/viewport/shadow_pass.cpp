#include "ui/viewport/shadow_pass.h"

#include <algorithm>

namespace zyga::ui {
namespace {

// How far the edge of the shadow is spread, m (half width of the blur).
constexpr float kCastBlur = 0.45f, kContactBlur = 0.12f;
constexpr float kTaps = 4;

QSize mapSize(bool fine) { return fine ? QSize(512, 512) : QSize(256, 256); }

}  // namespace

ShadowPass::ShadowPass(Gl& gl, bool fine)
    : gl_(gl),
      depthProgram_(gl, "depth.vert", "depth.frag"),
      groundProgram_(gl, "ground_shadow.vert", "ground_shadow.frag"),
      blurProgram_(gl, "screen.vert", "blur.frag"),
      screen_(gl),
      lightDepth_(gl, fine ? QSize(2048, 2048) : QSize(1024, 1024), 0, {}, Framebuffer::Depth::Compared),
      ground_(gl, mapSize(fine), 0, {GL_RGBA8}, Framebuffer::Depth::None),
      halfBlurred_(gl, mapSize(fine), 0, {GL_RGBA8}, Framebuffer::Depth::None) {}

void ShadowPass::draw(const Scene& scene, const Eigen::Vector3f& light_W, MeshStore& meshes) {
  if (scene.box.isEmpty()) return;
  place(scene, light_W);
  drawDepth(scene, meshes);
  drawGround(scene, light_W, meshes);
  blur();
}

void ShadowPass::place(const Scene& scene, const Eigen::Vector3f& light_W) {
  // The map's x runs along the animal, which is far longer than wide, so that the texels are spent on it.
  const Eigen::Vector3f along = (Eigen::Vector3f::UnitX() - light_W.x() * light_W).normalized();
  Eigen::Matrix3f R_LW;
  R_LW << along.transpose(), light_W.cross(along).transpose(), light_W.transpose();
  Eigen::AlignedBox3f seen;
  Eigen::AlignedBox2f ground;
  for (int i = 0; i < 8; ++i) {
    const Eigen::Vector3f p = scene.box.corner(static_cast<Eigen::AlignedBox3d::CornerType>(i)).cast<float>();
    seen.extend(R_LW * p);
    ground.extend(Eigen::Vector2f(p.head<2>() - light_W.head<2>() * (std::max(p.z(), 0.0f) / light_W.z())));
  }
  const Eigen::Vector3f half = 0.51f * seen.sizes() + Eigen::Vector3f::Constant(0.02f);
  lightOfWorld_.setIdentity();
  lightOfWorld_.topLeftCorner<3, 3>() = Eigen::Vector3f(1 / half.x(), 1 / half.y(), -1 / half.z()).asDiagonal() * R_LW;
  lightOfWorld_.topRightCorner<3, 1>() = -lightOfWorld_.topLeftCorner<3, 3>() * (R_LW.transpose() * seen.center());
  const Eigen::Vector2f reach = 0.5f * ground.sizes() + Eigen::Vector2f::Constant(2.5f * kCastBlur);
  region_ << ground.center(), reach;
}

void ShadowPass::drawBones(const Scene& scene, MeshStore& meshes, Program& program) {
  for (const SceneBone& bone : scene.bones) {
    GlMesh* mesh = meshes.coarsest(bone.bone);
    if (mesh == nullptr) continue;
    program.set("X_WB", bone.X_WB);
    mesh->draw();
  }
  gl_.glBindVertexArray(0);
}

void ShadowPass::drawDepth(const Scene& scene, MeshStore& meshes) {
  lightDepth_.bind();
  gl_.glEnable(GL_DEPTH_TEST);
  gl_.glDepthMask(GL_TRUE);
  gl_.glClear(GL_DEPTH_BUFFER_BIT);
  gl_.glEnable(GL_POLYGON_OFFSET_FILL);
  gl_.glPolygonOffset(2.0f, 4.0f);
  depthProgram_.use();
  depthProgram_.set("clipOfWorld", lightOfWorld_);
  drawBones(scene, meshes, depthProgram_);
  gl_.glDisable(GL_POLYGON_OFFSET_FILL);
  gl_.glDisable(GL_DEPTH_TEST);
}

void ShadowPass::drawGround(const Scene& scene, const Eigen::Vector3f& light_W, MeshStore& meshes) {
  ground_.bind();
  gl_.glClearColor(0, 0, 0, 0);
  gl_.glClear(GL_COLOR_BUFFER_BIT);
  gl_.glEnable(GL_BLEND);
  gl_.glBlendEquation(GL_MAX);
  groundProgram_.use();
  groundProgram_.set("lightDirection_W", light_W);
  groundProgram_.set("region", region_);
  drawBones(scene, meshes, groundProgram_);
  gl_.glBlendEquation(GL_FUNC_ADD);
  gl_.glDisable(GL_BLEND);
}

void ShadowPass::blur() {
  blurProgram_.use();
  blurProgram_.set("source", 0);
  const Eigen::Vector2f perMetre = Eigen::Vector2f(0.5f / region_.z(), 0.5f / region_.w());
  const auto sweep = [&](Framebuffer& from, Framebuffer& to, const Eigen::Vector2f& direction) {
    to.bind();
    bindTexture(gl_, 0, from.colour(0));
    const Eigen::Vector2f step = direction.cwiseProduct(perMetre) / kTaps;
    blurProgram_.set("wide", Eigen::Vector2f(kCastBlur * step));
    blurProgram_.set("narrow", Eigen::Vector2f(kContactBlur * step));
    screen_.draw();
  };
  sweep(ground_, halfBlurred_, Eigen::Vector2f::UnitX());
  sweep(halfBlurred_, ground_, Eigen::Vector2f::UnitY());
}

}  // namespace zyga::ui
