#include "ui/sheets/sheet_view.h"

#include <algorithm>
#include <cmath>

#include "core/anatomy/bone_parts.h"

namespace zyga::ui {

using anatomy::BoneKind;

namespace {

bool drawable(const SheetScene& scene, std::size_t bone) {
  return bone < scene.meshes.size() && scene.meshes[bone] && !scene.meshes[bone]->levels.empty();
}

bool ofTheNeck(const anatomy::BoneName& name) {
  switch (name.kind) {
    case BoneKind::Skull:
    case BoneKind::Jaw:
    case BoneKind::Cervical:
    case BoneKind::CervicalRib:
      return true;
    case BoneKind::Dorsal:
      return name.number <= 2;
    default:
      return false;
  }
}

}  // namespace

std::vector<std::size_t> allBones(const SheetScene& scene) {
  std::vector<std::size_t> bones;
  for (std::size_t i = 0; i < scene.scenario.specimen().bones.size(); ++i)
    if (drawable(scene, i)) bones.push_back(i);
  return bones;
}

std::vector<std::size_t> neckBones(const SheetScene& scene) {
  std::vector<std::size_t> bones;
  for (const std::size_t i : allBones(scene))
    if (ofTheNeck(scene.scenario.specimen().bones[i].name)) bones.push_back(i);
  return bones;
}

std::vector<std::size_t> plateBones(const SheetScene& scene, const std::string& list) {
  const std::vector<bool> listed = anatomy::bonesInList(scene.scenario.specimen(), list).listed;
  std::vector<std::size_t> bones;
  for (const std::size_t i : allBones(scene))
    if (listed[i]) bones.push_back(i);
  return bones;
}

SheetView viewOf(const SheetScene& scene, picture::StandardView side, const std::vector<std::size_t>& bones,
                 const Eigen::Isometry3d& X_PW) {
  SheetView view;
  view.side = side;
  view.X_PW = X_PW;
  view.R_WView = picture::frame(side, {}, 1).X_WCamera.linear();
  view.bones = bones;
  const kinematics::Placement& X_WB = scene.scenario.placement();
  for (const std::size_t bone : bones)
    for (const Eigen::Vector3f& p : scene.meshes[bone]->levels.front().positions)
      view.box.extend(view.onPlane(X_WB[bone] * p.cast<double>()));
  return view;
}

double roundScale(double least) {
  constexpr double kSteps[] = {1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 7.5, 8, 10};
  if (!(least > 1)) return 1;
  const double power = std::pow(10, std::floor(std::log10(least)));
  for (const double step : kSteps)
    if (step * power >= least * (1 - 1e-9)) return step * power;
  return 10 * power;
}

QString scaleWords(double scale) { return "1:" + QString::number(scale, 'g', 6); }

SheetStyle::SheetStyle(files::SheetPaper paper) {
  // Sizes of type of drawing-office lettering, ISO 3098: 2.5, 3.5, 5, 7 mm; smaller paper is held nearer to the eye.
  double grow = 1;
  if (paper == files::SheetPaper::A4) grow = 0.85;
  if (paper == files::SheetPaper::A2) grow = 1.25;
  if (paper == files::SheetPaper::A1) grow = 1.6;
  text = 2.6 * grow;
  title = 5.2 * grow;
  margin = 12 * grow;
  hairline = 0.12 * grow;
  line = 0.2 * grow;
  edge = 0.30 * grow;
  fold = 0.15 * grow;
}

}  // namespace zyga::ui
