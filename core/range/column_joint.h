#pragma once

#include <array>
#include <optional>

#include "core/anatomy/specimen.h"

namespace zyga::range {

/// The facets of one side of a joint.
struct SideFacets {
  const anatomy::Facet* prezyg = nullptr;   ///< on the caudal bone, facing up
  const anatomy::Facet* postzyg = nullptr;  ///< on the cranial bone, facing down
  explicit operator bool() const { return prezyg && postzyg; }
};

/// Facets of a joint, left then right. Points into the specimen. Empty pairs where either bone lacks its facet.
std::array<SideFacets, 2> facetsOf(const anatomy::Specimen& specimen, anatomy::JointIndex joint);

/// Distal in proximal frame turned into postzyg bone in prezyg bone's frame. In the neck the postzygs are on the
/// distal bone, in the tail on the proximal one.
class PrezygView {
 public:
  PrezygView(const anatomy::Specimen& specimen, anatomy::JointIndex joint)
      : distalIsCranial_(specimen.cranialBone(joint) == specimen[joint].distal) {}
  Eigen::Isometry3d operator()(const Eigen::Isometry3d& X_PD) const { return distalIsCranial_ ? X_PD : X_PD.inverse(); }

 private:
  bool distalIsCranial_;
};

}  // namespace zyga::range
