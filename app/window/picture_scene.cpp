#include "app/window/picture_scene.h"

#include <cmath>

#include "ui/theme/theme.h"

namespace zyga::ui {
namespace {

constexpr double kStandardAspect = 16.0 / 10;

std::array<float, 3> srgb(const QColor& colour) {
  return {static_cast<float>(colour.redF()), static_cast<float>(colour.greenF()), static_cast<float>(colour.blueF())};
}

std::vector<picture::Instance> instances(const Document& document) {
  std::vector<picture::Instance> all;
  const files::BoneMeshes& meshes = document.meshes();
  for (std::size_t i = 0; i < meshes.size(); ++i) {
    if (!meshes[i] || meshes[i]->levels.empty()) continue;
    const std::shared_ptr<const solid::TriangleMesh> finest(meshes[i], &meshes[i]->levels.front());
    all.push_back({finest, document.placement()[i], srgb(theme().bone(document.specimen().bones[i].evidence))});
  }
  return all;
}

Eigen::AlignedBox3d boxOf(const std::vector<picture::Instance>& instances) {
  Eigen::AlignedBox3d box;
  for (const picture::Instance& instance : instances)
    for (const Eigen::Vector3f& p : instance.mesh->positions) box.extend(instance.X_WB * p.cast<double>());
  return box;
}

picture::Camera cameraOnScreen(const Camera& onScreen) {
  picture::Camera camera;
  camera.X_WCamera = onScreen.X_WCamera();
  camera.perspective = onScreen.perspective;
  camera.viewHeight = onScreen.viewHeight;
  camera.fieldOfView = onScreen.fieldOfView();
  return camera;
}

}  // namespace

PictureScene pictureScene(const Document& document, const Camera& onScreen, const PictureChoice& choice) {
  PictureScene scene;
  scene.instances = instances(document);
  const double aspect = choice.view ? kStandardAspect : onScreen.aspect();
  scene.camera = choice.view ? picture::frame(*choice.view, boxOf(scene.instances), aspect) : cameraOnScreen(onScreen);
  scene.options.width = choice.width;
  scene.options.height = std::max(1, static_cast<int>(std::lround(choice.width / aspect)));
  scene.options.transparentGround = choice.transparentGround;
  scene.options.groundGrid = choice.groundGrid;
  scene.options.top = srgb(theme().viewportTop);
  scene.options.bottom = srgb(theme().viewportGround);
  return scene;
}

}  // namespace zyga::ui
