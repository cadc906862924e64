#pragma once

#include "core/reason/reason.h"

/// What can be wrong with a table of footprints beyond what any table can have (core/anatomy/tables/table_reasons.h),
/// and what mends it. ui/words has the wordings.
namespace zyga::study::track {

using reason::Id;

inline constexpr Id kNoPrint{"track.no-print"};
inline constexpr Id kNoDistances{"track.no-distances"};
inline constexpr Id kColumnNotUsed{"track.column-not-used", 1};
inline constexpr Id kSaysNothing{"track.says-nothing"};
inline constexpr Id kNoFoot{"track.no-foot"};
inline constexpr Id kUnclearSide{"track.unclear-side", 1};
inline constexpr Id kNoDistance{"track.no-distance", 2};    ///< typed, its unit
inline constexpr Id kNoTriangle{"track.no-triangle", 3};    ///< pace, next pace, stride
inline constexpr Id kSameSide{"track.same-side", 2};        ///< the two prints
inline constexpr Id kPacesDiffer{"track.paces-differ", 3};  ///< pace, name of the print before, its next pace

inline constexpr Id kWritePrint{"track.write-print"};
inline constexpr Id kWriteHeader{"track.write-header"};
inline constexpr Id kWriteUnit{"track.write-unit", 3};  ///< titles in cm, mm and m
inline constexpr Id kNothing{"track.nothing"};
inline constexpr Id kWriteFoot{"track.write-foot"};
inline constexpr Id kCheckTriangle{"track.check-triangle"};
inline constexpr Id kPrintMissing{"track.print-missing", 1};  ///< the print before
inline constexpr Id kCheckBoth{"track.check-both"};

}  // namespace zyga::study::track
