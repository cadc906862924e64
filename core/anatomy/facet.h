#pragma once

#include <Eigen/Geometry>
#include <vector>

#include "core/reason/reason.h"

namespace zyga::anatomy {

enum class FacetRole { PrezygLeft, PrezygRight, PostzygLeft, PostzygRight };

/// A planar articular patch on one bone, in the bone's frame (m). The outline is a convex polygon, counter-clockwise
/// seen from the tip of `normal`, in the plane coordinates (along `slide`, along `across()`), centred on `centre`.
struct Facet {
  FacetRole role = FacetRole::PrezygLeft;
  Eigen::Vector3d centre = Eigen::Vector3d::Zero();
  Eigen::Vector3d normal = Eigen::Vector3d::UnitZ();  ///< unit, out of the bone
  Eigen::Vector3d slide = Eigen::Vector3d::UnitX();   ///< unit, in the plane: direction of sliding
  std::vector<Eigen::Vector2d> outline;
  /// Radius of curvature along `slide`, m; 0 when flat or not known. Positive where the centre of curvature lies below
  /// the facets, on the side of the centra: the prezyg is rounded and the postzyg that rides on it hollow.
  double radius = 0;

  Eigen::Vector3d across() const { return normal.cross(slide); }
  /// Corner of the outline in the bone's frame, m.
  Eigen::Vector3d corner(std::size_t i) const;
  /// Extent of the outline along `slide`, m.
  double length() const;
  /// Extent of the outline across `slide`, m.
  double width() const;
};

/// Ellipse of the given full length and width (m) as a polygon of `corners` points whose area is the ellipse's.
std::vector<Eigen::Vector2d> ellipseOutline(double length, double width, int corners = 48);

/// The same on the other side.
FacetRole mirrored(FacetRole role);
/// Its mirror image in the plane y = 0, with the role of the other side.
Facet mirrored(const Facet& facet);

/// "facet.left-prezygapophyseal"; ui/words says it.
reason::Term termOf(FacetRole role);

bool isPrezyg(FacetRole role);
bool isLeft(FacetRole role);

}  // namespace zyga::anatomy
