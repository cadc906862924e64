#include "core/study/claims/claim.h"

#include <cmath>
#include <numbers>

namespace zyga::study {
namespace {

constexpr double kDegree = std::numbers::pi / 180;
constexpr double kLongest = 30;  // m: longer than any neck

constexpr std::array<ClaimKindTraits, 6> kTraits{
    {{ClaimKind::HeadHeight, "head height", {"claim.kind.head-height"}, false, false, false, 0, kLongest, 6},
     {ClaimKind::NeckSlope,
      "neck slope",
      {"claim.kind.neck-slope"},
      true,
      true,
      false,
      -90 * kDegree,
      90 * kDegree,
      45 * kDegree},
     {ClaimKind::NeckBaseSlope,
      "neck base slope",
      {"claim.kind.neck-base-slope"},
      true,
      true,
      false,
      -90 * kDegree,
      90 * kDegree,
      40 * kDegree},
     {ClaimKind::SnoutToGround,
      "snout to ground",
      {"claim.kind.snout-to-ground"},
      false,
      false,
      false,
      -kLongest,
      kLongest,
      2},
     {ClaimKind::HeadAhead, "head ahead", {"claim.kind.head-ahead"}, false, false, true, 0, kLongest, 3},
     {ClaimKind::TailBaseLevel,
      "tail base level",
      {"claim.kind.tail-base-level"},
      true,
      false,
      false,
      0,
      90 * kDegree,
      10 * kDegree}}};

}  // namespace

const ClaimKindTraits& traitsOf(ClaimKind kind) { return kTraits[static_cast<std::size_t>(kind)]; }

Claim usualClaim(ClaimKind kind) {
  const ClaimKindTraits& traits = traitsOf(kind);
  return {kind, Bound::AtLeast, traits.usual, traits.ahead ? 2.0 : 0.0, {}};
}

reason::Reason validate(const Claim& claim) {
  using reason::Quantity, reason::Unit;
  const ClaimKindTraits& traits = traitsOf(claim.kind);
  // Degrees come back from a file with a rounding error of their own.
  const double slack = 1e-9;
  if (!(claim.value >= traits.min - slack && claim.value <= traits.max + slack))
    return {kClaimValueOutOfBounds,
            {traits.term, Quantity{traits.min, traits.unit()}, Quantity{traits.max, traits.unit()}}};
  if (traits.ahead && !(std::abs(claim.ahead) <= kLongest))
    return {kClaimAheadOutOfBounds, {Quantity{-kLongest, Unit::Distance}, Quantity{kLongest, Unit::Distance}}};
  if (!traits.bounds && claim.bound == Bound::AtMost) return {kClaimHasNoUpperBound, {traits.term}};
  return {};
}

}  // namespace zyga::study
