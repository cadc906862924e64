#include "core/picture/tile.h"

#include <cassert>
#include <stdexcept>

#include "core/picture/colour.h"
#include "core/task/parallel.h"

namespace zyga::picture {

namespace {

const Eigen::Vector3f kLine(0.030f, 0.023f, 0.017f);  // linear: sepia ink

Ray sampleRay(const Studio& studio, int sampleX, int sampleY) {
  const double share = 1.0 / studio.grid;
  return studio.camera.through((sampleX + 0.5) * share, (sampleY + 0.5) * share);
}

SeenPoint look(const Studio& studio, int sampleX, int sampleY) {
  const Ray ray = sampleRay(studio, sampleX, sampleY);
  SeenPoint seen;
  const auto hit = studio.scene.nearest(ray);
  if (!hit) return seen;
  seen.instance = static_cast<std::uint32_t>(hit->instance);
  seen.footprint = studio.camera.footprint(hit->distance) / static_cast<float>(studio.grid);
  seen.p_W = hit->p_W;
  seen.face_W = hit->face_W;
  seen.normal_W = hit->normal_W;
  seen.back_W = -ray.direction;
  return seen;
}

SampleSequences sequencesOf(const Studio& studio, int pixelX, int pixelY, int inPixel) {
  const auto stream = [&](PixelSequence::Stream which, int raysEach) {
    return PixelSequence(static_cast<std::uint32_t>(pixelX), static_cast<std::uint32_t>(pixelY), which,
                         static_cast<std::uint32_t>(inPixel * raysEach));
  };
  const int fillRays = studio.lighting.occlusionRays();
  using Stream = PixelSequence::Stream;
  return {stream(Stream::Fill, fillRays), stream(Stream::Key, studio.lighting.shadowRays()),
          stream(Stream::Place, fillRays)};
}

SampleSequences sequencesAt(const Studio& studio, int sampleX, int sampleY) {
  const int n = studio.grid;
  return sequencesOf(studio, sampleX / n, sampleY / n, (sampleY % n) * n + sampleX % n);
}

Eigen::Vector4f behind(const Studio& studio, int sampleX, int sampleY, SampleSequences& sequences) {
  return studio.ground.behind(sampleRay(studio, sampleX, sampleY),
                              (static_cast<float>(sampleY) + 0.5f) / static_cast<float>(studio.grid), sequences);
}

}  // namespace

SeenBlock lookAround(const Studio& studio, const Tile& tile, int border) {
  assert(studio.grid > 0 && border >= 0);
  SeenBlock block;
  block.width = tile.width * studio.grid + 2 * border;
  block.height = tile.height * studio.grid + 2 * border;
  block.points.reserve(static_cast<std::size_t>(block.width) * block.height);
  for (int y = 0; y < block.height; ++y)
    for (int x = 0; x < block.width; ++x)
      block.points.push_back(look(studio, tile.x * studio.grid - border + x, tile.y * studio.grid - border + y));
  return block;
}

const Eigen::Vector3f& lineInk() { return kLine; }

Eigen::Vector4f behind(const Studio& studio, int sampleX, int sampleY) {
  SampleSequences sequences = sequencesAt(studio, sampleX, sampleY);
  return behind(studio, sampleX, sampleY, sequences);
}

Eigen::Vector4f shade(const Studio& studio, const SeenPoint& seen, int sampleX, int sampleY) {
  SampleSequences sequences = sequencesAt(studio, sampleX, sampleY);
  if (!seen.bone()) return behind(studio, sampleX, sampleY, sequences);
  SurfaceHit hit;
  hit.instance = seen.instance;
  hit.p_W = seen.p_W;
  hit.face_W = seen.face_W;
  hit.normal_W = seen.normal_W;
  return withAlpha(studio.lighting.bone(hit, studio.albedo[hit.instance], sequences), 1);
}

void store(const Eigen::Vector4f& colour, std::uint8_t* rgba) {
  const float alpha = colour.w();
  for (int i = 0; i < 3; ++i) rgba[i] = alpha > 0 ? byteOf(srgbFromLinear(colour[i] / alpha)) : 0;
  rgba[3] = byteOf(alpha);
}

namespace {

void drawLine(Eigen::Vector4f& colour, float strength) { colour += strength * (withAlpha(kLine, 1) - colour); }

Eigen::Vector4f pixel(const Studio& studio, const Tile& tile, const SeenBlock& block, int border, int x, int y) {
  const int n = studio.grid;
  Eigen::Vector4f sum = Eigen::Vector4f::Zero();
  for (int j = 0; j < n; ++j)
    for (int i = 0; i < n; ++i) {
      const int blockX = x * n + i + border, blockY = y * n + j + border;
      Eigen::Vector4f colour = shade(studio, block.at(blockX, blockY), (tile.x + x) * n + i, (tile.y + y) * n + j);
      if (studio.outliner) drawLine(colour, studio.outliner->strength(block, blockX, blockY));
      sum += colour;
    }
  return sum / static_cast<float>(n * n);
}

}  // namespace

void traceTile(const Studio& studio, const Tile& tile, Image& image) {
  const int border = studio.outliner ? studio.outliner->border() : 0;
  const SeenBlock block = lookAround(studio, tile, border);
  for (int y = 0; y < tile.height; ++y)
    for (int x = 0; x < tile.width; ++x) {
      const std::size_t at = static_cast<std::size_t>(tile.y + y) * image.width + tile.x + x;
      store(pixel(studio, tile, block, border, x, y), &image.rgba[4 * at]);
    }
}

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
  return task::forEach(tiles.size(), options.task, [&](std::size_t i) { work(tiles[i]); });
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
