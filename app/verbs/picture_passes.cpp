#include "app/verbs/picture_passes.h"

#include <QBuffer>
#include <QImage>
#include <QRgba64>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <iostream>

#include "app/verbs/summary_text.h"
#include "core/files/atomic_file.h"
#include "core/picture/lens_view.h"

namespace zyga::app {
namespace {

using picture::Pass;

constexpr std::pair<std::string_view, Pass> kPasses[] = {
    {"shaded", Pass::Shaded},       {"shadow", Pass::Shadow}, {"outline", Pass::Outline},  {"depth", Pass::Depth},
    {"direction", Pass::Direction}, {"bones", Pass::Bones},   {"evidence", Pass::Evidence}};

std::string_view wordOf(Pass pass) {
  for (const auto& [word, known] : kPasses)
    if (known == pass) return word;
  return "";
}

std::string besides(const std::string& out, std::string_view word, std::string_view ending) {
  return out.substr(0, out.size() - 4) + "-" + std::string(word) + std::string(ending);
}

std::string saved(const QImage& image) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  if (!image.save(&buffer, "PNG")) throw BadInput("the picture could not be written as PNG");
  return bytes.toStdString();
}

std::string depthPng(const picture::DepthImage& depth) {
  QImage image(depth.width, depth.height, QImage::Format_RGBA64);
  for (int y = 0; y < depth.height; ++y) {
    auto* row = reinterpret_cast<QRgba64*>(image.scanLine(y));
    for (int x = 0; x < depth.width; ++x) {
      const std::size_t at = static_cast<std::size_t>(y) * depth.width + x;
      row[x] = qRgba64(depth.grey[at], depth.grey[at], depth.grey[at], depth.alpha[at]);
    }
  }
  return saved(image);
}

void write(const std::string& file, const std::string& bytes, const std::string& more = {}) {
  files::writeWhole(file, bytes);
  std::cout << "wrote " << file << more << "\n";
}

std::string colourTable(const files::Project& project, const PosedBones& posed, const picture::PassPlan& plan) {
  std::string table = "bone,colour\n";
  for (std::size_t i = 0; i < posed.bones.size(); ++i) {
    char hex[8];
    const auto& c = plan.boneColours[i];
    std::snprintf(hex, sizeof hex, "#%02X%02X%02X", c[0], c[1], c[2]);
    table += project.specimen[posed.bones[i]].id + "," + hex + "\n";
  }
  return table;
}

picture::PassPlan planOf(const PosedBones& posed, const std::vector<Pass>& passes) {
  picture::PassPlan plan{passes, picture::distinctColours(posed.instances.size()), {}};
  for (const auto& instance : posed.instances) {
    auto& colour = plan.evidenceColours.emplace_back();
    for (std::size_t k = 0; k < 3; ++k) colour[k] = static_cast<std::uint8_t>(std::lround(instance.colour[k] * 255));
  }
  return plan;
}

}  // namespace

std::string pngBytes(const picture::Image& image) {
  return saved(QImage(image.rgba.data(), image.width, image.height, image.width * 4, QImage::Format_RGBA8888));
}

std::vector<Pass> passesFrom(const std::string& words) {
  std::vector<Pass> passes;
  std::string allowed;
  for (const auto& [word, pass] : kPasses) allowed += (allowed.empty() ? "" : ", ") + std::string(word);
  for (std::size_t from = 0; from <= words.size();) {
    const std::size_t to = std::min(words.find(',', from), words.size());
    const std::string_view given = std::string_view(words).substr(from, to - from);
    const auto known = std::find_if(std::begin(kPasses), std::end(kPasses), [&](auto& p) { return p.first == given; });
    if (known == std::end(kPasses))
      throw BadInput("--passes: '" + std::string(given) + "' is not among " + allowed + "; put commas between them");
    if (std::find(passes.begin(), passes.end(), known->second) == passes.end()) passes.push_back(known->second);
    from = to + 1;
  }
  return passes;
}

void writePasses(const std::string& out, const files::Project& project, const PosedBones& posed,
                 const picture::Camera& camera, const picture::PictureOptions& options, const std::vector<Pass>& passes,
                 double horizon) {
  const auto plan = planOf(posed, passes);
  const auto pictures = picture::tracePasses(posed.instances, camera, options, plan);
  for (const auto& [pass, image] : pictures.images) {
    write(besides(out, wordOf(pass), ".png"), pngBytes(image));
    if (pass == Pass::Bones) write(besides(out, "bones", ".csv"), colourTable(project, posed, plan));
  }
  const auto& depth = pictures.depth;
  if (depth.width > 0)
    write(besides(out, "depth", ".png"), depthPng(depth),
          ", white at " + fixed(depth.nearest, 2) + " m from the eye, black at " + fixed(depth.farthest, 2) + " m");
  if (horizon < 0 || horizon > 1) return;
  picture::Image line{options.width, options.height,
                      std::vector<std::uint8_t>(4 * static_cast<std::size_t>(options.width) * options.height)};
  picture::drawHorizon(line, horizon, picture::kHorizonInk);
  write(besides(out, "horizon", ".png"), pngBytes(line));
}

}  // namespace zyga::app
