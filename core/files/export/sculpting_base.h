#pragma once

#include <optional>

#include "core/files/export/mesh_export.h"
#include "core/solid/flesh/guide_thickness.h"
#include "core/solid/watertight/watertight.h"
#include "core/task/task.h"

/// What is made for sculptors beside the single bones.
namespace zyga::files {

struct SculptingBase {
  bool watertight = false;         ///< the skeleton as one closed surface, instead of the bones
  double voxel = 0;                ///< m; 0 lets the size of the animal decide
  std::size_t triangles = 300000;  ///< about so many in the closed surface, a quarter as many in the guide
  bool fillJoints = false;
  bool bodyGuide = false;  ///< an envelope that is not anatomy
  bool any() const { return watertight || bodyGuide; }
};

/// What came out and what was left out.
struct SculptedSurfaces {
  struct Size {
    std::size_t triangles = 0;
    double volume = 0;  ///< m^3
  };
  std::vector<NamedSurface> surfaces;         ///< none when cancelled; without notes, which whoever writes them adds
  std::optional<solid::Watertight> skeleton;  ///< all but its mesh, which is among the surfaces
  std::size_t skeletonTriangles = 0;
  std::optional<Size> guide;
};

/// Names of the surfaces.
inline constexpr std::string_view kWatertightName = "skeleton_watertight";

/// Throws reason::Failure as solid::watertight and solid::bodyGuide do.
SculptedSurfaces sculptingBase(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB,
                               const BoneMeshes& meshes, const SculptingBase& wanted,
                               const solid::GuideThickness& thickness, const task::Task& task = {});

}  // namespace zyga::files
