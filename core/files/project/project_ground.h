#pragma once

#include <string_view>

#include "core/files/json/json.h"
#include "core/files/json/json_write.h"
#include "core/files/project/project.h"

/// Trackway and densities of a project. A file without them has no footprints and the default densities.
namespace zyga::files {

/// To the document's root; nothing for what is as in a new project. Throws FileError for what is not finite.
void addGround(const Project& project, json::Value& root);

inline constexpr std::string_view kTrackwayKey = "trackway", kDensitiesKey = "densities_kg_m3",
                                  kHullFactorsKey = "hull_factors";
void readGround(const JsonPlace& root, Project& project);

}  // namespace zyga::files
