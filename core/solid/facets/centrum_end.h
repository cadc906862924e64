#pragma once

#include <numbers>
#include <optional>

#include "core/solid/facets/mid_plane.h"
#include "core/solid/mesh/fit.h"

/// The ends of centra as they are found on meshes: flat, a ball, or the socket of one.
namespace zyga::solid {

// Program defaults, no source.
inline constexpr double kFaceCentred = 0.15;   ///< of the bone's size: scale on which a face lies beside the mid-plane
inline constexpr double kLooksAlong = 0.7071;  ///< cosine of the face of a centrum to the column

/// The end of a centrum as a bone has it.
struct CentrumEnd {
  std::vector<std::uint32_t> triangles;
  Eigen::Vector3d middle = Eigen::Vector3d::Zero(), normal = Eigen::Vector3d::Zero(), rim = Eigen::Vector3d::Zero();
  double area = 0;
  std::optional<SphereFit> ball;  ///< in which it lies better than in a plane
  double confidence = 0;

  double radius() const { return std::sqrt(area / std::numbers::pi); }
};

/// The end that some triangles of a bone of this size (surfaceSize) are: flat, ball or socket, and how sure that is.
CentrumEnd endOf(const TriangleMesh& mesh, std::vector<std::uint32_t> triangles, const MidPlane& midPlane, double size);

/// Middle of the base of a ball that stands so high over its centre, as a share of its radius.
Eigen::Vector3d baseOfBall(const CentrumEnd& end, double share);

/// Whether a ball meets a socket.
bool isJointOfBall(const CentrumEnd& a, const CentrumEnd& b);

/// Which way the rim of a socket looks, unit: a ball tells no axis, but the area vector of all that lies on it hangs on
/// the rim alone. The end's own normal for anything else.
Eigen::Vector3d openingOf(const TriangleMesh& mesh, const CentrumEnd& end);

/// What of a bone lies on the ball of an end and looks along `way` (unit, out of the bone), less than 45 degrees off.
std::vector<std::uint32_t> faceOnBall(const TriangleMesh& mesh, const CentrumEnd& end, const Eigen::Vector3d& way);

/// Centre of rotation at an end, and the middle of its rim.
struct EndPlaces {
  Eigen::Vector3d rim, centre;
};
/// `mate`: the end that it meets, where that is known.
EndPlaces placesOf(const CentrumEnd& end, const CentrumEnd* mate);

/// The base of a ball that sits in a socket lies where the socket's rim does.
void seatBases(CentrumEnd& a, CentrumEnd& b);

}  // namespace zyga::solid
