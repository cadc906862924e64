#include "ui/viewport/shadow_pass.h"

#include <algorithm>
#include <array>

namespace zyga::ui {
namespace {

// How far the edge of the shadow is spread, m (half width of the blur).
constexpr float kCastBlur = 0.45f, kContactBlur = 0.12f;
constexpr float kTaps = 4;

QSize mapSize(bool fine) { return fine ? QSize(512, 512) : QSize(256, 256); }

std::array<Eigen::Vector3f, 8> boxCorners(const Eigen::AlignedBox3d& box) {
  std::array<Eigen::Vector3f, 8> out;
  for (std::size_t i = 0; i < 8; ++i)
    out[i] = box.corner(static_cast<Eigen::AlignedBox3d::CornerType>(i)).cast<float>();
  return out;
}

// Clip coordinates that hold the box as the light sees it. The map's x runs along the animal, which is far longer than
// wide, so that the texels are spent on it.
Eigen::Matrix4f lightClip(const Eigen::AlignedBox3d& box, const Eigen::Vector3f& light_W) {
  const Eigen::Vector3f along = (Eigen::Vector3f::UnitX() - light_W.x() * light_W).normalized();
  Eigen::Matrix3f R_LW;
  R_LW << along.transpose(), light_W.cross(along).transpose(), light_W.transpose();
  Eigen::AlignedBox3f seen;
  for (const auto& corner : boxCorners(box)) seen.extend(R_LW * corner);
  const Eigen::Vector3f half = 0.51f * seen.sizes() + Eigen::Vector3f::Constant(0.02f);
  Eigen::Matrix4f clip = Eigen::Matrix4f::Identity();
  clip.topLeftCorner<3, 3>() = Eigen::Vector3f(1 / half.x(), 1 / half.y(), -1 / half.z()).asDiagonal() * R_LW;
  clip.topRightCorner<3, 1>() = -clip.topLeftCorner<3, 3>() * (R_LW.transpose() * seen.center());
  return clip;
}

// Centre and half size of the part of the ground that the box can throw its shadow on, with room for the blur.
Eigen::Vector4f shadowRegion(const Eigen::AlignedBox3d& box, const Eigen::Vector3f& light_W) {
  Eigen::AlignedBox2f ground;
  for (const auto& p : boxCorners(box))
    ground.extend(Eigen::Vector2f(p.head<2>() - light_W.head<2>() * (std::max(p.z(), 0.0f) / light_W.z())));
  Eigen::Vector4f region;
  region << ground.center(), 0.5f * ground.sizes() + Eigen::Vector2f::Constant(2.5f * kCastBlur);
  return region;
}

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

void ShadowPass::draw(Map map, const Scene& scene, const Eigen::Vector3f& light_W, MeshStore& meshes) {
  if (scene.box.isEmpty()) return;
  if (map == Map::OnBones)
    drawDepth(scene, light_W, meshes);
  else
    drawGround(scene, light_W, meshes);
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

void ShadowPass::drawDepth(const Scene& scene, const Eigen::Vector3f& light_W, MeshStore& meshes) {
  lightOfWorld_ = lightClip(scene.box, light_W);
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
  region_ = shadowRegion(scene.box, light_W);
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
  blur();
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
