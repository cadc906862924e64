#include "app/verbs/summary_text.h"

#include <QCoreApplication>

#include "app/verbs/verb_words.h"
#include "core/files/json/json_write.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::app {

namespace json = files::json;

std::string summaryText(const anatomy::Summary& s) {
  using ui::metres;
  if (s.skull == 0)  // a column alone
    return said(QT_TRANSLATE_NOOP("words", "  neck %1, trunk %2, sacrum %3, tail %4: a column of %5"),
                {metres(s.neck), metres(s.trunk), metres(s.sacrum), metres(s.tail), metres(s.column)}) +
           "\n";
  const QString regions =
      ui::filled(ui::translated(QT_TRANSLATE_NOOP("words", "skull %1, neck %2, trunk %3, sacrum %4, tail %5")),
                 {metres(s.skull), metres(s.neck), metres(s.trunk), metres(s.sacrum), metres(s.tail)});
  const QString whole = ui::filled(
      ui::translated(QT_TRANSLATE_NOOP("words", "%1 from snout to tail tip along the column, %2 without the skull")),
      {metres(s.total), metres(s.column)});
  const QString limbs = ui::filled(ui::translated(QT_TRANSLATE_NOOP("words", "femur %1, humerus to femur %2")),
                                   {metres(s.femur), ui::plain(s.humerusToFemur, 2)});
  return QString("  %1\n  %2\n  %3\n").arg(regions, whole, limbs).toStdString();
}

files::json::Value summaryJson(const anatomy::Summary& s) {
  // Null is what an animal that is a column alone does not have.
  const auto ofThere = [](double length) { return length > 0 ? json::millionths(length) : json::Value(); };
  return json::object({{"skull_m", ofThere(s.skull)},
                       {"neck_m", json::millionths(s.neck)},
                       {"trunk_m", json::millionths(s.trunk)},
                       {"sacrum_m", json::millionths(s.sacrum)},
                       {"tail_m", json::millionths(s.tail)},
                       {"column_m", json::millionths(s.column)},
                       {"total_m", json::millionths(s.total)},
                       {"femur_m", ofThere(s.femur)},
                       {"humerus_to_femur", ofThere(s.humerusToFemur)}});
}

CellCount countCells(const anatomy::MeasurementTable& table) {
  CellCount count;
  for (const auto& row : table.rows) {
    ++count.bones;
    if (row.evidence == anatomy::Evidence::Found || row.evidence == anatomy::Evidence::FoundDeformed)
      ++count.bonesFound;
    for (int i = 0; i < anatomy::kMeasureCount; ++i) {
      const auto& cell = row.measures[static_cast<anatomy::Measure>(i)];
      if (cell.measured()) ++count.measured;
      if (cell.known() && !cell.measured()) ++count.inferred;
    }
  }
  return count;
}

}  // namespace zyga::app
