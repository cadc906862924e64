#include "core/picture/tile.h"

#include "core/picture/colour.h"

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

/// The samples of the tile and of the border that its outlines look at.
SeenBlock lookAround(const Studio& studio, const Tile& tile, int border) {
  SeenBlock block;
  block.width = tile.width * studio.grid + 2 * border;
  block.height = tile.height * studio.grid + 2 * border;
  block.points.reserve(static_cast<std::size_t>(block.width) * block.height);
  for (int y = 0; y < block.height; ++y)
    for (int x = 0; x < block.width; ++x)
      block.points.push_back(look(studio, tile.x * studio.grid - border + x, tile.y * studio.grid - border + y));
  return block;
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

/// Linear colour, premultiplied, and alpha of one sample without lines.
Eigen::Vector4f shade(const Studio& studio, const SeenPoint& seen, int sampleX, int sampleY) {
  const int n = studio.grid;
  const int pixelX = sampleX / n, pixelY = sampleY / n;
  SampleSequences sequences = sequencesOf(studio, pixelX, pixelY, (sampleY % n) * n + sampleX % n);
  if (!seen.bone())
    return studio.ground.behind(sampleRay(studio, sampleX, sampleY),
                                (static_cast<float>(sampleY) + 0.5f) / static_cast<float>(n), sequences);
  SurfaceHit hit;
  hit.instance = seen.instance;
  hit.p_W = seen.p_W;
  hit.face_W = seen.face_W;
  hit.normal_W = seen.normal_W;
  return withAlpha(studio.lighting.bone(hit, studio.albedo[hit.instance], sequences), 1);
}

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

void store(const Eigen::Vector4f& colour, std::uint8_t* rgba) {
  const float alpha = colour.w();
  for (int i = 0; i < 3; ++i) rgba[i] = alpha > 0 ? byteOf(srgbFromLinear(colour[i] / alpha)) : 0;
  rgba[3] = byteOf(alpha);
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

}  // namespace zyga::picture
