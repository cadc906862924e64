#pragma once

#include <string_view>

#include "core/files/json/json.h"
#include "core/files/json/json_write.h"
#include "core/files/project/project.h"

/// Joints that a drag leaves as they are. A file without them has none locked.
namespace zyga::files {

inline constexpr std::string_view kLockedKey = "locked_joints";

/// To the document's root; nothing when no joint is locked.
void addLocks(const Project& project, json::Value& root);
/// Throws FileError for a joint that the specimen does not have or that is named twice.
void readLocks(const JsonPlace& root, Project& project);

}  // namespace zyga::files
