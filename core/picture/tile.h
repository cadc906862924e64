#pragma once

#include "core/picture/ground.h"
#include "core/picture/outline.h"

namespace zyga::picture {

/// Everything the tiles of one picture share; only read while they are traced.
struct Studio {
  const BoneScene& scene;
  const CameraRays& camera;
  const Lighting& lighting;
  const Ground& ground;
  const Outliner* outliner;  ///< null: no lines
  const PictureOptions& options;
  std::vector<Eigen::Vector3f> albedo;  ///< linear, by instance
  int grid;                             ///< samples along the side of a pixel
};

/// A rectangle of pixels: [x, x + width) by [y, y + height).
struct Tile {
  int x, y, width, height;
};

/// Traces the tile into its place in the image. Depends on nothing but its arguments.
void traceTile(const Studio& studio, const Tile& tile, Image& image);

}  // namespace zyga::picture
