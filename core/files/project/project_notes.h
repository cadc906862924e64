#pragma once

#include <string>
#include <vector>

#include "core/files/json/json.h"
#include "core/files/project/project.h"

/// Notes of a project; a file without any has no member for them.
namespace zyga::files {

inline constexpr std::string_view kNotesKey = "notes";

/// Members of the document's root. Throws FileError for a place that is not finite.
std::vector<std::string> noteMembers(const Project& project);
void readNotes(const JsonPlace& root, Project& project);

}  // namespace zyga::files
