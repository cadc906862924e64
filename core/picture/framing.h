#pragma once

#include "core/picture/lens_view.h"

/// What a picture shows and how large it is, before anything is traced.
namespace zyga::picture {

/// Width over height of a picture through a lens: of film, 36 by 24 mm.
inline constexpr double kLensAspect = 1.5;

/// Width over height that the animal (its size along the world's axes, m) asks for from this side, within what still
/// makes a picture.
double aspectOf(StandardView view, const Eigen::Vector3d& size);

/// Rows of a picture of so many columns; at least 1.
int heightOf(int width, double aspect);

/// From where a person looks who chooses a standard side, rad: 0 from in front, 90 degrees from the left. None from
/// above and below, where nobody stands.
std::optional<double> turnOf(StandardView view);

/// The standard side from which a person looks who has turned so far (within a twentieth of a degree).
std::optional<StandardView> sideAt(double turn);

/// Corners of the boxes around the bones, in the world, m.
std::vector<Eigen::Vector3d> cornersOf(const std::vector<Instance>& instances);
/// The box around the bones, in the world, m.
Eigen::AlignedBox3d boundsOf(const std::vector<Instance>& instances);

/// Whether some of the points are outside the picture or behind the eye. aspect = width / height.
bool cropped(const Camera& camera, double aspect, const std::vector<Eigen::Vector3d>& points);

/// Whether any of the bones' surface lies in the picture before the eye; none does in an empty one.
bool anyInside(const Camera& camera, double aspect, const std::vector<Instance>& instances);

}  // namespace zyga::picture
