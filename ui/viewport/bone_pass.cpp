#include "ui/viewport/bone_pass.h"

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

}  // namespace zyga::ui
