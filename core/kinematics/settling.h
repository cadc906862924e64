#pragma once

#include <Eigen/Geometry>
#include <array>

namespace zyga::kinematics {

/// How the two bones of a joint settle against each other once their rotation is given: by a small translation inside
/// the cartilage between the centra, to the least misfit of facets and faces. Minimised is
///
///   E(d) = sum over both sides of (g_s + n_s . d)^2 - k b^2 ln(1 - |d|^2 / b^2),
///
/// where g_s is by how much the facets of one side stand farther apart (m; negative: closer) than in the neutral
/// articulation, measured along n_s, the mean of the prezyg's normal and the postzyg's reversed one, and d moves the
/// bone with the postzygs. The faces of the centra are held by k: facets, which carry little cartilage, are stiff
/// against it. The second term is k |d|^2 for small shifts and grows without end towards the bound b, as cartilage
/// stiffens when it is squeezed; so no shift reaches b, and d depends smoothly on the rotation, as a search for a pose
/// needs. Its form is a program default, no source. In the prezyg bone's frame, m.
struct Settling {
  struct Side {
    Eigen::Vector3d prezyg = Eigen::Vector3d::Zero();    ///< centre, prezyg bone's frame
    Eigen::Vector3d normal = Eigen::Vector3d::UnitZ();   ///< of the prezyg, unit, out of its bone
    Eigen::Vector3d postzyg = Eigen::Vector3d::Zero();   ///< centre, postzyg bone's frame
    Eigen::Vector3d opposed = Eigen::Vector3d::UnitZ();  ///< the postzyg's normal reversed, postzyg bone's frame
    double gapAtRest = 0;                                ///< m
    bool operator==(const Side&) const = default;
  };
  std::array<Side, 2> sides;
  double bound = 0;               ///< m; 0: the bones do not settle
  bool distalHasPostzygs = true;  ///< in neck and trunk; in the tail the proximal bone has them
  bool hasFacets = false;         ///< the sides are those of a joint
  bool operator==(const Settling&) const = default;
};

/// The stiffness k of the faces beside that of the facets, which is 1. Program default, no source.
inline constexpr double kFaceStiffness = 0.1;

/// By how much each side's facets stand apart, less `gapAtRest`, m; left and right.
Eigen::Vector2d facetMisfit(const Settling& settling, const Eigen::Isometry3d& X_PrePost);

/// The translation d that the bones settle by, prezyg bone's frame, m.
Eigen::Vector3d settled(const Settling& settling, const Eigen::Isometry3d& X_PrePost);

}  // namespace zyga::kinematics
