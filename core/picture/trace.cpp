#include <stdexcept>

#include "core/crew/crew.h"
#include "core/picture/colour.h"
#include "core/picture/tile.h"

namespace zyga::picture {

namespace {

constexpr int kTile = 32;  // pixels

BoneScene sceneOf(const std::vector<Instance>& instances) {
  BoneScene::Meshes meshes;
  std::vector<Eigen::Isometry3d> X_WB;
  for (const Instance& instance : instances) {
    meshes.push_back(instance.mesh);
    X_WB.push_back(instance.X_WB);
  }
  return {std::move(meshes), X_WB, BoneScene::Build::Repeatable};
}

std::vector<Eigen::Vector3f> albedoOf(const std::vector<Instance>& instances) {
  std::vector<Eigen::Vector3f> albedo;
  for (const Instance& instance : instances) albedo.push_back(linearFromSrgb(instance.colour));
  return albedo;
}

std::vector<Tile> tilesOf(int width, int height) {
  std::vector<Tile> tiles;
  for (int y = 0; y < height; y += kTile)
    for (int x = 0; x < width; x += kTile)
      tiles.push_back({x, y, std::min(kTile, width - x), std::min(kTile, height - y)});
  return tiles;
}

/// Half the width of a line in samples: a pixel wide on a page-sized picture, thicker on a poster.
double lineRadius(const PictureOptions& options, int grid) {
  const double width = options.outlineWidth > 0 ? options.outlineWidth : std::max(1.0, options.height / 1100.0);
  return 0.5 * width * grid;
}

}  // namespace

bool workTiles(const PictureOptions& options, const std::function<void(const Tile&)>& work) {
  const std::vector<Tile> tiles = tilesOf(options.width, options.height);
  return crew::forEach(tiles.size(), {options.threads, options.cancel, crew::inShares(options.progress)},
                       [&](std::size_t i) { work(tiles[i]); });
}

void withStudio(const std::vector<Instance>& instances, const Camera& camera, const PictureOptions& options,
                const std::function<void(const Studio&)>& work) {
  if (options.width <= 0 || options.height <= 0) throw std::invalid_argument("a picture needs a width and a height");
  const BoneScene scene = sceneOf(instances);
  const CameraRays rays(camera, options.width, options.height, scene.bounds());
  const Lighting lighting(scene, rays, options);
  const Ground ground(scene, rays, lighting, options);
  const int grid = sampleGrid(options.samplesPerPixel);
  const Outliner outliner(lineRadius(options, grid));
  work(
      Studio{scene, rays, lighting, ground, options.outline ? &outliner : nullptr, options, albedoOf(instances), grid});
}

Image trace(const std::vector<Instance>& instances, const Camera& camera, const PictureOptions& options) {
  Image image{options.width, options.height, {}};
  bool whole = false;
  withStudio(instances, camera, options, [&](const Studio& studio) {
    image.rgba.resize(4 * static_cast<std::size_t>(options.width) * static_cast<std::size_t>(options.height));
    whole = workTiles(options, [&](const Tile& tile) { traceTile(studio, tile, image); });
  });
  return whole ? image : Image{};
}

}  // namespace zyga::picture
