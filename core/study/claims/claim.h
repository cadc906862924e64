#pragma once

#include <array>
#include <string>
#include <string_view>

#include "core/reason/reason.h"

namespace zyga::study {

/// What a claim about an animal's posture speaks of. Heights are the snout's over the ground; slopes are to the
/// horizontal, positive when they rise away from the trunk, as the readings of a stand are.
enum class ClaimKind {
  HeadHeight,     ///< head at least so high, m
  NeckSlope,      ///< line from the neck's base to its far end at least or at most so steep, rad
  NeckBaseSlope,  ///< hindmost cervical (Assumptions::horizontalBy) at least or at most so steep, rad
  SnoutToGround,  ///< snout reaches the ground so far ahead of the forefeet, m
  HeadAhead,      ///< head reaches so high, m, at a distance ahead of the forefeet
  TailBaseLevel   ///< line through the first five caudals within so much of level, rad
};
inline constexpr std::array<ClaimKind, 6> kClaimKinds{ClaimKind::HeadHeight,    ClaimKind::NeckSlope,
                                                      ClaimKind::NeckBaseSlope, ClaimKind::SnoutToGround,
                                                      ClaimKind::HeadAhead,     ClaimKind::TailBaseLevel};

enum class Bound { AtLeast, AtMost };

/// A statement that the bones may support or not, with who says so.
struct Claim {
  ClaimKind kind = ClaimKind::HeadHeight;
  Bound bound = Bound::AtLeast;  ///< of slopes of the neck; AtLeast for all others
  double value = 0;              ///< m or rad according to kind
  double ahead = 0;              ///< HeadAhead alone: distance ahead of the forefeet, m
  std::string source = {};       ///< a citation, or empty
  bool operator==(const Claim&) const = default;
};

/// What is known about a kind of claim.
struct ClaimKindTraits {
  ClaimKind kind;
  std::string_view word;  ///< its id in files: "head height"
  reason::Term term;      ///< for reasons that name it
  bool angle;             ///< the value is rad, else m
  bool bounds;            ///< can also be claimed as "at most"
  bool ahead;             ///< has a distance ahead of the forefeet
  double min, max;        ///< values that make sense, m or rad
  double usual;           ///< to begin with
  reason::Unit unit() const { return angle ? reason::Unit::Angle : reason::Unit::Distance; }
};
const ClaimKindTraits& traitsOf(ClaimKind kind);
/// A point that the snout has to come to, on the ground or in the air, instead of a bound that it has to pass.
constexpr bool isPoint(ClaimKind kind) { return kind == ClaimKind::SnoutToGround || kind == ClaimKind::HeadAhead; }

/// A claim of this kind with its usual value.
Claim usualClaim(ClaimKind kind);

// Why a claim makes no sense.
inline constexpr reason::Id kClaimValueOutOfBounds{"claim.value-out-of-bounds", 3};  ///< its kind, min, max
inline constexpr reason::Id kClaimAheadOutOfBounds{"claim.ahead-out-of-bounds", 2};  ///< min, max
inline constexpr reason::Id kClaimHasNoUpperBound{"claim.no-upper-bound", 1};        ///< its kind

/// Why a claim makes no sense; empty when it does.
reason::Reason validate(const Claim& claim);

}  // namespace zyga::study
