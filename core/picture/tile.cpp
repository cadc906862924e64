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

}  // namespace zyga::picture
