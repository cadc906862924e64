#pragma once

#include "core/files/disk/file_error.h"

/// What may be wrong with a project. Words and keys of the file are Text, as they stand there; its bounds too, in the
/// unit of the file.
namespace zyga::files::fault {

inline constexpr Id kNotAProject{"project.not-a-project", 2};   ///< file, the schema it should name
inline constexpr Id kNewerVersion{"project.newer-version", 2};  ///< its version, the newest that is read
inline constexpr Id kNoSuchVersion{"project.no-such-version", 1};
inline constexpr Id kTableIncomplete{"project.table-incomplete", 1};   ///< cause
inline constexpr Id kNoProjectInside{"project.no-project-inside", 1};  ///< the entry it should have
inline constexpr Id kEntryFault{"project.entry-fault", 2};             ///< entry, cause

// Numbers and words in their places.
inline constexpr Id kNotAmong{"project.not-among", 2};  ///< a word, those that are known
inline constexpr Id kNegative{"project.negative"};
inline constexpr Id kOneOf{"project.one-of", 1};  ///< the key that says the same in another unit
inline constexpr Id kNotAboveZero{"project.not-above-zero"};
inline constexpr Id kOutOfBounds{"project.out-of-bounds", 2};
inline constexpr Id kZeroOrBounds{"project.zero-or-bounds", 2};
inline constexpr Id kNotUnitLength{"project.not-unit-length"};
inline constexpr Id kNotRotation{"project.not-rotation"};
inline constexpr Id kFlatRows{"project.flat-rows"};
inline constexpr Id kCellForm{"project.cell-form"};

// The animal.
inline constexpr Id kNoBone{"project.no-bone", 1};
inline constexpr Id kNoEvidence{"project.no-evidence", 1};
inline constexpr Id kNoPlan{"project.no-plan", 1};
inline constexpr Id kNoMeasure{"project.no-measure"};
inline constexpr Id kNoBoneInPlan{"project.no-bone-in-plan", 1};
inline constexpr Id kBoneTwice{"project.bone-twice", 1};
inline constexpr Id kNoJoint{"project.no-joint", 1};
inline constexpr Id kJointTwice{"project.joint-twice"};
inline constexpr Id kNoClaimKind{"project.no-claim-kind", 2};  ///< a word, those that are known

// Its scans.
inline constexpr Id kTwoScans{"project.two-scans"};
inline constexpr Id kOffFacetPlane{"project.off-facet-plane"};
inline constexpr Id kShortOutline{"project.short-outline"};
inline constexpr Id kScanElsewhere{"project.scan-elsewhere"};
inline constexpr Id kScanChanged{"project.scan-changed"};
inline constexpr Id kScanForeign{"project.scan-foreign"};
inline constexpr Id kScanCutShort{"project.scan-cut-short"};
inline constexpr Id kScanDamaged{"project.scan-damaged"};

/// Cannot be saved: what is not finite.
inline constexpr Id kNotFinite{"project.not-finite", 1};
inline constexpr Id kAngleOf{"project.angle-of", 1};      ///< joint
inline constexpr Id kMeasureOf{"project.measure-of", 2};  ///< key of the measure, bone

}  // namespace zyga::files::fault
