#pragma once

#include <string_view>

#include "core/files/json/json.h"
#include "core/files/json/json_write.h"
#include "core/files/project/project.h"

/// The sheet of a project; a file without one has the usual sheet.
namespace zyga::files {

inline constexpr std::string_view kSheetKey = "sheet";

/// To the document's root. Throws FileError for what is not finite.
void addSheet(const Project& project, json::Value& root);
void readSheet(const JsonPlace& root, Project& project);

}  // namespace zyga::files
