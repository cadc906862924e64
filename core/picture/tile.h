#pragma once

#include "core/picture/lighting.h"
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

/// Sets up what the tiles of a picture share and hands it to `work`.
void withStudio(const std::vector<Instance>& instances, const Camera& camera, const PictureOptions& options,
                const std::function<void(const Studio&)>& work);

/// Hands every tile of the picture to `work`, on as many threads as the options say, with their progress; false when
/// cancelled.
bool workTiles(const PictureOptions& options, const std::function<void(const Tile&)>& work);

/// The samples of the tile and of the border that its outlines look at.
SeenBlock lookAround(const Studio& studio, const Tile& tile, int border);
/// Linear colour, premultiplied, and alpha of one sample without lines; places are in samples of the whole picture.
Eigen::Vector4f shade(const Studio& studio, const SeenPoint& seen, int sampleX, int sampleY);
/// Linear colour, premultiplied, and alpha of the ground behind one sample.
Eigen::Vector4f behind(const Studio& studio, int sampleX, int sampleY);
/// Linear colour of drawn lines.
const Eigen::Vector3f& lineInk();
/// Stores a linear, premultiplied colour as straight sRGB.
void store(const Eigen::Vector4f& colour, std::uint8_t* rgba);

/// Traces the tile into its place in the image. Depends on nothing but its arguments.
void traceTile(const Studio& studio, const Tile& tile, Image& image);

}  // namespace zyga::picture
