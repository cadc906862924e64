#include "app/verbs/assumptions_words.h"

#include <QCoreApplication>

#include "app/verbs/verb_words.h"
#include "core/files/project/project_schema.h"
#include "ui/words/assumption_words.h"

namespace zyga::app {
namespace {

namespace json = files::json;

}  // namespace

std::string assumptionsText(const range::Assumptions& assumptions) {
  return "  " + ui::assumptionsInFull(assumptions).toStdString() + "\n";
}

std::string caution() {
  return said(QT_TRANSLATE_NOOP(
      "words", "ranges are of bare bones: they may be off by 5 degrees a joint, and soft tissue may lessen them"));
}

files::json::Value assumptionsJson(const range::Assumptions& assumptions) {
  namespace schema = files::schema;
  json::Value members = json::object(
      {{"overlap_by", schema::wordOf(schema::kOverlapBy, assumptions.overlapBy)},
       {"neutral_by", schema::wordOf(schema::kNeutralBy, assumptions.neutralBy)},
       {"horizontal_by", schema::wordOf(schema::kHorizontalBy, assumptions.horizontalBy)},
       {assumptions.contactTolerated.in == range::ContactTolerance::In::Millimetres ? schema::kContactMillimetres
                                                                                    : schema::kContactPercent,
        json::millionths(assumptions.contactTolerated.amount)},
       {"inferred_neighbours", assumptions.inferredNeighbours}});
  for (const auto& [key, field] : schema::kShares) members.add(key, json::millionths(assumptions.*field * 100));
  members.add("settling_percent", json::millionths(assumptions.settling * 100));
  for (const auto& [key, field] : schema::kCartilages) {
    const auto& cartilage = assumptions.*field;
    members.add(key, json::object({{"amount", json::millionths(cartilage.amount)},
                                   {"unit", schema::wordOf(schema::kCartilageUnits, cartilage.in)}}));
  }
  return members;
}

}  // namespace zyga::app
