#pragma once

#include <string_view>

#include "core/files/json/json.h"
#include "core/files/json/json_write.h"
#include "core/files/project/project.h"

/// Notes of a project; a file without any has no member for them.
namespace zyga::files {

inline constexpr std::string_view kNotesKey = "notes";

/// To the document's root. Throws FileError for a place that is not finite.
void addNotes(const Project& project, json::Value& root);
void readNotes(const JsonPlace& root, Project& project);

}  // namespace zyga::files
