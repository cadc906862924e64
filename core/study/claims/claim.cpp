#include "core/study/claims/claim.h"

#include <cmath>
#include <numbers>

#include "core/range/wording.h"

namespace zyga::study {
namespace {

constexpr double kDegree = std::numbers::pi / 180;
constexpr double kLongest = 30;  // m: longer than any neck

constexpr std::array<ClaimKindTraits, 6> kTraits{
    {{ClaimKind::HeadHeight, "head height", "Head at least so high", "Height of the snout over the ground.", false,
      false, false, 0, kLongest, 6},
     {ClaimKind::NeckSlope, "neck slope", "Neck so steep",
      "Slope to the horizontal of the straight line from the neck's base to its far end, positive upwards.", true, true,
      false, -90 * kDegree, 90 * kDegree, 45 * kDegree},
     {ClaimKind::NeckBaseSlope, "neck base slope", "Base of the neck so steep",
      "Slope to the horizontal of the neural canal of the hindmost cervical, positive upwards.", true, true, false,
      -90 * kDegree, 90 * kDegree, 40 * kDegree},
     {ClaimKind::SnoutToGround, "snout to ground", "Snout reaches the ground",
      "Distance of the snout ahead of the foremost standing forefoot, along the ground.", false, false, false,
      -kLongest, kLongest, 2},
     {ClaimKind::HeadAhead, "head ahead", "Head reaches a point ahead",
      "Height of the snout over the ground at a distance ahead of the foremost standing forefoot.", false, false, true,
      0, kLongest, 3},
     {ClaimKind::TailBaseLevel, "tail base level", "Base of the tail near level",
      "Slope to the horizontal of the line through the first five caudals.", true, false, false, 0, 90 * kDegree,
      10 * kDegree}}};

std::string_view boundWord(Bound bound) { return bound == Bound::AtLeast ? "at least " : "at most "; }

std::string rangeText(const ClaimKindTraits& traits) {
  const auto text = [&](double value) { return traits.angle ? range::degreesText(value) : range::metresText(value); };
  return "from " + text(traits.least) + " to " + text(traits.most);
}

}  // namespace

const ClaimKindTraits& traitsOf(ClaimKind kind) { return kTraits[static_cast<std::size_t>(kind)]; }

Claim usualClaim(ClaimKind kind) {
  const ClaimKindTraits& traits = traitsOf(kind);
  return {kind, Bound::AtLeast, traits.usual, traits.ahead ? 2.0 : 0.0, {}};
}

std::string faultOf(const Claim& claim) {
  const ClaimKindTraits& traits = traitsOf(claim.kind);
  const std::string what(traits.word);
  // Degrees come back from a file with a rounding error of their own.
  const double slack = 1e-9;
  if (!(claim.value >= traits.least - slack && claim.value <= traits.most + slack))
    return "the value of a claim on " + what + " must be " + rangeText(traits);
  if (traits.ahead && !(std::abs(claim.ahead) <= kLongest))
    return "the distance ahead must be from " + range::metresText(-kLongest) + " to " + range::metresText(kLongest);
  if (!traits.bounds && claim.bound == Bound::AtMost) return "a claim on " + what + " cannot be an \"at most\"";
  return {};
}

std::string sentence(const Claim& claim) {
  const std::string metres = range::metresText(claim.value);
  const std::string slope =
      std::string(boundWord(claim.bound)) + range::degreesText(claim.value) + " to the horizontal";
  switch (claim.kind) {
    case ClaimKind::HeadHeight:
      return "head at least " + metres + " high";
    case ClaimKind::NeckSlope:
      return "neck " + slope;
    case ClaimKind::NeckBaseSlope:
      return "neck base " + slope;
    case ClaimKind::SnoutToGround:
      return "snout reaches the ground " + metres + " ahead of the forefeet";
    case ClaimKind::HeadAhead:
      return "head reaches " + metres + " high, " + range::metresText(claim.ahead) + " ahead of the forefeet";
    case ClaimKind::TailBaseLevel:
      return "tail base within " + range::degreesText(claim.value) + " of level";
  }
  return {};
}

}  // namespace zyga::study
