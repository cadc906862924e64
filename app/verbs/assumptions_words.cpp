#include "app/verbs/assumptions_words.h"

#include "app/verbs/summary_text.h"
#include "core/files/json/json.h"
#include "core/files/json/json_layout.h"
#include "core/files/project/project_schema.h"

namespace zyga::app {
namespace {

using files::jsonString;
using files::member;
using files::onOneLine;

std::string percent(double share) { return fixed(share * 100, 0) + " %"; }

std::string cartilageText(const range::Cartilage& cartilage) {
  const bool inMillimetres = cartilage.in == range::Cartilage::In::Millimetres;
  return millionths(cartilage.amount) + (inMillimetres ? " mm" : " % of the centrum");
}

std::string cartilagesText(const range::Assumptions& a) {
  if (a.neck == a.trunk && a.trunk == a.tail) return cartilageText(a.neck);
  return "neck " + cartilageText(a.neck) + ", trunk " + cartilageText(a.trunk) + ", tail " + cartilageText(a.tail);
}

}  // namespace

std::string assumptionsText(const range::Assumptions& a) {
  const char* by = a.overlapBy == range::OverlapBy::Length ? "length" : "area";
  return "  assuming: facets share at least " + percent(a.leastOverlap) + " by " + by + ", near within " +
         percent(a.nearMargin) + " of a limit; cartilage " + cartilagesText(a) + "; neutral by " +
         std::string(files::schema::wordOf(files::schema::kNeutralBy, a.neutralBy)) + "\n";
}

std::string assumptionsJson(const range::Assumptions& assumptions) {
  namespace schema = files::schema;
  std::vector<std::string> members{
      member("overlap_by", jsonString(schema::wordOf(schema::kOverlapBy, assumptions.overlapBy))),
      member("neutral_by", jsonString(schema::wordOf(schema::kNeutralBy, assumptions.neutralBy))),
      member("contact_tolerated_mm", millionths(assumptions.contactTolerated * 1000))};
  for (const auto& [key, field] : schema::kShares) members.push_back(member(key, millionths(assumptions.*field * 100)));
  for (const auto& [key, field] : schema::kCartilages) {
    const auto& cartilage = assumptions.*field;
    members.push_back(
        member(key, onOneLine({member("amount", millionths(cartilage.amount)),
                               member("unit", jsonString(schema::wordOf(schema::kCartilageUnits, cartilage.in)))})));
  }
  return onOneLine(members);
}

}  // namespace zyga::app
