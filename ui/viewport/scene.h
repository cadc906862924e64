#pragma once

#include <Eigen/Geometry>
#include <QColor>
#include <array>
#include <optional>
#include <vector>

#include "core/anatomy/specimen.h"

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

}  // namespace zyga::ui
