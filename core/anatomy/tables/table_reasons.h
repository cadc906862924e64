#pragma once

#include "core/reason/reason.h"

/// What can be wrong with a table, and what mends it. ui/words has the wordings.
namespace zyga::anatomy::table {

using reason::Id;

// Causes. What was typed is a Text, so are ids of bones and titles of columns.
inline constexpr Id kEmpty{"table.empty"};
inline constexpr Id kUnknownPlan{"table.unknown-plan", 1};
inline constexpr Id kImpossibleCount{"table.impossible-count", 2};  ///< typed, term of the vertebrae
inline constexpr Id kNoColumn{"table.no-column", 1};
inline constexpr Id kSecondColumn{"table.second-column", 1};
inline constexpr Id kCondyleUnclear{"table.condyle-unclear", 1};
inline constexpr Id kUnknownMeasure{"table.unknown-measure", 1};
inline constexpr Id kNoUnit{"table.no-unit", 1};
inline constexpr Id kWrongUnit{"table.wrong-unit", 2};        ///< typed, term of the measure
inline constexpr Id kSurplusCells{"table.surplus-cells", 2};  ///< cells, titles
inline constexpr Id kRowWithoutBone{"table.row-without-bone"};
inline constexpr Id kUnknownBone{"table.unknown-bone", 1};
inline constexpr Id kBoneTwice{"table.bone-twice", 2};  ///< bone, line of the other
inline constexpr Id kUnknownEvidence{"table.unknown-evidence", 1};
inline constexpr Id kNotANumber{"table.not-a-number", 1};
inline constexpr Id kNotALength{"table.not-a-length", 2};  ///< typed, its unit
inline constexpr Id kTooLong{"table.too-long", 2};         ///< typed, its unit
inline constexpr Id kBeyondRightAngle{"table.beyond-right-angle", 1};
inline constexpr Id kShorterWithCondyle{"table.shorter-with-condyle", 1};
inline constexpr Id kImpossibleShape{"table.impossible-shape", 2};         ///< bone, length over height
inline constexpr Id kFacetWithoutWidth{"table.facet-without-width", 1};    ///< bone
inline constexpr Id kFacetWithoutHeight{"table.facet-without-height", 1};  ///< bone
/// Bone, term of the measure, its value, what bones around it and plan say.
inline constexpr Id kOddFacet{"table.odd-facet", 4};
/// Count, term of the vertebrae, the plan's count, length over the plan's.
inline constexpr Id kCountStretches{"table.count-stretches", 4};
inline constexpr Id kMeasureNotUsed{"table.measure-not-used", 2};  ///< title, bone
inline constexpr Id kTotalWithoutLength{"table.total-without-length", 1};
inline constexpr Id kSecondRow{"table.second-row", 1};
inline constexpr Id kBeyondCount{"table.beyond-count", 3};  ///< bone, count, term of the vertebrae
inline constexpr Id kNoSuchBone{"table.no-such-bone", 1};
/// Bone, term of the measure, its value, what was expected, by what (an Inner of one of the four below).
inline constexpr Id kImplausible{"table.implausible", 5};
inline constexpr Id kByNeighbours{"table.by-neighbours"};
inline constexpr Id kByOtherSide{"table.by-other-side"};
inline constexpr Id kBySameBone{"table.by-same-bone"};
inline constexpr Id kByAnimal{"table.by-animal"};
inline constexpr Id kHumerusToFemur{"table.humerus-to-femur", 3};  ///< ratio, published from, to
inline constexpr Id kTibiaToFemur{"table.tibia-to-femur", 3};      ///< the same

// What to do.
inline constexpr Id kWriteHeader{"table.write-header"};
inline constexpr Id kWritePlan{"table.write-plan"};
inline constexpr Id kWriteCount{"table.write-count", 2};  ///< from, to
inline constexpr Id kNameBoneColumn{"table.name-bone-column"};
inline constexpr Id kKeepOneOfTwo{"table.keep-one-of-two"};
inline constexpr Id kTakenWithoutCondyle{"table.taken-without-condyle"};
inline constexpr Id kUseKnownTitle{"table.use-known-title"};
inline constexpr Id kWriteLengthUnit{"table.write-length-unit", 1};  ///< title
inline constexpr Id kWriteAngleUnit{"table.write-angle-unit", 1};    ///< title
inline constexpr Id kRemoveSurplus{"table.remove-surplus"};
inline constexpr Id kWriteBoneId{"table.write-bone-id"};
inline constexpr Id kKeepOneRow{"table.keep-one-row"};
inline constexpr Id kWriteEvidence{"table.write-evidence"};
inline constexpr Id kWriteNumber{"table.write-number", 1};  ///< unit
inline constexpr Id kWriteLength{"table.write-length"};
inline constexpr Id kCheckHeaderUnit{"table.check-header-unit"};
inline constexpr Id kCheckAngle{"table.check-angle"};
inline constexpr Id kSwapLengths{"table.swap-lengths"};
inline constexpr Id kWriteFacetWidth{"table.write-facet-width"};
inline constexpr Id kWriteFacetHeight{"table.write-facet-height"};
inline constexpr Id kNotCarried{"table.not-carried"};
inline constexpr Id kMeasureRegion{"table.measure-region"};
inline constexpr Id kCheckDecimalPoint{"table.check-decimal-point"};
inline constexpr Id kIgnored{"table.ignored"};
inline constexpr Id kWriteTotal{"table.write-total"};
inline constexpr Id kCorrectNumberOrCount{"table.correct-number-or-count", 1};  ///< the line's word, "cervicals"
inline constexpr Id kCorrectIdOrCounts{"table.correct-id-or-counts"};
inline constexpr Id kCheckTwoLengths{"table.check-two-lengths"};
inline constexpr Id kSlipNotCarried{"table.slip-not-carried", 1};  ///< the slip it may be, an Inner
inline constexpr Id kTimesTooLarge{"table.times-too-large", 1};    ///< 10, 100 or 1000
inline constexpr Id kTimesTooSmall{"table.times-too-small", 1};    ///< the same
inline constexpr Id kDigitsSwapped{"table.digits-swapped", 1};     ///< what would fit
inline constexpr Id kZeroMeansNone{"table.zero-means-none"};
inline constexpr Id kCheckCell{"table.check-cell"};

}  // namespace zyga::anatomy::table

/// The same for tables of landmarks.
namespace zyga::anatomy::landmark {

using reason::Id;

inline constexpr Id kNoHeader{"landmark.no-header"};
inline constexpr Id kUnknownBone{"landmark.unknown-bone", 1};
inline constexpr Id kUnnamed{"landmark.unnamed"};
inline constexpr Id kTooFar{"landmark.too-far", 1};  ///< typed
inline constexpr Id kTwice{"landmark.twice", 2};     ///< bone, landmark

inline constexpr Id kWriteHeader{"landmark.write-header"};
inline constexpr Id kWriteBoneId{"landmark.write-bone-id"};
inline constexpr Id kWriteName{"landmark.write-name"};
inline constexpr Id kWriteCoordinate{"landmark.write-coordinate"};
inline constexpr Id kCheckUnit{"landmark.check-unit"};
inline constexpr Id kLeaveOneOut{"landmark.leave-one-out"};

}  // namespace zyga::anatomy::landmark

/// The same for tables of facets; what they share with the others is told as there.
namespace zyga::anatomy::facet_table {

using reason::Id;

inline constexpr Id kUnknownFacet{"facet-table.unknown-facet", 1};  ///< typed
inline constexpr Id kNoDirection{"facet-table.no-direction", 1};    ///< "normal" or "slide"
inline constexpr Id kSlideAlongNormal{"facet-table.slide-along-normal"};
inline constexpr Id kNotAShare{"facet-table.not-a-share", 1};  ///< typed
inline constexpr Id kBadCorner{"facet-table.bad-corner", 1};   ///< typed
inline constexpr Id kNotConvex{"facet-table.not-convex"};
inline constexpr Id kTwice{"facet-table.twice", 2};  ///< bone, facet

inline constexpr Id kWriteHeader{"facet-table.write-header"};
inline constexpr Id kWriteFacet{"facet-table.write-facet"};
inline constexpr Id kWriteDirection{"facet-table.write-direction"};
inline constexpr Id kWriteSlide{"facet-table.write-slide"};
inline constexpr Id kWriteShare{"facet-table.write-share"};
inline constexpr Id kWriteOutline{"facet-table.write-outline"};

}  // namespace zyga::anatomy::facet_table
