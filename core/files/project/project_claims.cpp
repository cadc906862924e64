#include "core/files/project/project_claims.h"

#include "core/files/project/project_schema.h"

namespace zyga::files {
namespace {

using study::Bound;
using study::Claim;

constexpr std::array<std::pair<std::string_view, Bound>, 2> kBounds{
    {{"at least", Bound::AtLeast}, {"at most", Bound::AtMost}}};

json::Value claimJson(const Claim& claim) {
  constexpr reason::Term kValue{"project.claim-value"};
  const study::ClaimKindTraits& traits = traitsOf(claim.kind);
  json::Value members = json::object({{"kind", traits.word}});
  if (traits.bounds) members.add("bound", schema::wordOf(kBounds, claim.bound));
  if (traits.angle)
    members.add("value_deg", schema::degrees(claim.value, kValue));
  else
    members.add("value_mm", schema::numeral(claim.value, schema::kMillimetres, kValue));
  if (traits.ahead) members.add("ahead_mm", schema::numeral(claim.ahead, schema::kMillimetres, kValue));
  if (!claim.source.empty()) members.add("source", claim.source);
  return members;
}

study::ClaimKind readKind(const JsonPlace& place) {
  std::vector<std::string_view> known;
  for (const study::ClaimKind kind : study::kClaimKinds) {
    if (traitsOf(kind).word == place.string()) return kind;
    known.push_back(traitsOf(kind).word);
  }
  place.fail({fault::kNoClaimKind, {shown(place.string()), shown(known)}});
}

Claim readClaim(const JsonPlace& place) {
  Claim claim;
  claim.kind = readKind(place["kind"]);
  const study::ClaimKindTraits& traits = traitsOf(claim.kind);
  std::vector<std::string_view> keys{"kind", "source", traits.angle ? "value_deg" : "value_mm"};
  if (traits.bounds) {
    claim.bound = schema::readWord(place["bound"], kBounds);
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
  if (reason::Reason fault = validate(claim); !fault.empty()) place.fail(std::move(fault));
  return claim;
}

}  // namespace

void addClaims(const Project& project, json::Value& root) {
  if (project.claims.empty()) return;
  json::Value claims = json::Value::array(json::Layout::OnLines);
  for (const Claim& claim : project.claims) claims.push(claimJson(claim));
  root.add(kClaimsKey, std::move(claims));
}

void readClaims(const JsonPlace& root, Project& project) {
  const auto claims = root.find(kClaimsKey);
  if (!claims) return;
  for (const JsonPlace& item : claims->items()) project.claims.push_back(readClaim(item));
}

}  // namespace zyga::files
