#include "ui/pictures/picture_set.h"

#include <cmath>
#include <cstdio>
#include <filesystem>
#include <memory>

#include "core/files/disk/atomic_file.h"
#include "core/files/disk/staged_output.h"
#include "core/picture/lens_view.h"
#include "ui/pictures/png_file.h"

namespace zyga::ui {
namespace {

using picture::Pass;

constexpr std::size_t kMemory = std::size_t{1} << 31;  // bytes of the passes that are traced in one go
// Shares of the whole work, about: light, lines and flat colours alone, packing a file.
constexpr double kLightWork = 1, kFlatWork = 0.15, kFileWork = 0.05;

std::string besides(const std::string& out, std::string_view word, std::string_view ending) {
  return out.substr(0, out.size() - 4) + "-" + std::string(word) + std::string(ending);
}

bool hasHorizonFile(const PictureSet& set) {
  const auto horizon = set.options.horizon;
  return !set.passes.empty() && horizon && *horizon >= 0 && *horizon <= 1;
}

std::string colourTable(const PictureSet& set, const picture::PassPlan& plan) {
  std::string table = "bone,colour\n";
  for (std::size_t i = 0; i < set.bones.size(); ++i) {
    char hex[8];
    const auto& c = plan.boneColours[i];
    std::snprintf(hex, sizeof hex, "#%02X%02X%02X", c[0], c[1], c[2]);
    table += set.bones[i] + "," + hex + "\n";
  }
  return table;
}

picture::PassPlan planOf(const PictureSet& set) {
  picture::PassPlan plan{{}, picture::distinctColours(set.instances.size()), {}};
  for (const auto& instance : set.instances) {
    auto& colour = plan.evidenceColours.emplace_back();
    for (std::size_t k = 0; k < 3; ++k) colour[k] = static_cast<std::uint8_t>(std::lround(instance.colour[k] * 255));
  }
  return plan;
}

double workOf(const std::vector<Pass>& passes) {
  for (const Pass pass : passes)
    if (pass == Pass::Shaded || pass == Pass::Shadow) return kLightWork;
  return kFlatWork;
}

/// Makes the files of a set in a folder, telling how far it is over all of them.
class SetWork {
 public:
  SetWork(const PictureSet& set, std::string out) : set_(set), out_(std::move(out)), plan_(planOf(set)) {
    const auto& options = set.options;
    const std::size_t pixels = static_cast<std::size_t>(options.width) * static_cast<std::size_t>(options.height);
    groups_ = picture::groupsOf(set.passes, pixels, kMemory);
    total_ = kFileWork * static_cast<double>(pictureFiles(out_, set).size()) + (set.finished ? kLightWork : 0);
    for (const auto& group : groups_) total_ += workOf(group);
  }

  /// False when cancelled.
  bool run(WrittenPictures& written) {
    if (set_.finished && !finishedPicture()) return false;
    for (const auto& group : groups_)
      if (!passes(group, written)) return false;
    return !hasHorizonFile(set_) ||
           write(picture::horizonImage(*set_.options.horizon, set_.options.width, set_.options.height),
                 besides(out_, "horizon", ".png"));
  }

 private:
  bool finishedPicture() {
    const auto image = picture::trace(set_.instances, set_.camera, step(kLightWork));
    return image.width > 0 && write(image, out_);
  }

  bool passes(const std::vector<Pass>& group, WrittenPictures& written) {
    plan_.wanted = group;
    const auto pictures = picture::tracePasses(set_.instances, set_.camera, step(workOf(group)), plan_);
    if (!pictures.whole) return false;
    for (const auto& [pass, image] : pictures.images) {
      if (!write(image, besides(out_, wordOf(pass), ".png"))) return false;
      if (pass == Pass::Bones) files::writeWhole(besides(out_, "bones", ".csv"), colourTable(set_, plan_));
    }
    if (pictures.depth.width == 0) return true;
    written.depth = {pictures.depth.nearest, pictures.depth.farthest};
    return write(pictures.depth, besides(out_, "depth", ".png"));
  }

  /// Options whose progress is so much of the whole.
  picture::PictureOptions step(double work) {
    picture::PictureOptions options = set_.options;
    options.task = set_.options.task.part(done_ / total_, (done_ + work) / total_);
    done_ += work;
    return options;
  }

  template <typename AnyImage>
  bool write(const AnyImage& image, const std::string& file) {
    if (!writePng(image, file, set_.options.task)) return false;
    done_ += kFileWork;
    set_.options.task.tell(std::min(1.0, done_ / total_));
    return true;
  }

  const PictureSet& set_;
  const std::string out_;
  picture::PassPlan plan_;
  std::vector<std::vector<Pass>> groups_;
  double total_ = 0, done_ = 0;
};

}  // namespace

std::vector<std::string> pictureFiles(const std::string& out, const PictureSet& set) {
  std::vector<std::string> files;
  if (set.finished) files.push_back(out);
  for (const Pass pass : set.passes) {
    files.push_back(besides(out, wordOf(pass), ".png"));
    if (pass == Pass::Bones) files.push_back(besides(out, "bones", ".csv"));
  }
  if (hasHorizonFile(set)) files.push_back(besides(out, "horizon", ".png"));
  return files;
}

std::optional<WrittenPictures> writePictures(const std::string& out, const PictureSet& set) {
  WrittenPictures written{pictureFiles(out, set), {}};
  for (const auto& file : written.files) files::checkPlace(file);
  const files::StagedOutput staged{std::filesystem::path(out)};
  try {
    if (!SetWork(set, staged.path().string()).run(written)) return std::nullopt;
  } catch (const std::bad_alloc&) {
    throw reason::Failure({kTooManyPixels, {reason::Count{set.options.width}, reason::Count{set.options.height}}});
  }
  if (set.options.task.cancelled()) return std::nullopt;
  staged.moveIntoPlace();
  return written;
}

}  // namespace zyga::ui
