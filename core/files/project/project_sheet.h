#pragma once

#include <string>
#include <vector>

#include "core/files/json/json.h"
#include "core/files/project/project.h"

/// The sheet of a project; a file without one has the usual sheet.
namespace zyga::files {

inline constexpr std::string_view kSheetKey = "sheet";

std::vector<std::string> sheetMembers(const Project& project);
void readSheet(const JsonPlace& root, Project& project);

}  // namespace zyga::files
