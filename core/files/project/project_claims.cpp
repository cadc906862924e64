#include "core/files/project/project_claims.h"

#include <algorithm>
#include <cmath>

#include "core/files/json/json_layout.h"
#include "core/files/json/numeral.h"
#include "core/files/project/project_schema.h"

namespace zyga::files {
namespace {

using study::Bound;
using study::Claim;

constexpr std::array<std::pair<std::string_view, Bound>, 2> kBounds{
    {{"at least", Bound::AtLeast}, {"at most", Bound::AtMost}}};

double finite(double value) {
  if (!std::isfinite(value)) throw FileError("cannot save: the value of a claim is not a finite number");
  return value;
}

std::string claimText(const Claim& claim) {
  const study::ClaimKindTraits& traits = traitsOf(claim.kind);
  std::vector<std::string> members{member("kind", jsonString(traits.word))};
  if (traits.bounds) members.push_back(member("bound", jsonString(schema::wordOf(kBounds, claim.bound))));
  members.push_back(traits.angle ? member("value_deg", toDegrees(finite(claim.value)))
                                 : member("value_mm", toNumeral(finite(claim.value), schema::kMillimetres)));
  if (traits.ahead) members.push_back(member("ahead_mm", toNumeral(finite(claim.ahead), schema::kMillimetres)));
  if (!claim.source.empty()) members.push_back(member("source", jsonString(claim.source)));
  return onOneLine(members);
}

study::ClaimKind readKind(const JsonPlace& place) {
  std::string known;
  for (const study::ClaimKind kind : study::kClaimKinds) {
    const std::string word(traitsOf(kind).word);
    if (word == place.string()) return kind;
    known += (known.empty() ? "" : ", ") + word;
  }
  place.fail(jsonString(place.string()) + " is no kind of claim; there are " + known);
}

Bound readBound(const JsonPlace& place) {
  for (const auto& [word, bound] : kBounds)
    if (word == place.string()) return bound;
  place.fail("must be \"at least\" or \"at most\"");
}

Claim readClaim(const JsonPlace& place) {
  Claim claim;
  claim.kind = readKind(place["kind"]);
  const study::ClaimKindTraits& traits = traitsOf(claim.kind);
  std::vector<std::string_view> keys{"kind", "source", traits.angle ? "value_deg" : "value_mm"};
  if (traits.bounds) {
    claim.bound = readBound(place["bound"]);
    keys.push_back("bound");
  }
  if (traits.ahead) {
    claim.ahead = fromNumeral(place["ahead_mm"].numeral(), schema::kMillimetres);
    keys.push_back("ahead_mm");
  }
  claim.value = traits.angle ? radians(place["value_deg"].numeral())
                             : fromNumeral(place["value_mm"].numeral(), schema::kMillimetres);
  if (const auto source = place.find("source")) claim.source = source->string();
  place.allowOnly(keys);
  if (const std::string fault = faultOf(claim); !fault.empty()) place.fail(fault);
  return claim;
}

}  // namespace

std::vector<std::string> claimMembers(const Project& project) {
  if (project.claims.empty()) return {};
  std::vector<std::string> claims;
  for (const Claim& claim : project.claims) claims.push_back(claimText(claim));
  return {member(kClaimsKey, onLines(claims, "  ", '[', ']'))};
}

void readClaims(const JsonPlace& root, Project& project) {
  const auto claims = root.find(kClaimsKey);
  if (!claims) return;
  for (const JsonPlace& item : claims->items()) project.claims.push_back(readClaim(item));
}

}  // namespace zyga::files
