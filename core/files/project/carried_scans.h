#pragma once

#include <optional>
#include <vector>

#include "core/files/project/project_scan.h"
#include "core/solid/facets/carried_marks.h"

namespace zyga::files {

/// What came of carrying marks over to one bone.
struct CarriedTo {
  anatomy::BoneName to, from;
  double misfit = 0;      ///< solid::CarriedMarks::misfit
  std::size_t marks = 0;  ///< put on it
  std::vector<reason::Reason> leftOut;
};

/// Marks that vertebrae still lack are carried over from the nearest vertebra among the scans that has some, as
/// suggestions (Scan::suggested); what is marked stays. Mirrored and straightened scans neither give nor get any.
/// `sculpted`: the animal without scans. What was done when it is cancelled is kept.
std::vector<CarriedTo> carryMissing(std::vector<ProjectScan>& scans, const anatomy::Specimen& sculpted,
                                    const task::Task& task = {});

}  // namespace zyga::files
