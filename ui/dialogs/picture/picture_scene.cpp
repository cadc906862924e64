#include "ui/dialogs/picture/picture_scene.h"

#include "core/picture/lens_view.h"
#include "ui/theme/theme.h"

namespace zyga::ui {
namespace {

constexpr std::size_t kLightTriangles = 1500;  // of a bone, about, in a preview

std::array<float, 3> srgb(const QColor& colour) {
  return {static_cast<float>(colour.redF()), static_cast<float>(colour.greenF()), static_cast<float>(colour.blueF())};
}

/// The coarsest level that is fine enough for a preview.
const solid::TriangleMesh& lightLevel(const solid::BoneMesh& bone) {
  for (auto level = bone.levels.rbegin(); level != bone.levels.rend(); ++level)
    if (level->triangles.size() >= kLightTriangles) return *level;
  return bone.levels.front();
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

PictureScene pictureScene(const Document& document, const Camera& onScreen) {
  PictureScene scene;
  const files::BoneMeshes& meshes = document.meshes();
  for (std::size_t i = 0; i < meshes.size(); ++i) {
    if (!meshes[i] || meshes[i]->levels.empty()) continue;
    const anatomy::Bone& bone = document.specimen().bones[i];
    // A level lives as long as the bone that owns it.
    const auto add = [&](std::vector<picture::Instance>& to, const solid::TriangleMesh& level) {
      to.push_back({{meshes[i], &level}, document.placement()[i], srgb(theme().bone(bone.evidence))});
    };
    add(scene.instances, meshes[i]->levels.front());
    add(scene.light, lightLevel(*meshes[i]));
    scene.bones.push_back(bone.id);
  }
  scene.corners = picture::cornersOf(scene.instances);
  scene.box = picture::boundsOf(scene.instances);
  scene.onScreen = cameraOnScreen(onScreen);
  scene.screenAspect = onScreen.aspect();
  scene.screenTurn = onScreen.azimuth;
  scene.top = srgb(theme().viewportTop);
  scene.bottom = srgb(theme().viewportGround);
  return scene;
}

Framing framingOf(const PictureScene& scene, const PictureChoice& choice) {
  Framing framing;
  if (choice.throughLens()) {
    framing.aspect = static_cast<double>(choice.width) / picture::heightOf(choice.width, picture::kLensAspect);
    const picture::LensView view = picture::lensView(choice.shot, scene.corners, framing.aspect);
    framing.camera = view.camera;
    framing.distance = view.distance;
  } else if (choice.view) {
    framing.aspect = picture::aspectOf(*choice.view, scene.box.sizes());
    framing.camera = picture::frameParallel(*choice.view, scene.box, framing.aspect);
  } else {
    framing.aspect = scene.screenAspect;
    framing.camera = scene.onScreen;
  }
  framing.horizon = picture::horizonOf(framing.camera);
  framing.cropped = picture::cropped(framing.camera, framing.aspect, scene.corners);
  return framing;
}

bool inPicture(double horizon) { return horizon >= 0 && horizon <= 1; }

picture::PictureOptions pictureOptions(const PictureScene& scene, const PictureChoice& choice, const Framing& framing,
                                       int width) {
  picture::PictureOptions options;
  options.width = width;
  options.height = picture::heightOf(width, framing.aspect);
  options.transparentGround = choice.transparentGround;
  options.groundGrid = choice.groundGrid && !choice.transparentGround;
  options.top = scene.top;
  options.bottom = scene.bottom;
  if (choice.horizon) options.horizon = framing.horizon;
  return options;
}

PictureSet pictureSet(const PictureScene& scene, const PictureChoice& choice) {
  const Framing framing = framingOf(scene, choice);
  PictureSet set;
  set.instances = scene.instances;
  set.bones = scene.bones;
  set.camera = framing.camera;
  set.options = pictureOptions(scene, choice, framing, choice.width);
  set.finished = choice.finished;
  set.passes = choice.passes;
  return set;
}

}  // namespace zyga::ui
