#include <cmath>
#include <stdexcept>
#include <thread>

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

unsigned threadCount(const PictureOptions& options, std::size_t tiles) {
  const unsigned wanted = options.threads > 0 ? options.threads : std::max(1u, std::thread::hardware_concurrency());
  return static_cast<unsigned>(std::min<std::size_t>(wanted, tiles));
}

/// Hands out tiles to threads; false when cancelled.
bool traceTiles(const Studio& studio, const std::vector<Tile>& tiles, Image& image) {
  std::atomic<std::size_t> next = 0, done = 0;
  const auto cancelled = [&] { return studio.options.cancel && studio.options.cancel->load(); };
  const auto work = [&] {
    for (std::size_t i = next++; i < tiles.size() && !cancelled(); i = next++) {
      traceTile(studio, tiles[i], image);
      const std::size_t finished = ++done;
      if (studio.options.progress)
        studio.options.progress(static_cast<double>(finished) / static_cast<double>(tiles.size()));
    }
  };
  std::vector<std::jthread> threads;
  for (unsigned i = 0; i < threadCount(studio.options, tiles.size()); ++i) threads.emplace_back(work);
  threads.clear();
  return done == tiles.size();
}

}  // namespace

Image trace(const std::vector<Instance>& instances, const Camera& camera, const PictureOptions& options) {
  if (options.width <= 0 || options.height <= 0) throw std::invalid_argument("a picture needs a width and a height");
  const BoneScene scene = sceneOf(instances);
  const CameraRays rays(camera, options.width, options.height, scene.bounds());
  const Lighting lighting(scene, rays, options);
  const Ground ground(scene, rays, lighting, options);
  const int grid = std::max(1, static_cast<int>(std::lround(std::sqrt(std::max(1, options.samplesPerPixel)))));
  const Outliner outliner(lineRadius(options, grid));
  const Studio studio{
      scene, rays, lighting, ground, options.outline ? &outliner : nullptr, options, albedoOf(instances), grid};

  Image image{options.width, options.height, {}};
  image.rgba.resize(4 * static_cast<std::size_t>(options.width) * static_cast<std::size_t>(options.height));
  return traceTiles(studio, tilesOf(options.width, options.height), image) ? image : Image{};
}

}  // namespace zyga::picture
