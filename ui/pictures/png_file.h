#pragma once

#include <string>

#include "core/picture/passes.h"
#include "core/reason/reason.h"

namespace zyga::ui {

inline constexpr reason::Id kNoMemoryForPicture{"picture.no-memory-for-file", 1};  ///< file
inline constexpr reason::Id kCannotSavePicture{"picture.cannot-save", 2};          ///< file, the system's cause

/// Written or, when the task was cancelled meanwhile, left off; throws reason::Failure (kNoMemoryForPicture,
/// kCannotSavePicture).
bool writePng(const picture::Image& image, const std::string& file, const task::Task& task = {});

/// Grey of 16 bits. What white and black stand for is written into the file as the text "Depth".
bool writePng(const picture::DepthImage& depth, const std::string& file, const task::Task& task = {});

}  // namespace zyga::ui
