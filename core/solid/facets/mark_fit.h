#pragma once

#include <optional>

#include "core/anatomy/marks/mark_doubts.h"
#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// A scan's surface, ready to be asked how marks lie on it. Each question goes over all triangles, a millisecond for
/// some hundred thousand. The mesh must live as long.
class MarkedSurface {
 public:
  explicit MarkedSurface(const TriangleMesh& mesh);

  double size() const { return size_; }  ///< surfaceSize of the mesh, in its unit
  /// To the nearest point of the surface; infinite for an empty mesh.
  double distance(const Eigen::Vector3d& p) const;
  /// How squarely the surface there looks the way of `normal`: cosine, of the nearest triangle.
  double facing(const Eigen::Vector3d& p, const Eigen::Vector3d& normal) const;

  struct UnderFacet {
    double residual = 0;  ///< rms distance of the surface from the facet's plane
    double covered = 0;   ///< share of its outline over which there is surface that looks its way
  };
  /// What lies within the outline of a facet, no farther from its plane than a quarter of the root of its area.
  UnderFacet under(const anatomy::Facet& facet) const;

 private:
  struct Nearest {
    double distance;
    std::uint32_t triangle;
  };
  Nearest nearest(const Eigen::Vector3d& p) const;

  const TriangleMesh& mesh_;
  std::vector<Eigen::Vector3d> middles_;
  std::vector<double> radii_;  ///< of balls about the middles that hold the triangles
  double size_;
};

/// All doubts about the marks of a scan: those of the marks among each other (anatomy::doubtsAmongMarks) and those that
/// its surface (m, the scan's axes) gives. Where that says what is wrong with one of a pair, the pair is not told to
/// disagree as well.
std::vector<anatomy::MarkDoubt> markDoubts(const anatomy::Scan& scan, const anatomy::Bone& sculpted,
                                           const MarkedSurface& surface);

/// Facets that were mirrored get the residual of the surface on their own side and count as measured; those under which
/// there is too little surface stay as they are. How many were measured.
int measureMirrored(anatomy::Scan& scan, const MarkedSurface& surface);

}  // namespace zyga::solid
