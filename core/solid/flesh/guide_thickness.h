#pragma once

#include <array>
#include <string_view>

namespace zyga::solid {

/// How far the body guide stands off the bones, by region. Lengths in metres, added all around; the tail is stated as a
/// multiple of the bones' own width and height, as it is published. The values are a choice of whoever makes the guide
/// and say nothing about the animal.
struct GuideThickness {
  double headAndFeet = 0.02;
  double neck = 0.05;
  double neckBase = 0.12;
  double trunk = 0.08;
  double tailBase = 0.10;  ///< fades out over the first third of the tail
  double upperLimbs = 0.12;
  double lowerLimbs = 0.05;
  double tailWidth = 1.35;   ///< of the bones' width
  double tailHeight = 1.20;  ///< of the bones' height
  double muscle = 1;         ///< limbs and what fills them, of the program's usual; 0: none
  bool operator==(const GuideThickness&) const = default;
};

inline constexpr double kMostThickness = 0.6;  ///< m
inline constexpr double kLeastTail = 1, kMostTail = 3;
inline constexpr double kMostMuscle = 2;

/// What living reptiles show in their tails (Mallison 2011, Palaeontol. Electron. 14(2):10A: flesh reaches at least 15
/// to 20 % beyond the bone, 30 to 40 % often in top view; crocodiles 190 % of bone width sideways and 130 %
/// vertically): lean, usual and full. Where the source gives no height the least is taken. The limbs' muscle that goes
/// with them is a program default, no source.
struct BuildPreset {
  double tailWidth, tailHeight, muscle;
};
inline constexpr std::array<BuildPreset, 3> kBuildPresets{{{1.20, 1.20, 0.8}, {1.35, 1.20, 1}, {1.90, 1.30, 1.25}}};
inline constexpr std::string_view kTailSource = "Mallison 2011, Palaeontol. Electron. 14(2):10A";

}  // namespace zyga::solid
