#pragma once

#include <Eigen/Geometry>
#include <string>

#include "core/anatomy/specimen.h"

namespace zyga::range {

/// Where bones enter each other deepest.
struct ContactPlace {
  double depth = 0;   ///< m; 0 and below: nothing touches
  std::string parts;  ///< "spines of C6 and C7"
};

/// Knows how deep the two bones of a joint, and what has grown onto them, enter each other away from their articulating
/// surfaces. Searches ask it sparingly: a question may take a hundred times as long as the facets do. May be asked from
/// several threads at once.
class NeighbourContact {
 public:
  virtual ~NeighbourContact() = default;
  /// `X_PD`: the distal bone's frame in the proximal bone's frame.
  virtual ContactPlace deepest(anatomy::JointIndex joint, const Eigen::Isometry3d& X_PD) const = 0;
};

}  // namespace zyga::range
