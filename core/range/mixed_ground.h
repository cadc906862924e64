#pragma once

#include <optional>

#include "core/anatomy/specimen.h"

namespace zyga::range {

/// The bone of a joint whose facets are inferred beside a marked scan's; none where both bones or neither are scans,
/// where the scan's facets of this joint are not marked (it then cannot be articulated), and where no facets judge.
std::optional<anatomy::BoneIndex> inferredNeighbour(const anatomy::Specimen& specimen, anatomy::JointIndex joint);

}  // namespace zyga::range
