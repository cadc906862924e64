#pragma once

#include "core/range/contact/neighbour_contact.h"
#include "core/range/findings.h"

namespace zyga::range {

/// Levels of a joint over dorsiflexion and lateral flexion, its torsion as it is. The window fits what is supported,
/// with a margin around it and zero inside it; it does not follow the present angles, which may lie outside.
struct SupportedMap {
  int size = 0;                    ///< cells along either side; 0 for a joint that cannot move or that nothing judges
  double ventral = 0, dorsal = 0;  ///< lower and upper edge of the window in dorsiflexion, rad
  double right = 0, left = 0;      ///< the edges in lateral flexion, rad
  std::vector<Level> cells;  ///< size * size, rows of constant dorsiflexion from ventral up, right to left in each

  Level at(int dorsiflexion, int lateral) const {
    return cells[static_cast<std::size_t>(dorsiflexion * size + lateral)];
  }
  /// Middle of a cell, rad.
  double dorsiflexionOf(int row) const { return ventral + (dorsal - ventral) * (row + 0.5) / size; }
  double lateralOf(int column) const { return right + (left - right) * (column + 0.5) / size; }
  bool operator==(const SupportedMap&) const = default;
};

/// Each cell is judged in its middle, as levelAt does. On all cores; a few milliseconds for 48 cells a side. With
/// `contact`, cells in which the bones enter each other are beyond.
SupportedMap supportedMap(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                          const Assumptions& assumptions, kinematics::JointIndex joint, const Eigen::Vector3d& angles,
                          int size = 48, const NeighbourContact* contact = nullptr);

}  // namespace zyga::range
