#pragma once

#include <string>
#include <vector>

#include "core/files/json/json.h"
#include "core/files/project/project.h"

/// Trackway and densities of a project. A file without them has no footprints and the default densities.
namespace zyga::files {

/// Members of the document's root; none for what is as in a new project. Throws FileError for what is not finite.
std::vector<std::string> groundMembers(const Project& project);

inline constexpr std::string_view kTrackwayKey = "trackway", kDensitiesKey = "densities_kg_m3";
void readGround(const JsonPlace& root, Project& project);

}  // namespace zyga::files
