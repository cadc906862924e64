#pragma once

#include <string>
#include <vector>

#include "core/files/json/json.h"
#include "core/files/project/project.h"

/// Joints that a drag leaves as they are. A file without them has none locked.
namespace zyga::files {

inline constexpr std::string_view kLockedKey = "locked_joints";

/// The member of the document's root; none when nothing is locked.
std::vector<std::string> lockMembers(const Project& project);
/// Throws FileError for a joint that the specimen does not have or that is named twice.
void readLocks(const JsonPlace& root, Project& project);

}  // namespace zyga::files
