#pragma once

#include <atomic>
#include <functional>

#include "core/crew/crew.h"
#include "core/kinematics/placement.h"
#include "core/range/assumptions.h"

namespace zyga::study {

/// What a study looks at; refers to everything.
struct Subject {
  const anatomy::Specimen& specimen;
  const kinematics::Articulation& articulation;  ///< of the specimen under the assumptions
  const range::Assumptions& assumptions;
  const kinematics::Pose& pose;  ///< the present one; gives everything beside the neck
};

/// What the caller of a longer study wants to know and may ask of it.
struct Watch {
  const std::atomic<bool>* cancel = nullptr;   ///< the study ends soon after it turns true, with an empty result
  std::function<void(double share)> progress;  ///< share of the work done, 0 to 1; called from the study's own threads

  bool cancelled() const { return cancel && *cancel; }
  void tell(double share) const {
    if (progress) progress(share);
  }
  /// For a crew of so many threads; 0: one a core.
  crew::Orders orders(unsigned threads = 0) const { return {threads, cancel, crew::inShares(progress)}; }
};

}  // namespace zyga::study
