#pragma once

#include <array>
#include <optional>

#include "core/anatomy/specimen.h"

namespace zyga::anatomy {

/// When a vertebra lies horizontal. Four definitions are published (Taylor & Wedel 2022, J. Paleontol. Techniques
/// 25:1), in the order in which they list them; on one bone they differ by tens of degrees. They prefer the neural
/// canal's floor.
enum class HorizontalBy {
  CentrumAxis,   ///< long axis of the centrum: from the middle of its caudal rim to that of its cranial rim
  CentrumFaces,  ///< faces of the centrum upright: square to the mean of both
  CanalFloor,    ///< neural canal level: the x axis of the bone's frame (landmarks.h)
  Articulation   ///< two copies of the vertebra, held alike and articulated: the line that joins any point of both
};
inline constexpr std::array<HorizontalBy, 4> kHorizontalBy{HorizontalBy::CanalFloor, HorizontalBy::CentrumAxis,
                                                           HorizontalBy::CentrumFaces, HorizontalBy::Articulation};
inline constexpr HorizontalBy kUsualHorizontal = HorizontalBy::CanalFloor;

/// Unit vector in the bone's frame, in its mid-plane, that points cranially and lies level when the vertebra is
/// horizontal by this definition; none where the bone is no vertebra or lacks what the definition asks for. A bone of
/// a table has its canal along its centrum and its faces leaning alike, so that the first three agree. A scan lies by
/// the two openings of its canal, or by its rims where they are not marked; its faces are those of the bone that it
/// replaces. Articulation takes the mean of three steps that bring a copy onto the vertebra, each as good as the
/// others (program default, no source): cotyle to condyle, left and right postzygapophysis to prezygapophysis.
std::optional<Eigen::Vector3d> cranialDirection(const Specimen& specimen, BoneIndex bone, HorizontalBy by);

}  // namespace zyga::anatomy
