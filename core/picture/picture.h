#pragma once

#include <Eigen/Geometry>
#include <array>
#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "core/solid/mesh/triangle_mesh.h"
#include "core/task/task.h"

namespace zyga::picture {

/// Eight-bit RGBA, row by row from the top; straight alpha.
struct Image {
  int width = 0;
  int height = 0;
  std::vector<std::uint8_t> rgba;
};

enum class StandardView { Left, Right, Dorsal, Cranial, Caudal, ThreeQuarter, Ventral };

/// A camera looks along the frame's -z, with x to the right and y up on the picture.
struct Camera {
  Eigen::Isometry3d X_WCamera = Eigen::Isometry3d::Identity();
  bool perspective = false;
  double viewHeight = 1;     ///< m of the world from bottom to top, orthographic
  double fieldOfView = 0.5;  ///< rad from bottom to top, perspective
  /// How far the picture's middle lies above the camera's axis, in picture heights, perspective only: a level camera
  /// with a raised front keeps upright things upright.
  double rise = 0;
};

/// Frames `box` (world, m) from a standard direction with a margin of 4 %. aspect = width / height of the picture.
/// Left shows the animal's left side, so the head points to the left of the picture.
/// The three-quarter view is in gentle perspective, all others are parallel.
Camera frame(StandardView view, const Eigen::AlignedBox3d& box, double aspect);
/// The same with all views parallel.
Camera frameParallel(StandardView view, const Eigen::AlignedBox3d& box, double aspect);

struct Instance {
  std::shared_ptr<const solid::TriangleMesh> mesh;
  Eigen::Isometry3d X_WB = Eigen::Isometry3d::Identity();
  std::array<float, 3> colour{0.85f, 0.80f, 0.70f};  ///< sRGB
};

struct PictureOptions {
  int width = 1600;
  int height = 1000;
  bool ground = true;              ///< the plane z = 0 receives shadow; false: the bones float before the background
  bool transparentGround = false;  ///< no background: alpha 0 but for the bones and their shadow
  bool groundGrid = false;         ///< a line every metre on the ground
  std::array<float, 3> top{0.933f, 0.914f, 0.875f};  ///< sRGB, background
  std::array<float, 3> bottom{0.851f, 0.827f, 0.776f};
  std::optional<double> horizon;  ///< draws it behind the bones: row as a share of the height from the top
  bool outline = true;
  double outlineWidth = 0;  ///< pixels; 0: by the height of the picture
  int samplesPerPixel = 9;  ///< a square number; others are rounded to the nearest square
  int occlusionRays = 12;   ///< a sample
  int shadowRays = 4;       ///< a sample
  task::Task task;
};

/// Traces the picture: key light from upper front left with soft shadow, sky and ground fill, ambient occlusion, shadow
/// on the ground, outlines from depth and direction. The same input gives the same bytes, whatever the thread count.
/// Instances without a mesh are left out. Throws std::invalid_argument when width or height is not positive. An empty
/// image (width 0) when cancelled.
Image trace(const std::vector<Instance>& instances, const Camera& camera, const PictureOptions& options);

}  // namespace zyga::picture
