#pragma once

#include <string_view>

#include "core/files/json/json.h"
#include "core/files/json/json_write.h"
#include "core/files/project/project.h"

/// The claims of a project. A file without them has none.
namespace zyga::files {

/// To the document's root; nothing for a project without claims. Throws FileError for what is not finite.
void addClaims(const Project& project, json::Value& root);

inline constexpr std::string_view kClaimsKey = "claims";
void readClaims(const JsonPlace& root, Project& project);

}  // namespace zyga::files
