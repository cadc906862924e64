#pragma once

#include <atomic>
#include <functional>

#include "core/files/export/mesh_export.h"
#include "core/solid/flesh/guide_thickness.h"

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

/// "Not an engineering document..." for output that may be made into something that stands.
inline constexpr std::string_view kFabricationCaution =
    "Not an engineering document; local codes and licensed practice decide.";

struct SculptedSurfaces {
  std::vector<NamedSurface> surfaces;  ///< none when cancelled
  std::vector<std::string> told;       ///< what came out and what was left out, a sentence each
};

/// Throws std::invalid_argument as solid::watertight does.
SculptedSurfaces sculptingBase(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB,
                               const BoneMeshes& meshes, const SculptingBase& wanted,
                               const solid::GuideThickness& thickness,
                               const std::function<void(double share)>& progress = {},
                               const std::atomic<bool>* cancel = nullptr);

/// "neck 50, neck base 120, ... mm; tail 1.35 x bone width, 1.2 x bone height".
std::string thicknessInWords(const solid::GuideThickness& thickness);

}  // namespace zyga::files
