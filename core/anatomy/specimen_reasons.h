#pragma once

#include "core/reason/reason.h"

/// Why an animal cannot be built from what is given. ui/words has the wordings; bones are told by their ids.
namespace zyga::anatomy::specimen {

using reason::Id;

inline constexpr Id kNoRow{"specimen.no-row", 1};          ///< bone
inline constexpr Id kNotFilled{"specimen.not-filled", 2};  ///< bone, term of the measure
inline constexpr Id kNoAtlas{"specimen.no-atlas"};
inline constexpr Id kNoShoulder{"specimen.no-shoulder"};
inline constexpr Id kNoSacral{"specimen.no-sacral", 1};  ///< bone
inline constexpr Id kNoSuchBone{"specimen.no-such-bone", 1};
inline constexpr Id kFused{"specimen.fused", 2};  ///< bone, the bone it has grown into
inline constexpr Id kScaleNotPositive{"specimen.scale-not-positive"};

}  // namespace zyga::anatomy::specimen

/// The same of scans: what their marks lack, why nothing follows from them, and what is not certain about a file.
namespace zyga::anatomy::scan {

using reason::Id;

// What a joint between scanned bones still lacks; the bone's id first.
inline constexpr Id kLacksPlace{"scan.lacks-place", 1};
inline constexpr Id kLacksCranialCentre{"scan.lacks-cranial-centre", 1};
inline constexpr Id kLacksCaudalCentre{"scan.lacks-caudal-centre", 1};
inline constexpr Id kLacksFacet{"scan.lacks-facet", 2};  ///< bone, term of the facet

// Why marks cannot be mirrored, or a bone straightened.
inline constexpr Id kNoMidPlane{"scan.no-mid-plane", 1};            ///< bone
inline constexpr Id kMidPlaneUnknown{"scan.mid-plane-unknown", 1};  ///< bone
inline constexpr Id kNoSymmetry{"scan.no-symmetry", 1};             ///< bone
inline constexpr Id kTooFewPairs{"scan.too-few-pairs"};
inline constexpr Id kMiddlesInLine{"scan.middles-in-line"};

// What the name of a file does not tell.
inline constexpr Id kNoSide{"scan.no-side"};
inline constexpr Id kNoNumber{"scan.no-number"};
inline constexpr Id kWholeSacrum{"scan.whole-sacrum"};
inline constexpr Id kWholePelvis{"scan.whole-pelvis"};
inline constexpr Id kLumbarNotPlaced{"scan.lumbar-not-placed", 1};  ///< number
inline constexpr Id kLumbarCounted{"scan.lumbar-counted", 1};       ///< number

}  // namespace zyga::anatomy::scan
