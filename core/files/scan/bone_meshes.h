#pragma once

#include <map>

#include "core/files/export/mesh_export.h"
#include "core/range/contact/contact.h"

namespace zyga::files {

/// Levels for display of scans, in their own axes, by mesh: what takes long and does not change while they are marked.
using ScanLevels = std::map<std::shared_ptr<const solid::TriangleMesh>, std::shared_ptr<const solid::BoneMesh>>;

/// The meshes of a project's bones in their frames: sculpted, and for a scanned bone its scan, at full resolution and
/// in levels for display. Empty when cancelled.
BoneMeshes boneMeshes(const Project& project, const solid::SculptOptions& options);

/// The two steps of boneMeshes: what the table gives, and the scans in the places of what it gave. `levels` is what is
/// known of earlier scans and afterwards holds those of this project.
BoneMeshes sculptedMeshes(const Project& project, const solid::SculptOptions& options);
/// The same for a first look, see solid::previewAll.
solid::PreviewMeshes previewMeshes(const Project& project, const solid::SculptOptions& options);
BoneMeshes withScans(BoneMeshes sculpted, const Project& project, ScanLevels& levels, const task::Task& task = {});

/// Level sets by the mesh they are of.
using FieldsByMesh = std::map<std::shared_ptr<const solid::BoneMesh>, std::shared_ptr<const anatomy::SignedDistance>>;

/// The shapes of the bones that may meet, ready to be asked which of them enter each other: level sets of `meshes`, had
/// back from the cache folder or made, which takes seconds, and kept there. `known` is what there is of earlier meshes
/// and afterwards holds what there is of these. Null when cancelled.
std::shared_ptr<const range::ContactModel> contactModel(const anatomy::Specimen& specimen, const BoneMeshes& meshes,
                                                        const std::filesystem::path& cacheFolder,
                                                        const task::Task& task, FieldsByMesh& known);

/// Where window and verbs keep sculpted bones and their level sets: the folder "zygapose" in the user's cache folder
/// ($XDG_CACHE_HOME or ~/.cache; XDG base directory specification 0.8). Made if need be; empty when it cannot be
/// written. Bounded: solid::BoneCache::kLimit.
std::filesystem::path boneCacheFolder();

/// The mesh of a scan in its bone's frame, facing outwards.
solid::TriangleMesh meshInBone(const ProjectScan& scan);

}  // namespace zyga::files
