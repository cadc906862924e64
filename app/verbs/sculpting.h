#pragma once

#include <filesystem>

#include "core/files/mesh_export.h"

namespace zyga::app {

/// $XDG_CACHE_HOME/zygapose or ~/.cache/zygapose (XDG base directory specification 0.8), made if need be; empty when it
/// cannot be written.
std::filesystem::path cacheFolder();

/// The bones' meshes, from the cache where they are there. Shows progress on stderr when that is a terminal.
/// `triangles` is about what each bone gets.
files::BoneMeshes sculpt(const anatomy::Specimen& specimen,
                         std::size_t triangles = solid::SculptOptions().triangleBudget);

}  // namespace zyga::app
