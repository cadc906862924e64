#pragma once

#include <Eigen/Core>
#include <span>
#include <vector>

#include "core/anatomy/facet.h"
#include "core/reason/reason.h"
#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::solid {

/// Why nothing can be fitted.
namespace fault {

inline constexpr reason::Id kNothingBrushed{"fit.nothing-brushed"};
inline constexpr reason::Id kFlatPatch{"fit.flat-patch"};
inline constexpr reason::Id kTooFewForSphere{"fit.too-few-for-sphere"};
inline constexpr reason::Id kTooFewForRing{"fit.too-few-for-ring"};
inline constexpr reason::Id kRingOnLine{"fit.ring-on-line"};

}  // namespace fault

/// A patch of surface that somebody brushed: one point a triangle with its area, and the triangles' corners.
struct BrushedPatch {
  std::vector<Eigen::Matrix3d> triangles;            ///< corners in columns
  Eigen::Vector3d normal = Eigen::Vector3d::Zero();  ///< area-weighted mean, out of the bone, not unit

  double area() const;
};

/// The named triangles of a mesh. Throws std::out_of_range for one that is not there.
BrushedPatch patchOf(const TriangleMesh& mesh, std::span<const std::uint32_t> triangles);

/// Triangles around a point of the surface: those whose middle lies within `radius` of it, connected to the nearest of
/// them over shared vertices and turned less than `mostTurn` (rad) from `normal`; what one dab of a brush covers.
std::vector<std::uint32_t> brushTriangles(const TriangleMesh& mesh, const Eigen::Vector3d& point,
                                          const Eigen::Vector3d& normal, double radius, double mostTurn);

struct FitQuality {
  double rms = 0;   ///< of the distances of what was kept, in the mesh's unit
  double max = 0;   ///< greatest of them
  double kept = 1;  ///< share of the area (or of the points) that was kept; the rest was trimmed as not belonging
};

struct PlaneFit {
  Eigen::Vector3d centre = Eigen::Vector3d::Zero();
  Eigen::Vector3d normal = Eigen::Vector3d::UnitZ();  ///< unit, out of the bone
  FitQuality quality;
};

/// Total least squares over the patch's area. What lies farther from the plane than three times the robust spread
/// (1.4826 x median distance) is left out and the fit repeated. Throws reason::Failure for an empty patch.
PlaneFit fitPlane(const BrushedPatch& patch);

struct SphereFit {
  Eigen::Vector3d centre = Eigen::Vector3d::Zero();
  double radius = 0;
  bool hollow = false;     ///< the surface faces the centre, as in a cotyle
  double centreError = 0;  ///< standard error of the centre along its worst direction; large for a shallow cap
  FitQuality quality;
};

/// Least squares of the distances to the sphere (Gauss-Newton from the algebraic fit), trimmed as a plane is. Throws
/// reason::Failure for less than four triangles or a patch that is flat within rounding.
SphereFit fitSphere(const BrushedPatch& patch);

enum class OutlineBy { Ellipse, Hull };

struct FacetFit {
  anatomy::Facet facet;
  Eigen::Vector3d longAxis = Eigen::Vector3d::UnitX();  ///< unit, in the plane
  double length = 0, width = 0;                         ///< of the ellipse, along and across its long axis
  FitQuality quality;
};

/// Plane and outline of an articular facet. The ellipse has the patch's own area moments (half axes twice the spread);
/// the hull is the convex hull of what was kept. `slide` is where the facet slides, any length, taken into the plane;
/// when it is zero or stands on the plane the long axis serves. Throws as fitPlane does.
FacetFit fitFacet(const BrushedPatch& patch, anatomy::FacetRole role, const Eigen::Vector3d& slide,
                  OutlineBy by = OutlineBy::Ellipse);

struct CircleFit {
  Eigen::Vector3d centre = Eigen::Vector3d::Zero();
  Eigen::Vector3d normal = Eigen::Vector3d::UnitZ();  ///< unit, either way
  double radius = 0;
  double rms = 0;  ///< distance of the points from the circle, in the points' unit
};

/// The circle through places clicked round a rim: plane by total least squares, circle in it by the algebraic fit
/// (Coope 1993, J. Optim. Theory Appl. 76:381). Throws reason::Failure for fewer than three points, or when they
/// lie along one line.
CircleFit fitCircle(std::span<const Eigen::Vector3d> points);

}  // namespace zyga::solid
