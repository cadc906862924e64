#pragma once

#include "core/files/scan/bone_meshes.h"

namespace zyga::app {

/// The bones' meshes, scans included, sculpted ones from the cache where they are there. Shows progress on stderr when
/// that is a terminal. `triangles` is about what each sculpted bone gets. Says on stderr which scans are not there.
files::BoneMeshes sculpt(const files::Project& project, std::size_t triangles = solid::SculptOptions().triangleBudget);
/// The same of some bones: `only` by bone, empty for all.
files::BoneMeshes sculpt(const files::Project& project, const std::vector<bool>& only);

/// The shapes of a project's bones with these meshes, ready to be asked which of them enter each other, from the cache
/// where they are there.
std::shared_ptr<const range::ContactModel> contactShapes(const files::Project& project,
                                                         const files::BoneMeshes& meshes);

/// A task that counts up in percent on one line of stderr, where that is a terminal. `what`: marked for translation.
task::Task taskAtTerminal(const char* what);

}  // namespace zyga::app
