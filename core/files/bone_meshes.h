#pragma once

#include "core/files/mesh_export.h"

namespace zyga::files {

/// The meshes of a project's bones in their frames: sculpted, and for a scanned bone its scan, at full resolution and
/// in levels for display. Empty when cancelled.
BoneMeshes boneMeshes(const Project& project, const solid::SculptOptions& options);

/// The mesh of a scan in its bone's frame, facing outwards.
solid::TriangleMesh meshInBone(const ProjectScan& scan);

}  // namespace zyga::files
