#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace zyga::study {

/// What a claim about an animal's posture speaks of. Heights are the snout's over the ground; slopes are to the
/// horizontal, positive when they rise away from the trunk, as the readings of a stand are.
enum class ClaimKind {
  HeadHeight,     ///< head at least so high, m
  NeckSlope,      ///< line from the neck's base to its far end at least or at most so steep, rad
  NeckBaseSlope,  ///< neural canal of the hindmost cervical at least or at most so steep, rad
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
  std::string_view word;   ///< in files: "head height"
  std::string_view title;  ///< in lists: "Head at least so high"
  std::string_view tells;  ///< what exactly is measured, one sentence
  bool angle;              ///< the value is rad, else m
  bool bounds;             ///< can also be claimed as "at most"
  bool ahead;              ///< has a distance ahead of the forefeet
  double least, most;      ///< values that make sense, m or rad
  double usual;            ///< to begin with
};
const ClaimKindTraits& traitsOf(ClaimKind kind);

/// A claim of this kind with its usual value.
Claim usualClaim(ClaimKind kind);

/// Why a claim makes no sense ("the height must be from 0 to 30 m"); empty when it does.
std::string faultOf(const Claim& claim);

/// The claim in words: "head at least 8.5 m high", "neck base at least 40° to the horizontal", "snout reaches the
/// ground 2 m ahead of the forefeet", "tail base within 10° of level". Without its source.
std::string sentence(const Claim& claim);

}  // namespace zyga::study
