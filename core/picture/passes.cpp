#include "core/picture/passes.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

#include "core/picture/colour.h"
#include "core/picture/tile.h"

namespace zyga::picture {

namespace {

using Eigen::Vector3f;
using Eigen::Vector4f;

bool wants(const PassPlan& plan, Pass pass) {
  return std::find(plan.wanted.begin(), plan.wanted.end(), pass) != plan.wanted.end();
}

struct Depths {
  double nearest = std::numeric_limits<double>::infinity();
  double farthest = -std::numeric_limits<double>::infinity();
};

/// Of all corners of the bones, m along the camera's axis.
Depths depthsOf(const std::vector<Instance>& instances, const Camera& camera) {
  Depths depths;
  const Eigen::Isometry3d X_CameraW = camera.X_WCamera.inverse();
  for (const Instance& instance : instances) {
    if (!instance.mesh) continue;
    const Eigen::Isometry3d X_CameraB = X_CameraW * instance.X_WB;
    for (const Vector3f& p : instance.mesh->positions) {
      const double depth = -(X_CameraB * p.cast<double>()).z();
      depths.nearest = std::min(depths.nearest, depth);
      depths.farthest = std::max(depths.farthest, depth);
    }
  }
  if (!(depths.nearest < depths.farthest)) return {0, 1};
  return depths;
}

/// What the samples of one pixel tell together.
struct PixelTally {
  int bones = 0;  ///< samples that see a bone
  std::uint32_t commonest = SeenPoint::kNothing;
  Vector3f normal_W = Vector3f::Zero();  ///< sum over the bone that takes most
  double depth = 0;                      ///< mean of the same
};

/// Everything the tiles share.
struct Job {
  const Studio& studio;
  const PassPlan& plan;
  const Camera& camera;
  PassPictures& pictures;

  Image* image(Pass pass) const {
    for (auto& [kept, image] : pictures.images)
      if (kept == pass) return &image;
    return nullptr;
  }
};

PixelTally tally(const Job& job, const SeenBlock& block, int blockX, int blockY) {
  const int n = job.studio.grid;
  std::vector<std::pair<std::uint32_t, int>> counts;
  for (int j = 0; j < n; ++j)
    for (int i = 0; i < n; ++i) {
      const SeenPoint& seen = block.at(blockX + i, blockY + j);
      if (!seen.bone()) continue;
      const auto known = std::find_if(counts.begin(), counts.end(), [&](auto& c) { return c.first == seen.instance; });
      if (known == counts.end())
        counts.emplace_back(seen.instance, 1);
      else
        ++known->second;
    }
  PixelTally result;
  int best = 0;
  for (const auto& [instance, count] : counts) {
    result.bones += count;
    if (count > best || (count == best && instance < result.commonest)) {
      best = count;
      result.commonest = instance;
    }
  }
  if (best == 0) return result;
  const Eigen::Vector3d eye = job.camera.X_WCamera.translation(), back = job.camera.X_WCamera.linear().col(2);
  for (int j = 0; j < n; ++j)
    for (int i = 0; i < n; ++i) {
      const SeenPoint& seen = block.at(blockX + i, blockY + j);
      if (seen.instance != result.commonest) continue;
      result.normal_W += seen.normal_W;
      result.depth += back.dot(eye - seen.p_W.cast<double>()) / best;
    }
  return result;
}

void storeFlat(const std::array<std::uint8_t, 3>& colour, float cover, std::uint8_t* rgba) {
  std::copy(colour.begin(), colour.end(), rgba);
  rgba[3] = byteOf(cover);
}

void storeDirection(const Camera& camera, const Vector3f& normal_W, float cover, std::uint8_t* rgba) {
  const Vector3f n = (camera.X_WCamera.linear().transpose().cast<float>() * normal_W).normalized();
  for (int k = 0; k < 3; ++k) rgba[k] = byteOf(0.5f + 0.5f * n[k]);
  rgba[3] = byteOf(cover);
}

void storeDepth(DepthImage& image, std::size_t at, double depth, float cover) {
  const double share = (image.farthest - depth) / (image.farthest - image.nearest);
  image.grey[at] = static_cast<std::uint16_t>(std::lround(std::clamp(share, 0.0, 1.0) * 65535));
  image.alpha[at] = static_cast<std::uint16_t>(byteOf(cover) * 257);
}

/// Light on the bones of a pixel, or on the ground where the pixel's samples miss them.
void storeLight(const Job& job, const SeenBlock& block, const Tile& tile, int x, int y, int border, std::size_t at) {
  Image* const shaded = job.image(Pass::Shaded);
  Image* const shadow = job.image(Pass::Shadow);
  if (!shaded && !shadow) return;
  const int n = job.studio.grid;
  Vector4f bone = Vector4f::Zero(), ground = Vector4f::Zero();
  for (int j = 0; j < n; ++j)
    for (int i = 0; i < n; ++i) {
      const SeenPoint& seen = block.at(x * n + i + border, y * n + j + border);
      const int sampleX = (tile.x + x) * n + i, sampleY = (tile.y + y) * n + j;
      if (shaded && seen.bone()) bone += shade(job.studio, seen, sampleX, sampleY);
      // The shadow goes on behind the bones' edge, so that no light seam shows between the two layers.
      if (shadow) ground += behind(job.studio, sampleX, sampleY);
    }
  const float share = 1.0f / static_cast<float>(n * n);
  if (shaded) store(share * bone, &shaded->rgba[4 * at]);
  if (shadow) store(share * ground, &shadow->rgba[4 * at]);
}

void storeLines(const Job& job, const SeenBlock& block, int blockX, int blockY, std::size_t at) {
  Image* const image = job.image(Pass::Outline);
  if (!image) return;
  const int n = job.studio.grid;
  float strength = 0;
  for (int j = 0; j < n; ++j)
    for (int i = 0; i < n; ++i) strength += job.studio.outliner->strength(block, blockX + i, blockY + j);
  strength /= static_cast<float>(n * n);
  store(withAlpha(strength * lineInk(), strength), &image->rgba[4 * at]);
}

void passTile(const Job& job, const Tile& tile) {
  const Studio& studio = job.studio;
  const int border = studio.outliner ? studio.outliner->border() : 0, n = studio.grid;
  const SeenBlock block = lookAround(studio, tile, border);
  for (int y = 0; y < tile.height; ++y)
    for (int x = 0; x < tile.width; ++x) {
      const std::size_t at = static_cast<std::size_t>(tile.y + y) * studio.options.width + tile.x + x;
      const int blockX = x * n + border, blockY = y * n + border;
      storeLight(job, block, tile, x, y, border, at);
      storeLines(job, block, blockX, blockY, at);
      const PixelTally seen = tally(job, block, blockX, blockY);
      if (seen.bones == 0) continue;
      const float cover = static_cast<float>(seen.bones) / static_cast<float>(n * n);
      if (Image* image = job.image(Pass::Bones))
        storeFlat(job.plan.boneColours[seen.commonest], cover, &image->rgba[4 * at]);
      if (Image* image = job.image(Pass::Evidence))
        storeFlat(job.plan.evidenceColours[seen.commonest], cover, &image->rgba[4 * at]);
      if (Image* image = job.image(Pass::Direction))
        storeDirection(job.camera, seen.normal_W, cover, &image->rgba[4 * at]);
      if (job.pictures.depth.width > 0) storeDepth(job.pictures.depth, at, seen.depth, cover);
    }
}

PassPictures emptyPictures(const PassPlan& plan, const PictureOptions& options, const Depths& depths) {
  PassPictures pictures;
  const auto pixels = static_cast<std::size_t>(options.width) * static_cast<std::size_t>(options.height);
  for (const Pass pass : plan.wanted) {
    if (pass == Pass::Depth)
      pictures.depth = {
          options.width,  options.height, std::vector<std::uint16_t>(pixels), std::vector<std::uint16_t>(pixels),
          depths.nearest, depths.farthest};
    else
      pictures.images.emplace_back(pass, Image{options.width, options.height, std::vector<std::uint8_t>(4 * pixels)});
  }
  return pictures;
}

}  // namespace

std::string_view wordOf(Pass pass) {
  constexpr std::array<std::string_view, kAllPasses.size()> kWords{"shaded",    "shadow", "outline", "depth",
                                                                   "direction", "bones",  "evidence"};
  return kWords[static_cast<std::size_t>(pass)];
}

std::optional<Pass> passOf(std::string_view word) {
  for (const Pass pass : kAllPasses)
    if (wordOf(pass) == word) return pass;
  return std::nullopt;
}

PassPictures tracePasses(const std::vector<Instance>& instances, const Camera& camera, const PictureOptions& options,
                         const PassPlan& plan) {
  const auto lacks = [&](Pass pass, const auto& colours) {
    return wants(plan, pass) && colours.size() < instances.size();
  };
  if (lacks(Pass::Bones, plan.boneColours) || lacks(Pass::Evidence, plan.evidenceColours))
    throw std::invalid_argument("a pass of flat colours needs a colour for every bone");
  PictureOptions bare = options;
  bare.transparentGround = true;
  bare.groundGrid = false;
  bare.horizon.reset();
  bare.outline = wants(plan, Pass::Outline);
  PassPictures pictures;
  withStudio(instances, camera, bare, [&](const Studio& studio) {
    pictures = emptyPictures(plan, bare, depthsOf(instances, camera));
    const Job job{studio, plan, camera, pictures};
    pictures.whole = workTiles(bare, [&](const Tile& tile) { passTile(job, tile); });
  });
  return pictures;
}

std::vector<std::vector<Pass>> groupsOf(const std::vector<Pass>& wanted, std::size_t pixels, std::size_t memory) {
  constexpr std::size_t kBytes = 4;  // a pixel, in every pass
  const std::size_t most = std::max<std::size_t>(1, memory / std::max<std::size_t>(1, pixels * kBytes));
  std::vector<std::vector<Pass>> groups;
  for (const Pass pass : wanted) {
    if (groups.empty() || groups.back().size() >= most) groups.emplace_back();
    groups.back().push_back(pass);
  }
  return groups;
}

std::vector<std::array<std::uint8_t, 3>> distinctColours(std::size_t count) {
  std::vector<std::array<std::uint8_t, 3>> colours;
  // Hue by the golden section, lightness and strength by turns; a colour that has been is stepped past.
  for (std::size_t i = 0; colours.size() < count; ++i) {
    const double hue = std::fmod(static_cast<double>(i) * 0.6180339887498949, 1.0) * 6;
    const double value = 1.0 - 0.16 * static_cast<double>(i % 4),
                 strength = 0.85 - 0.2 * static_cast<double>(i / 4 % 3);
    std::array<std::uint8_t, 3> colour;
    for (int k = 0; k < 3; ++k) {
      const double ramp = std::clamp(std::abs(std::fmod(hue + 6 - 2 * k, 6.0) - 3) - 1, 0.0, 1.0);
      colour[static_cast<std::size_t>(k)] = byteOf(static_cast<float>(value * (1 - strength * (1 - ramp))));
    }
    if (std::find(colours.begin(), colours.end(), colour) == colours.end()) colours.push_back(colour);
  }
  return colours;
}

}  // namespace zyga::picture
