#include "ui/viewport/scene_builder.h"

#include <algorithm>

namespace zyga::ui {
namespace {

using anatomy::Evidence;
using range::Level;

BonePattern patternOf(Evidence evidence) {
  if (evidence == Evidence::Mirrored) return BonePattern::Mirrored;
  if (evidence == Evidence::Scaled) return BonePattern::Scaled;
  return evidence == Evidence::FoundDeformed ? BonePattern::Deformed : BonePattern::None;
}

BoneMark markOf(const Theme& theme, Level level, const Eigen::Vector3d& p_BCentre, double radius) {
  BoneMark mark;
  mark.p_BCentre = p_BCentre.cast<float>();
  mark.radius = static_cast<float>(radius);
  mark.colour = theme.verdict(level);
  mark.strength = level == Level::NotJudged ? 0.5f : 0.9f;
  mark.hatched = level != Level::Near;
  return mark;
}

// The distal bone carries the verdict over most of its length; the proximal one only around the joint.
void addMarks(Scene& scene, const Document& document, const std::vector<Eigen::AlignedBox3d>& boxes,
              const Theme& theme) {
  const auto& specimen = document.specimen();
  for (const range::JointVerdict& verdict : document.assessment().joints) {
    if (verdict.level == Level::Supported) continue;
    const anatomy::Joint& joint = specimen[verdict.joint];
    const double distal = boxes[joint.distal.value].sizes().maxCoeff();
    const double proximal = boxes[joint.proximal.value].sizes().maxCoeff();
    scene.bones[joint.distal.value].addMark(markOf(theme, verdict.level, joint.centreDistal, distal));
    scene.bones[joint.proximal.value].addMark(
        markOf(theme, verdict.level, joint.centreProximal, std::min(0.5 * proximal, distal)));
  }
}

std::vector<SceneBone> placedBones(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB,
                                   const Theme& theme) {
  std::vector<SceneBone> bones(specimen.bones.size());
  for (std::size_t b = 0; b < bones.size(); ++b) {
    bones[b].bone = BoneIndex{b};
    bones[b].X_WB = X_WB[b].matrix().cast<float>();
    bones[b].colour = theme.bone(specimen.bones[b].evidence);
    bones[b].pattern = patternOf(specimen.bones[b].evidence);
  }
  return bones;
}

}  // namespace

std::vector<Eigen::AlignedBox3d> boneBoxes(const anatomy::Specimen& specimen, const files::BoneMeshes& meshes) {
  std::vector<Eigen::AlignedBox3d> boxes(specimen.bones.size());
  for (std::size_t b = 0; b < boxes.size(); ++b) {
    if (b < meshes.size() && meshes[b] && !meshes[b]->levels.empty())
      for (const auto& p : meshes[b]->levels.back().positions) boxes[b].extend(p.cast<double>());
    else
      for (const auto& [name, point] : specimen.bones[b].landmarks) boxes[b].extend(point);
    if (boxes[b].isEmpty()) boxes[b].extend(Eigen::Vector3d::Zero());
  }
  return boxes;
}

Eigen::AlignedBox3d worldBox(const Eigen::AlignedBox3d& box, const Eigen::Isometry3d& X_WB) {
  Eigen::AlignedBox3d out;
  for (int i = 0; i < 8; ++i) out.extend(X_WB * box.corner(static_cast<Eigen::AlignedBox3d::CornerType>(i)));
  return out;
}

Scene buildScene(const Document& document, const std::vector<Eigen::AlignedBox3d>& boxes, const Theme& theme) {
  Scene scene;
  const auto& specimen = document.specimen();
  scene.bones = placedBones(specimen, document.placement(), theme);
  for (std::size_t b = 0; b < boxes.size(); ++b) scene.box.extend(worldBox(boxes[b], document.placement()[b]));
  addMarks(scene, document, boxes, theme);
  if (const auto compared = document.comparedPose(); compared && *compared < document.project().poses.size()) {
    const auto& pose = document.project().poses[*compared].pose;
    scene.ghost = placedBones(specimen, kinematics::place(specimen, document.articulation(), pose), theme);
  }
  scene.selected = document.selectedBone();
  scene.hovered = document.hoveredBone();
  return scene;
}

}  // namespace zyga::ui
