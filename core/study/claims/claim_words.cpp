#include "core/study/claims/claim_words.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <cstdio>

#include "core/range/wording.h"
#include "core/study/reach/extremes.h"

namespace zyga::study {
namespace {

using range::degreesText;
using range::metresText;
using range::percentText;

std::string capital(std::string text) {
  if (!text.empty()) text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
  return text;
}

/// Short of something by so much; never "0 m", which would say that nothing is missing.
std::string missingText(double amount, bool angle) {
  if (angle) return amount < 0.05 * 0.017453 ? "a hair" : degreesText(amount);
  return amount < 0.01 ? range::millimetresText(amount) : metresText(amount);
}

std::string heightVerdict(const ClaimAnswer& a) {
  const std::string best = metresText(*a.best);
  if (a.supported) return "Supported: the snout comes up to " + best + ".";
  return "Not supported: the snout comes to " + best + " at most, " + missingText(a.shortBy, false) + " short.";
}

std::string slopeVerdict(const Claim& claim, const ClaimAnswer& a) {
  const bool more = claim.bound == Bound::AtLeast;
  const std::string what = claim.kind == ClaimKind::NeckSlope ? "neck" : "neck's base";
  const std::string best = degreesText(*a.best);
  if (a.supported) return "Supported: the " + what + (more ? " rises to " : " comes down to ") + best + ".";
  return "Not supported: the " + what + (more ? " rises to " : " comes down to ") + best + " and no farther, " +
         missingText(a.shortBy, true) + (more ? " too flat." : " too steep.");
}

/// A point that bones alone would let the snout come to.
std::string throughGround(const ClaimAnswer& a) {
  return "Not supported: the snout gets there only with neck or head " + missingText(a.shortBy, false) +
         " in the ground.";
}

/// How far the snout stays from a point ("place", "point").
std::string pointMissed(const ClaimAnswer& a, const std::string& what) {
  if (a.throughGround) return throughGround(a);
  return "Not supported: the snout stays " + missingText(a.shortBy, false) + " short of that " + what + ".";
}

std::string groundVerdict(const Claim& claim, const ClaimAnswer& a) {
  if (a.supported) return "Supported: the snout reaches the ground up to " + metresText(*a.best) + " ahead.";
  const std::string misses = pointMissed(a, "place");
  if (!a.best) return misses + " It does not come to the ground anywhere ahead of or beside the forefeet.";
  return misses + " The nearest place where it reaches the ground is " + metresText(*a.best) + " ahead" +
         (*a.best > claim.value ? "; nearer to the feet the neck cannot bend enough." : ".");
}

std::string aheadVerdict(const Claim& claim, const ClaimAnswer& a) {
  const std::string place = metresText(claim.ahead) + " ahead";
  if (a.supported) return "Supported: " + place + " the snout comes up to " + metresText(*a.best) + ".";
  const std::string misses = pointMissed(a, "point");
  if (!a.best) return misses + " It comes " + place + " at no height.";
  return misses + " The nearest height it has " + place + " is " + metresText(*a.best) + ".";
}

std::string tailVerdict(const ClaimAnswer& a) {
  const std::string best = degreesText(*a.best);
  if (a.supported) return "Supported: the tail's base can be carried at " + best + " to the horizontal.";
  return "Not supported: the tail's base comes no nearer to level than " + best + ", " + missingText(a.shortBy, true) +
         " too steep.";
}

std::string verdictOf(const Claim& claim, const ClaimAnswer& a) {
  if (!a.unanswerable.empty()) return "Not answered: " + a.unanswerable + ".";
  const bool point = claim.kind == ClaimKind::SnoutToGround || claim.kind == ClaimKind::HeadAhead;
  // A point may have no best value; then at least it is known how far it is missed.
  if (!a.best && (!point || a.shortBy == 0)) return "Not supported: a joint on the way has no supported angle.";
  switch (claim.kind) {
    case ClaimKind::HeadHeight:
      return heightVerdict(a);
    case ClaimKind::NeckSlope:
    case ClaimKind::NeckBaseSlope:
      return slopeVerdict(claim, a);
    case ClaimKind::SnoutToGround:
      return groundVerdict(claim, a);
    case ClaimKind::HeadAhead:
      return aheadVerdict(claim, a);
    case ClaimKind::TailBaseLevel:
      return tailVerdict(a);
  }
  return {};
}

/// Rounded so that the printed rule still does: a share downwards.
std::string overlapText(double share) { return percentText(std::floor(share * 100 + 1e-9) / 100); }

std::string overlapNeed(const range::Assumptions& assumptions, const ClaimAnswer& a) {
  const std::string now = "now " + percentText(assumptions.leastOverlap);
  if (!a.leastOverlap) return "No overlap rule by itself makes it supported, even with facets that all but part.";
  const std::string rule = overlapText(*a.leastOverlap) + " (" + now + ").";
  if (a.supported) return "It holds for every rule of least overlap up to " + rule;
  return "It would be supported if the facets had to share no more than " + rule;
}

/// "12.5 %", rounded upwards or downwards so that the printed amount still does.
std::string cartilageText(double percent, bool upwards) {
  const double tenths = upwards ? std::ceil(std::max(0.0, percent * 10 - 1e-6)) : std::floor(percent * 10 + 1e-6);
  char text[32];
  std::snprintf(text, sizeof text, std::fmod(tenths, 10) == 0 ? "%.0f %%" : "%.1f %%", tenths / 10);
  return text;
}

std::string presentText(const range::Cartilage& cartilage) {
  if (cartilage.in == range::Cartilage::In::Millimetres) return range::millimetresText(cartilage.amount * 1e-3);
  return cartilageText(cartilage.amount, true);
}

std::string cartilageNeed(const range::Assumptions& assumptions, const Claim& claim, const ClaimAnswer& a) {
  const bool tail = claim.kind == ClaimKind::TailBaseLevel;
  const std::string where = tail ? "tail" : "neck";
  const range::Cartilage& present = tail ? assumptions.tail : assumptions.neck;
  const std::string now = " of the centrum's length (now " + presentText(present) + ")";
  if (!a.leastCartilage)
    return "No cartilage in the " + where + " up to " + cartilageText(kMostCartilage, true) +
           " of the centrum's length by itself makes it supported.";
  const bool toTheEnd = *a.mostCartilage >= kMostCartilage;
  const std::string most = cartilageText(*a.mostCartilage, false);
  if (*a.leastCartilage == 0 && toTheEnd)
    return "It holds without cartilage in the " + where + " and with any up to " + most + now + ".";
  std::string amount = "from " + cartilageText(*a.leastCartilage, true) + " on";
  if (!toTheEnd) amount = "from " + cartilageText(*a.leastCartilage, true) + " to " + most;
  if (*a.leastCartilage == 0) amount = "up to " + most;
  return (a.supported ? "It holds with cartilage in the " : "It would be supported with cartilage in the ") + where +
         " " + amount + now + ".";
}

std::string idsOf(const anatomy::Specimen& specimen, const std::vector<kinematics::JointIndex>& joints) {
  constexpr std::size_t kMostNamed = 4;
  std::string ids;
  for (std::size_t i = 0; i < joints.size() && i < kMostNamed; ++i) ids += (i ? ", " : "") + specimen[joints[i]].id;
  if (joints.size() > kMostNamed) ids += " and " + std::to_string(joints.size() - kMostNamed) + " more";
  return ids;
}

std::string edgeNote(const ClaimAnswer& a) {
  if (a.joints == 1)
    return a.nearEdge.empty() ? "The one joint that bends is not near the edge of its range."
                              : "The one joint that bends is near the edge of its range.";
  const std::string of = " of the " + std::to_string(a.joints) + " joints that bend ";
  const std::size_t near = a.nearEdge.size();
  if (near == 0) return "None" + of + "is near the edge of its range.";
  return std::to_string(near) + of +
         (near == 1 ? "is near the edge of its range." : "are near the edge of their range.");
}

std::vector<std::string> notesOf(const anatomy::Specimen& specimen, const ClaimAnswer& a) {
  std::vector<std::string> notes{edgeNote(a)};
  if (!a.notJudged.empty())
    notes.push_back("Nothing judges " + idsOf(specimen, a.notJudged) + ", which therefore stay as posed.");
  if (!a.elsewhereBeyond.empty())
    notes.push_back("What stays as posed is past its range at " + idsOf(specimen, a.elsewhereBeyond) + ".");
  if (a.inGround > 0)
    notes.push_back("In this pose a part lies " + range::millimetresText(std::round(a.inGround * 1000) * 1e-3) +
                    " in the ground.");
  return notes;
}

}  // namespace

ClaimWords claimWords(const anatomy::Specimen& specimen, const range::Assumptions& assumptions, const Claim& claim,
                      const ClaimAnswer& answer) {
  ClaimWords words;
  words.claim = capital(sentence(claim));
  words.verdict = verdictOf(claim, answer);
  if (!answer.unanswerable.empty()) return words;
  for (const ClaimStop& stop : answer.stopping) words.stops.push_back(stop.text);
  words.needs = {overlapNeed(assumptions, answer), cartilageNeed(assumptions, claim, answer)};
  words.notes = notesOf(specimen, answer);
  return words;
}

std::string claimBasis() {
  return "Trunk, limbs and feet stay as posed; neck, head and tail bend up and down only, each joint inside its range. "
         "Bones in each other's way and soft tissue are not looked at. Ranges of bare bones may be off by several "
         "degrees a joint "
         "(Kuznetsov & Tereschenko 2010; Hutson & Hutson 2012).";
}

}  // namespace zyga::study
