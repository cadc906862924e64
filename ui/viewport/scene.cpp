#include "ui/viewport/scene.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <numbers>
#include <string_view>

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
    scene.ghost = placedBones(specimen, kinematics::forwardKinematics(specimen, document.articulation(), pose), theme);
  }
  scene.selected = document.selectedBone();
  scene.hovered = document.hoveredBone();
  return scene;
}

namespace {

using anatomy::Bone;
using anatomy::BoneKind;

// Joins the landmarks that the bone has, in this order; "" is the origin.
void join(Sticks& sticks, const Bone& bone, std::initializer_list<std::string_view> names) {
  std::vector<Eigen::Vector3d> points;
  for (const auto name : names) {
    const auto found = bone.landmarks.find(name);
    if (name.empty())
      points.push_back(Eigen::Vector3d::Zero());
    else if (found != bone.landmarks.end())
      points.push_back(found->second);
  }
  for (std::size_t i = 1; i < points.size(); ++i) sticks.emplace_back(points[i - 1], points[i]);
}

}  // namespace

Sticks sticksOf(const Bone& bone) {
  Sticks sticks;
  if (anatomy::isVertebra(bone.name.kind)) {
    join(sticks, bone, {"cranialRim", "caudalRim", "condyleTip"});
    join(sticks, bone, {"canal", "spineTop"});
    join(sticks, bone, {"diapophysis.L", "canal", "diapophysis.R"});
    join(sticks, bone, {"parapophysis.L", "ribTip.L"});
    join(sticks, bone, {"parapophysis.R", "ribTip.R"});
  } else if (bone.name.kind == BoneKind::Skull) {
    join(sticks, bone, {"", "snout", "jawHinge", ""});
  } else if (bone.name.kind == BoneKind::Jaw) {
    join(sticks, bone, {"", "chin"});
  } else if (bone.name.kind == BoneKind::DorsalRib) {
    join(sticks, bone, {"", "tuberculum", "middle", "tip"});
  } else if (bone.name.kind == BoneKind::Chevron) {
    join(sticks, bone, {"", "tip"});
  } else {
    join(sticks, bone, {"proximal", "distal"});
  }
  // Girdle bones and whatever else has only marks of its own: a star from their middle.
  if (sticks.empty() && bone.landmarks.size() > 1) {
    Eigen::Vector3d middle = Eigen::Vector3d::Zero();
    for (const auto& [name, point] : bone.landmarks) middle += point / static_cast<double>(bone.landmarks.size());
    for (const auto& [name, point] : bone.landmarks) sticks.emplace_back(middle, point);
  }
  return sticks;
}

namespace {

using Eigen::Vector2d;

constexpr int kCorners = 28;
constexpr double kRing = 0.06;         // m, radius of a print without a length
constexpr double kHindBreadth = 0.78;  // width over length where no width was typed
constexpr double kForeBreadth = 1.5;

/// Half width of a print at `along`, both as shares of half its length and width; -1 is the heel.
double broadness(double along, bool fore) {
  const double round = std::sqrt(std::max(0.0, 1 - along * along));
  return fore ? round * (1 + 0.25 * along) / 1.05 : round * (1 + 0.22 * along);
}

void addTrackway(std::vector<GroundMark>& marks, const std::vector<study::PlacedPrint>& prints, const Theme& theme) {
  const QColor ink = theme.text;
  for (const bool fore : {false, true}) {
    GroundMark way{.points = {}, .closed = false, .line = withAlpha(ink, 0.35), .width = 1, .fill = {}};
    for (const auto& print : prints)
      if (isFore(print.foot) == fore) way.points.push_back(print.p_W);
    // Of the fore feet the steps would only cross those of the hind feet.
    if (!fore && way.points.size() > 1) marks.push_back(std::move(way));
  }
  for (const auto& print : prints) {
    const bool left = isLeft(print.foot);
    const double strength = print.ownRow ? 1 : 0.5;
    marks.push_back({.points = printOutline(print),
                     .closed = true,
                     .line = withAlpha(ink, 0.8 * strength),
                     .width = 1.6,
                     .fill = left ? withAlpha(ink, 0.28 * strength) : QColor()});
  }
}

void addBalance(std::vector<GroundMark>& marks, const study::Balance& balance, const Theme& theme) {
  if (balance.polygon.size() < 2) return;
  const QColor& colour = theme.verdict(balance.inside() ? range::Level::Supported : range::Level::Beyond);
  marks.push_back({.points = balance.polygon,
                   .closed = balance.polygon.size() > 2,
                   .line = colour,
                   .width = 2.2,
                   .fill = balance.polygon.size() > 2 ? withAlpha(colour, 0.12) : QColor()});
  // The way to the nearest edge: the margin.
  marks.push_back({.points = {balance.body.p_WCentre.head<2>(), balance.p_WNearest},
                   .closed = false,
                   .line = colour,
                   .width = 1.2,
                   .fill = {}});
}

}  // namespace

std::vector<Vector2d> printOutline(const study::PlacedPrint& print) {
  const bool fore = isFore(print.foot);
  const double breadth = fore ? kForeBreadth : kHindBreadth;
  double halfLength = kRing, halfWidth = kRing;
  if (print.length) {
    halfLength = *print.length / 2;
    halfWidth = print.width.value_or(*print.length * breadth) / 2;
  }
  const Vector2d ahead(std::cos(print.heading), std::sin(print.heading)), left(-ahead.y(), ahead.x());
  std::vector<Vector2d> outline;
  for (int i = 0; i < kCorners; ++i) {
    const double angle = 2 * std::numbers::pi * i / kCorners;
    const double along = std::cos(angle);
    const double across =
        std::copysign(print.length ? broadness(along, fore) : std::abs(std::sin(angle)), std::sin(angle));
    outline.push_back(print.p_W + halfLength * along * ahead + halfWidth * across * left);
  }
  return outline;
}

std::vector<GroundMark> groundMarks(const GroundState& ground, const GroundShown& shown, const Theme& theme) {
  std::vector<GroundMark> marks;
  if (shown.trackway) addTrackway(marks, ground.laid().prints, theme);
  if (shown.balance) addBalance(marks, ground.balance(), theme);
  return marks;
}

}  // namespace zyga::ui
