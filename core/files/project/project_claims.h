#pragma once

#include <string>
#include <vector>

#include "core/files/json/json.h"
#include "core/files/project/project.h"

/// The claims of a project. A file without them has none.
namespace zyga::files {

/// Members of the document's root; none for a project without claims. Throws FileError for what is not finite.
std::vector<std::string> claimMembers(const Project& project);

inline constexpr std::string_view kClaimsKey = "claims";
void readClaims(const JsonPlace& root, Project& project);

}  // namespace zyga::files
