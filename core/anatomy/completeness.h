#pragma once

#include <cstddef>

#include "core/anatomy/specimen.h"

namespace zyga::anatomy {

/// How much of a skeleton is known from bones that were found.
struct Completeness {
  std::size_t bones = 0;         ///< in the whole skeleton
  std::size_t found = 0;         ///< found, deformed ones included
  std::size_t withMirrored = 0;  ///< found, or the bone of the other side is: a left bone counts for its right

  double share() const { return bones > 0 ? static_cast<double>(found) / static_cast<double>(bones) : 0; }
  double shareWithMirrored() const {
    return bones > 0 ? static_cast<double>(withMirrored) / static_cast<double>(bones) : 0;
  }
};

/// Counted as published skeletons are: bones present of all bones, plain and with mirror images (Lacovara et al. 2014,
/// Sci. Rep. 4:6196).
Completeness completeness(const Specimen& specimen);

}  // namespace zyga::anatomy
