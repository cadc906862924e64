#pragma once

#include "core/solid/facets/suggest.h"

namespace zyga::solid {

/// Plane, outline and bending of a patch; the weights that its triangles have in them.
class PatchFitter {
 public:
  /// `gaps`: of all triangles of the surface, see FaceSurface::Opposed.
  PatchFitter(const TriangleMesh& mesh, const FaceSurface& surface, const std::vector<double>& gaps, double boneSize);

  /// The patch without what does not belong to it: triangles that lie farther from its plane, or whose distance from
  /// the other bone differs more from the usual one, than three times the robust spread (1.4826 x median); what still
  /// hangs together with most of it.
  std::vector<std::uint32_t> trimmed(std::span<const std::uint32_t> patch) const;
  double medianGap(std::span<const std::uint32_t> patch) const;
  /// `pivot`: the centre of rotation.
  SuggestedFacet fit(std::span<const std::uint32_t> patch, anatomy::FacetRole role, const ColumnAxes& axes,
                     const Eigen::Vector3d& pivot) const;

 private:
  struct Plane {
    Eigen::Vector3d point, normal;
  };
  Plane planeOf(std::span<const std::uint32_t> patch, const std::vector<double>& weights) const;
  /// Of some values over a patch, at least what roughness makes.
  double spreadOf(std::span<const std::uint32_t> patch, const std::vector<double>& sizes) const;
  std::vector<double> weightsOf(std::span<const std::uint32_t> patch) const;
  std::vector<Eigen::Vector2d> outlineOf(std::span<const std::uint32_t> patch, const anatomy::Facet& facet) const;

  const TriangleMesh& mesh_;
  const FaceSurface& surface_;
  const std::vector<double>& gaps_;
  double boneSize_;
};

}  // namespace zyga::solid
