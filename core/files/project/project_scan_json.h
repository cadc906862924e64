#pragma once

#include "core/files/json/json.h"
#include "core/files/json/json_write.h"
#include "core/files/project/project_scan.h"

namespace zyga::files {

/// The records of scanned bones as the project file holds them: one scan a line, mm, what is as usual left out.
json::Value scansJson(const std::vector<ProjectScan>& scans);

/// Throws FileError with the place of the fault. Meshes are not read here.
std::vector<ProjectScan> readScans(const JsonPlace& place);

}  // namespace zyga::files
