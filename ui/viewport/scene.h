#pragma once

#include <Eigen/Geometry>
#include <QColor>
#include <array>
#include <optional>
#include <utility>
#include <vector>

#include "core/anatomy/specimen.h"
#include "ui/document/document.h"
#include "ui/ground/ground_state.h"
#include "ui/theme/theme.h"

namespace zyga::ui {

/// A coloured place on a bone that tells the verdict of a joint.
struct BoneMark {
  Eigen::Vector3f p_BCentre = Eigen::Vector3f::Zero();
  float radius = 0;  ///< m; the colour fades out towards it
  QColor colour;
  float strength = 1;
  bool hatched = false;  ///< the second code beside colour
};

/// The second code beside a bone's tone: how it is known.
enum class BonePattern { None, Mirrored, Scaled, Deformed };

struct SceneBone {
  anatomy::BoneIndex bone;
  Eigen::Matrix4f X_WB = Eigen::Matrix4f::Identity();
  QColor colour;
  BonePattern pattern = BonePattern::None;
  std::array<BoneMark, 3> marks;
  int markCount = 0;

  void addMark(const BoneMark& mark) {
    if (markCount < static_cast<int>(marks.size())) marks[static_cast<std::size_t>(markCount++)] = mark;
  }
};

/// A line or a patch on the ground z = 0, drawn under the bones.
struct GroundMark {
  std::vector<Eigen::Vector2d> points;  ///< m, world; a patch is convex, counter-clockwise
  bool closed = true;
  QColor line;         ///< none when invalid
  double width = 1.5;  ///< pixels
  QColor fill;         ///< none when invalid
};

/// What is to be drawn, apart from where it is looked at from.
struct Scene {
  std::vector<SceneBone> bones;
  std::vector<SceneBone> ghost;  ///< the compared pose
  std::vector<GroundMark> groundMarks;
  std::optional<anatomy::BoneIndex> selected, hovered;
  Eigen::AlignedBox3d box;  ///< of the bones, world, m
};

/// The bones' extents in their own frames, from their meshes or, before those have come, from their landmarks.
std::vector<Eigen::AlignedBox3d> boneBoxes(const anatomy::Specimen& specimen, const files::BoneMeshes& meshes);

/// What there is to see of the document now: tones by evidence, verdicts on the bones of each joint, the compared pose.
/// `boxes` as boneBoxes gives them.
Scene buildScene(const Document& document, const std::vector<Eigen::AlignedBox3d>& boxes, const Theme& theme);

/// World box of one bone, m.
Eigen::AlignedBox3d worldBox(const Eigen::AlignedBox3d& box, const Eigen::Isometry3d& X_WB);

/// A bone as a few lines between its landmarks, in its own frame, m: what is shown, and picked, until it has a mesh.
using Sticks = std::vector<std::pair<Eigen::Vector3d, Eigen::Vector3d>>;

Sticks sticksOf(const anatomy::Bone& bone);

/// Outline of a footprint on the ground, m, counter-clockwise: egg-shaped, broad in front, fore prints wider than long.
/// A width that was not typed is drawn in proportion (practice), a print without a length as a
/// small ring.
std::vector<Eigen::Vector2d> printOutline(const study::PlacedPrint& print);

/// Footprints, left ones filled and right ones hollow, the steps between them, and the polygon that carries the animal.
std::vector<GroundMark> groundMarks(const GroundState& ground, const GroundShown& shown, const Theme& theme);

}  // namespace zyga::ui
