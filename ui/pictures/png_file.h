#pragma once

#include <string>

#include "core/picture/passes.h"

namespace zyga::ui {

/// Written or, when `cancel` was set meanwhile, left off; throws files::FileError that names the file and what stands
/// in the way.
bool writePng(const picture::Image& image, const std::string& file, const std::atomic<bool>* cancel = nullptr);

/// Grey of 16 bits. What white and black stand for is written into the file as the text "Depth".
bool writePng(const picture::DepthImage& depth, const std::string& file, const std::atomic<bool>* cancel = nullptr);

}  // namespace zyga::ui
