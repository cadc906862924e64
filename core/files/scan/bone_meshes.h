#pragma once

#include <map>

#include "core/files/export/mesh_export.h"

namespace zyga::files {

/// Levels for display of scans, in their own axes, by mesh: what takes long and does not change while they are marked.
using ScanLevels = std::map<std::shared_ptr<const solid::TriangleMesh>, std::shared_ptr<const solid::BoneMesh>>;

/// The meshes of a project's bones in their frames: sculpted, and for a scanned bone its scan, at full resolution and
/// in levels for display. Empty when cancelled.
BoneMeshes boneMeshes(const Project& project, const solid::SculptOptions& options);

/// The two steps of boneMeshes: what the table gives, and the scans in the places of what it gave. `levels` is what is
/// known of earlier scans and afterwards holds those of this project.
BoneMeshes sculptedMeshes(const Project& project, const solid::SculptOptions& options);
/// The same for a first look, see solid::sketchAll.
solid::Sketch sketchedMeshes(const Project& project, const solid::SculptOptions& options);
BoneMeshes withScans(BoneMeshes sculpted, const Project& project, ScanLevels& levels,
                     const std::atomic<bool>* cancel = nullptr);

/// The mesh of a scan in its bone's frame, facing outwards.
solid::TriangleMesh meshInBone(const ProjectScan& scan);

}  // namespace zyga::files
