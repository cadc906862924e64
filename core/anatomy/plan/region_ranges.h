#pragma once

#include <array>
#include <string_view>

#include "core/anatomy/specimen.h"

namespace zyga::anatomy {

/// How many vertebrae a region may have, and what a table calls them.
struct CountRange {
  std::string_view word;  ///< as in "# cervicals: 13"
  BoneKind kind;
  int RegionCounts::*count;
  int least, most;
};

inline constexpr std::array<CountRange, 4> kCounts{{{"cervicals", BoneKind::Cervical, &RegionCounts::cervical, 2, 19},
                                                    {"dorsals", BoneKind::Dorsal, &RegionCounts::dorsal, 9, 14},
                                                    {"sacrals", BoneKind::Sacral, &RegionCounts::sacral, 4, 6},
                                                    {"caudals", BoneKind::Caudal, &RegionCounts::caudal, 10, 90}}};

}  // namespace zyga::anatomy
