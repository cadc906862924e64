#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/picture/passes.h"
#include "core/reason/reason.h"

namespace zyga::ui {

inline constexpr reason::Id kTooManyPixels{"picture.too-many-pixels", 2};  ///< width, height

/// One view of the bones as files that lie exactly over each other.
struct PictureSet {
  std::vector<picture::Instance> instances;
  std::vector<std::string> bones;  ///< ids by instance, for the table of their colours
  picture::Camera camera;
  picture::PictureOptions options;  ///< with the horizon, which beside passes is a picture of its own
  bool finished = true;             ///< the picture as a whole, "A.png"
  std::vector<picture::Pass> passes;
};

struct WrittenPictures {
  std::vector<std::string> files;
  /// What white and black of the depth stand for, m along the camera's axis; none without that pass.
  std::optional<std::pair<double, double>> depth;
};

/// The files of a set in the order they are made: "A.png", "A-shaded.png"..., "A-bones.csv", "A-horizon.png". `out`
/// ends in .png.
std::vector<std::string> pictureFiles(const std::string& out, const PictureSet& set);

/// Traces and writes all files of a set or, when cancelled (options.task) or something fails, none of them. Evidence
/// takes the colours of the instances. Empty when cancelled; throws files::FileError, and reason::Failure as
/// writePng does or kTooManyPixels.
std::optional<WrittenPictures> writePictures(const std::string& out, const PictureSet& set);

}  // namespace zyga::ui
