#include "ui/viewport/ground_pass.h"

#include <algorithm>

namespace zyga::ui {

GroundPass::GroundPass(Gl& gl) : gl_(gl), program_(gl, "screen.vert", "ground.frag"), screen_(gl) {}

void GroundPass::draw(const Scene& scene, const FrameView& view, const ShadowPass& shadow, const Theme& theme) {
  const Camera& c = view.camera;
  const bool animal = !scene.box.isEmpty();
  const double reach = animal ? 1.1 * scene.box.sizes().head<2>().norm() + 3 : 12;
  const Eigen::Vector2f middle =
      animal ? Eigen::Vector2f(scene.box.center().head<2>().cast<float>()) : Eigen::Vector2f(0, 0);
  program_.use();
  program_.set("target_W", Eigen::Vector3f(c.target.cast<float>()));
  program_.set("right_W", Eigen::Vector3f(c.right().cast<float>()));
  program_.set("up_W", Eigen::Vector3f(c.up().cast<float>()));
  program_.set("back_W", Eigen::Vector3f(c.back().cast<float>()));
  program_.set("half_",
               Eigen::Vector2f(Eigen::Vector2d(0.5 * c.viewHeight * c.aspect(), 0.5 * c.viewHeight).cast<float>()));
  program_.set("distance_", static_cast<float>(c.eyeDistance()));
  program_.set("perspective", c.perspective ? 1.0f : 0.0f);
  program_.set("metresPerPixel", static_cast<float>(c.metresPerPixel() / view.pixelScale));
  program_.set("top", screenColour(theme.viewportTop));
  program_.set("bottom", screenColour(theme.viewportGround));
  program_.set("line",
               screenColour(mixed(theme.viewportGround, theme.muted, theme.scheme == Scheme::Dark ? 0.38 : 0.42)));
  program_.set("middle", Eigen::Vector4f(middle.x(), middle.y(), static_cast<float>(reach), 0));
  program_.set("region", shadow.region());
  program_.set("shadowStrength", theme.scheme == Scheme::Dark ? 0.75f : 0.55f);
  program_.set("hasShadow", animal ? 1.0f : 0.0f);
  program_.set("shadow", 0);
  bindTexture(gl_, 0, shadow.ground());
  gl_.glDisable(GL_DEPTH_TEST);
  gl_.glDisable(GL_BLEND);
  screen_.draw();
}

}  // namespace zyga::ui
