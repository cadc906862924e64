#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/files/project/project.h"

namespace zyga::ui {

/// What came of opening a file: a project, or the reasons why there is none.
struct Opened {
  std::optional<files::Project> project;
  std::filesystem::path file;
  bool fromTable = false;                       ///< a new project, not yet saved anywhere
  reason::Reason fault;                         ///< where the file as a whole is at fault; else empty
  std::vector<anatomy::TableMessage> messages;  ///< faults and warnings of a measurement table, all of them
};

/// Reads a project (.zyga, .zygazip) or builds one from a measurement table (.csv). Never throws; safe in any thread.
Opened openFile(const std::filesystem::path& file);

}  // namespace zyga::ui
