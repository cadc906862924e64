#include "ui/viewport/bone_pass.h"

#include "ui/viewport/screen_tiles.h"

namespace zyga::ui {

namespace {

// Neighbours in the list must differ so that an edge is drawn between them; 0 is the background.
float codeOf(anatomy::BoneIndex bone) { return static_cast<float>(1 + (bone.value * 37) % 254) / 255.0f; }

}  // namespace

BonePass::BonePass(Gl& gl) : gl_(gl), program_(gl, "bone.vert", "bone.frag") {}

void BonePass::setFrame(const FrameView& view, const ShadowPass& shadow, const Theme& theme) {
  const bool dark = theme.scheme == Scheme::Dark;
  program_.use();
  program_.set("clipOfWorld", view.clipOfWorld);
  program_.set("lightOfWorld", shadow.lightOfWorld());
  program_.set("eye_W", Eigen::Vector3f(view.camera.eye().cast<float>()));
  program_.set("back_W", Eigen::Vector3f(view.camera.back().cast<float>()));
  program_.set("perspective", view.camera.perspective ? 1.0f : 0.0f);
  program_.set("lightDirection_W", view.light_W);
  program_.set("sky",
               Eigen::Vector3f(dark ? Eigen::Vector3f(0.80f, 0.88f, 1.0f) : Eigen::Vector3f(0.92f, 0.97f, 1.0f)));
  program_.set("bounce", Eigen::Vector3f(0.6f * linearColour(theme.viewportGround) + Eigen::Vector3f::Constant(0.08f)));
  program_.set("groundColour", linearColour(theme.viewportGround));
  program_.set("pixelScale", view.pixelScale);
  program_.set("lightDepth", 0);
  bindTexture(gl_, 0, shadow.lightDepth());
}

void BonePass::setBone(const SceneBone& bone) {
  program_.set("X_WB", bone.X_WB);
  program_.set("bone", linearColour(bone.colour));
  program_.set("pattern", static_cast<int>(bone.pattern));
  program_.set("boneCode", codeOf(bone.bone));
  program_.set("markCount", bone.markCount);
  std::array<Eigen::Vector4f, 3> place, colour;
  std::array<float, 3> hatched{};
  for (std::size_t i = 0; i < static_cast<std::size_t>(bone.markCount); ++i) {
    const BoneMark& mark = bone.marks[i];
    place[i] << mark.p_BCentre, mark.radius;
    colour[i] << linearColour(mark.colour), mark.strength;
    hatched[i] = mark.hatched ? 1.0f : 0.0f;
  }
  program_.set("markPlace", place.data(), bone.markCount);
  program_.set("markColour", colour.data(), bone.markCount);
  program_.set("markHatched", hatched.data(), bone.markCount);
}

std::size_t BonePass::draw(const Scene& scene, const FrameView& view, MeshStore& meshes, const ShadowPass& shadow,
                           const Theme& theme, std::size_t first, std::size_t triangles) {
  setFrame(view, shadow, theme);
  gl_.glEnable(GL_DEPTH_TEST);
  gl_.glDepthMask(GL_TRUE);
  gl_.glEnable(GL_CULL_FACE);
  gl_.glDisable(GL_BLEND);
  std::size_t drawn = 0, i = first;
  for (; i < scene.bones.size() && drawn < triangles; ++i) {
    const SceneBone& bone = scene.bones[i];
    if (!meshes.has(bone.bone)) continue;
    const auto& sphere = meshes.sphere(bone.bone);
    const Eigen::Vector3d centre = (bone.X_WB * sphere.p_BCentre.homogeneous()).head<3>().cast<double>();
    if (!view.sees(centre, sphere.radius)) continue;
    GlMesh* mesh = meshes.level(bone.bone, view.edgeAt(centre, sphere.radius));
    if (mesh == nullptr) continue;
    setBone(bone);
    mesh->draw();
    drawn += static_cast<std::size_t>(mesh->triangles());
  }
  gl_.glBindVertexArray(0);
  gl_.glDisable(GL_CULL_FACE);
  gl_.glDisable(GL_DEPTH_TEST);
  return i;
}

namespace {

// Where a bone may show, pixels of the window; all of it for a bone that reaches behind the eye.
void addBone(ScreenTiles& tiles, const SceneBone& bone, const Eigen::AlignedBox3f& box, const Camera& camera,
             double pixelRatio) {
  Eigen::AlignedBox2d seen;
  for (int i = 0; i < 8; ++i) {
    const Eigen::Vector3f p_B = box.corner(static_cast<Eigen::AlignedBox3f::CornerType>(i));
    const auto at = camera.project((bone.X_WB * p_B.homogeneous()).head<3>().cast<double>());
    if (!at) return tiles.addAll();
    seen.extend(pixelRatio * *at);
  }
  tiles.add(seen);
}

ScreenTiles tilesOf(const Scene& scene, const FrameView& view, const MeshStore& meshes, QSize size) {
  ScreenTiles tiles(size);
  const double pixelRatio = size.height() / view.camera.size.y();
  for (const auto* bones : {&scene.bones, &scene.ghost})
    for (const SceneBone& bone : *bones) {
      if (!meshes.has(bone.bone)) continue;
      const auto& sphere = meshes.sphere(bone.bone);
      const Eigen::Vector3d centre = (bone.X_WB * sphere.p_BCentre.homogeneous()).head<3>().cast<double>();
      if (view.sees(centre, sphere.radius)) addBone(tiles, bone, sphere.box, view.camera, pixelRatio);
    }
  return tiles;
}

}  // namespace

EdgePass::EdgePass(Gl& gl)
    : gl_(gl),
      maskProgram_(gl, "mask.vert", "mask.frag"),
      edgeProgram_(gl, "tiles.vert", "edge.frag"),
      rectangles_(gl) {}

void EdgePass::drawOne(const SceneBone& bone, const FrameView& view, MeshStore& meshes, const Eigen::Vector4f& mask) {
  if (!meshes.has(bone.bone)) return;
  const auto& sphere = meshes.sphere(bone.bone);
  const Eigen::Vector3d centre = (bone.X_WB * sphere.p_BCentre.homogeneous()).head<3>().cast<double>();
  if (!view.sees(centre, sphere.radius)) return;
  GlMesh* mesh = meshes.level(bone.bone, view.edgeAt(centre, sphere.radius));
  if (mesh == nullptr) return;
  maskProgram_.set("X_WB", bone.X_WB);
  maskProgram_.set("mask", mask);
  mesh->draw();
}

void EdgePass::drawMask(const Scene& scene, const FrameView& view, MeshStore& meshes, QSize size) {
  ghost_ = !scene.ghost.empty();
  choice_ = scene.selected.has_value() || scene.hovered.has_value();
  if (!mask_ || mask_->size() != size)
    mask_ = std::make_unique<Framebuffer>(gl_, size, 0, std::vector<GLenum>{GL_RGBA8}, Framebuffer::Depth::None);
  if (!ghost_ && !choice_) return;
  mask_->bind();
  gl_.glClearColor(0, 0, 0, 0);
  gl_.glClear(GL_COLOR_BUFFER_BIT);
  // Silhouettes add up in their own channels; depth does not matter, so that a hidden choice still shows its outline.
  gl_.glEnable(GL_BLEND);
  gl_.glBlendEquation(GL_MAX);
  maskProgram_.use();
  maskProgram_.set("clipOfWorld", view.clipOfWorld);
  for (const SceneBone& bone : scene.ghost) drawOne(bone, view, meshes, {0, 0, 1, 0});
  for (const SceneBone& bone : scene.bones) {
    const Eigen::Vector4f mask(bone.bone == scene.selected ? 1.0f : 0.0f, bone.bone == scene.hovered ? 1.0f : 0.0f, 0,
                               0);
    if (mask.x() + mask.y() > 0) drawOne(bone, view, meshes, mask);
  }
  gl_.glBindVertexArray(0);
  gl_.glBlendEquation(GL_FUNC_ADD);
  gl_.glDisable(GL_BLEND);
}

void EdgePass::setFrame(const Framebuffer& picture, const FrameView& view, const Theme& theme) {
  const bool dark = theme.scheme == Scheme::Dark;
  const Camera& c = view.camera;
  const double perTargetPixel = c.metresPerPixel() / view.pixelScale;
  edgeProgram_.use();
  edgeProgram_.set("scene", 0);
  edgeProgram_.set("shape", 1);
  edgeProgram_.set("depth", 2);
  edgeProgram_.set("mask", 3);
  bindTexture(gl_, 3, mask_->colour(0));
  bindTexture(gl_, 2, picture.depth());
  bindTexture(gl_, 1, picture.colour(1));
  bindTexture(gl_, 0, picture.colour(0));
  edgeProgram_.set("clipRange",
                   Eigen::Vector2f(static_cast<float>(view.range.nearest), static_cast<float>(view.range.farthest)));
  edgeProgram_.set("perspective", c.perspective ? 1.0f : 0.0f);
  edgeProgram_.set("metresPerPixel", static_cast<float>(perTargetPixel));
  edgeProgram_.set("lensFactor", static_cast<float>(perTargetPixel / c.eyeDistance()));
  edgeProgram_.set("ink",
                   screenColour(dark ? theme.viewportGround.darker(180) : mixed(theme.text, theme.boneFound, 0.12)));
  edgeProgram_.set("inkStrength", dark ? 0.78f : 0.72f);
  // Dark ink on a dark ground would only eat away the thin bones.
  edgeProgram_.set("rimStrength", dark ? 0.2f : 1.0f);
  edgeProgram_.set("choice", screenColour(theme.choice));
  edgeProgram_.set("ghost", screenColour(theme.muted));
  edgeProgram_.set("hasMask", Eigen::Vector2f(choice_ ? 1.0f : 0.0f, ghost_ ? 1.0f : 0.0f));
  edgeProgram_.set("pixelScale", view.pixelScale);
}

void EdgePass::draw(Framebuffer& picture, const Scene& scene, const FrameView& view, const MeshStore& meshes,
                    const Theme& theme, GLuint target, QSize size) {
  // Beside the bones the picture is finished as it is.
  picture.copyTo(target, size);
  gl_.glBindFramebuffer(GL_FRAMEBUFFER, target);
  gl_.glViewport(0, 0, size.width(), size.height());
  gl_.glColorMask(GL_FALSE, GL_FALSE, GL_FALSE, GL_TRUE);
  gl_.glClearColor(0, 0, 0, 1);
  gl_.glClear(GL_COLOR_BUFFER_BIT);
  gl_.glColorMask(GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
  gl_.glDisable(GL_DEPTH_TEST);
  gl_.glDisable(GL_BLEND);
  setFrame(picture, view, theme);
  rectangles_.draw(tilesOf(scene, view, meshes, size).rectangles());
}

}  // namespace zyga::ui
