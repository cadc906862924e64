#pragma once

#include <filesystem>

#include "core/files/scan/bone_meshes.h"

namespace zyga::app {

/// $XDG_CACHE_HOME/zygapose or ~/.cache/zygapose (XDG base directory specification 0.8), made if need be; empty when it
/// cannot be written.
std::filesystem::path cacheFolder();

/// The bones' meshes, scans included, sculpted ones from the cache where they are there. Shows progress on stderr when
/// that is a terminal. `triangles` is about what each sculpted bone gets. Says on stderr which scans are not there.
files::BoneMeshes sculpt(const files::Project& project, std::size_t triangles = solid::SculptOptions().triangleBudget);

}  // namespace zyga::app
