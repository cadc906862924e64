#include "ui/words/table_words.h"

#include <QCoreApplication>
#include <QStringList>

#include "core/anatomy/tables/blank_table.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/wordings.h"

namespace zyga::ui {

Wordings tableWordings() {
  static constexpr Wording kWordings[] = {
      // What is wrong with a table. In quotes stands what the table holds, as it stands there.
      {"table.empty", QT_TRANSLATE_NOOP("words", "the table is empty")},
      {"table.unknown-plan", QT_TRANSLATE_NOOP("words", "'%1' is no body plan")},
      {"table.impossible-count", QT_TRANSLATE_NOOP("words", "'%1' is no number of %2")},
      {"table.no-column", QT_TRANSLATE_NOOP("words", "there is no column '%1'")},
      {"table.second-column", QT_TRANSLATE_NOOP("words", "a second column '%1'")},
      {"table.condyle-unclear", QT_TRANSLATE_NOOP("words", "'%1' does not say whether the condyle is counted")},
      {"table.unknown-measure", QT_TRANSLATE_NOOP("words", "'%1' is no measure this program knows")},
      {"table.no-unit", QT_TRANSLATE_NOOP("words", "'%1' has no unit")},
      {"table.wrong-unit", QT_TRANSLATE_NOOP("words", "'%1' is no unit for %2")},
      {"table.surplus-cells", QT_TRANSLATE_NOOP("words", "%1 cells under %2 titles")},
      {"table.row-without-bone", QT_TRANSLATE_NOOP("words", "a row without a bone")},
      {"table.unknown-bone", QT_TRANSLATE_NOOP("words", "'%1' is no bone")},
      {"table.bone-twice", QT_TRANSLATE_NOOP("words", "%1 stands in line %2 already")},
      {"table.unknown-evidence", QT_TRANSLATE_NOOP("words", "'%1' is no kind of evidence")},
      {"table.not-a-number", QT_TRANSLATE_NOOP("words", "'%1' is not a number")},
      {"table.not-a-length", QT_TRANSLATE_NOOP("words", "%1 %2 is not a length")},
      {"table.too-long", QT_TRANSLATE_NOOP("words", "%1 %2 is more than 20 m")},
      {"table.beyond-right-angle", QT_TRANSLATE_NOOP("words", "%1 degrees is beyond a right angle")},
      {"table.shorter-with-condyle", QT_TRANSLATE_NOOP("words", "%1 is shorter with its condyle than without")},
      {"table.impossible-shape", QT_TRANSLATE_NOOP("words", "%1 would be %2 times as long as high")},
      {"table.facet-without-width", QT_TRANSLATE_NOOP("words", "the facet of %1 is 0 wide: nothing could lie on it")},
      {"table.facet-without-height",
       QT_TRANSLATE_NOOP("words", "the facet of %1 would lie level with the centre of rotation")},
      {"table.odd-facet",
       QT_TRANSLATE_NOOP("words", "the %2 of %1 is %3, where the bones around it and the body plan suggest %4")},
      {"table.count-stretches",
       QT_TRANSLATE_NOOP("words",
                         "%1 %2 where the body plan has %3: as few of them are measured, the region comes out %4 times "
                         "as long as in the plan")},
      {"table.measure-not-used", QT_TRANSLATE_NOOP("words", "'%1' is not used for %2")},
      {"table.total-without-length", QT_TRANSLATE_NOOP("words", "the row '%1' has no length")},
      {"table.second-row", QT_TRANSLATE_NOOP("words", "a second row '%1'")},
      {"table.beyond-count", QT_TRANSLATE_NOOP("words", "%1 is beyond the %2 %3")},
      {"table.no-such-bone", QT_TRANSLATE_NOOP("words", "an animal with these counts has no %1")},
      {"table.implausible", QT_TRANSLATE_NOOP("words", "%1, %2: %3, where about %4 would be expected from %5")},
      {"table.by-neighbours", QT_TRANSLATE_NOOP("words", "the bones beside it")},
      {"table.by-other-side", QT_TRANSLATE_NOOP("words", "the bone of the other side")},
      {"table.by-same-bone", QT_TRANSLATE_NOOP("words", "the other measures of the bone")},
      {"table.by-animal", QT_TRANSLATE_NOOP("words", "the size of the animal")},
      {"table.measured-bone-goes", QT_TRANSLATE_NOOP("words", "%1 is measured and would be gone")},
      {"table.scanned-bone-goes", QT_TRANSLATE_NOOP("words", "%1 has a scan and would be gone")},
      {"table.humerus-to-femur", QT_TRANSLATE_NOOP("words", "humerus to femur is %1, outside the published %2 to %3")},
      {"table.tibia-to-femur", QT_TRANSLATE_NOOP("words", "tibia to femur is %1, outside the published %2 to %3")},

      // What mends it.
      {"table.write-header",
       QT_TRANSLATE_NOOP("words", "write a header line such as 'bone,length (mm)' and one row a bone")},
      {"table.write-plan", QT_TRANSLATE_NOOP("words", "write 'high browser' or 'low browser'")},
      {"table.write-count", QT_TRANSLATE_NOOP("words", "write a whole number from %1 to %2")},
      {"table.name-bone-column", QT_TRANSLATE_NOOP("words", "name the column that holds C1, D1, femur.L ... 'bone'")},
      {"table.keep-one-of-two", QT_TRANSLATE_NOOP("words", "keep one of the two")},
      {"table.taken-without-condyle",
       QT_TRANSLATE_NOOP("words", "it is taken as without; write 'length' (without) or 'length with condyle'")},
      {"table.use-known-title",
       QT_TRANSLATE_NOOP("words", "use a title of the list in the README, or name the column 'remark'")},
      {"table.write-length-unit", QT_TRANSLATE_NOOP("words", "write '%1 (mm), (cm) or (m)'")},
      {"table.write-angle-unit", QT_TRANSLATE_NOOP("words", "write '%1 (deg)'")},
      {"table.remove-surplus",
       QT_TRANSLATE_NOOP("words", "remove the surplus cells, or write numbers with a decimal point")},
      {"table.write-bone-id",
       QT_TRANSLATE_NOOP("words", "write an id such as C7, D3, Ca12, rib.D4.L, humerus.R or metacarpal3.L")},
      {"table.keep-one-row", QT_TRANSLATE_NOOP("words", "keep one of the two rows")},
      {"table.write-evidence",
       QT_TRANSLATE_NOOP("words", "write found, 'found, deformed', mirrored, 'scaled from another' or inferred")},
      {"table.write-number",
       QT_TRANSLATE_NOOP("words", "write a number in %1, or leave the cell blank when it is not known")},
      {"table.write-length",
       QT_TRANSLATE_NOOP("words", "write a length above zero, or leave the cell blank when it is not known")},
      {"table.check-header-unit", QT_TRANSLATE_NOOP("words", "check the unit in the header")},
      {"table.check-angle", QT_TRANSLATE_NOOP("words", "check the angle")},
      {"table.swap-lengths", QT_TRANSLATE_NOOP("words", "swap the two lengths, or check their columns")},
      {"table.write-facet-width",
       QT_TRANSLATE_NOOP("words",
                         "write a width above zero, leave the cell blank, or write 'facet length' 0 where the bone has "
                         "no facet")},
      {"table.write-facet-height",
       QT_TRANSLATE_NOOP("words",
                         "write a height above zero, leave the cell blank, or write 'facet length' 0 where the bone "
                         "has no facet")},
      {"table.not-carried",
       QT_TRANSLATE_NOOP("words",
                         "check it; it counts for this bone and the facets that meet it, and is not carried along the "
                         "column")},
      {"table.measure-region",
       QT_TRANSLATE_NOOP(
           "words",
           "write its measured total in a row 'neck', 'trunk', 'sacrum' or 'tail', or the lengths of more "
           "of its vertebrae")},
      {"table.check-decimal-point",
       QT_TRANSLATE_NOOP("words", "check length and cotyle height for a slip of the decimal point")},
      {"table.ignored", QT_TRANSLATE_NOOP("words", "the value is ignored")},
      {"table.write-total", QT_TRANSLATE_NOOP("words", "write the region's total length")},
      {"table.correct-number-or-count",
       QT_TRANSLATE_NOOP("words", "correct the number of the bone or the line '# %1: N'")},
      {"table.correct-id-or-counts",
       QT_TRANSLATE_NOOP("words", "correct the id, or the counts in the lines that start with #")},
      {"table.check-two-lengths", QT_TRANSLATE_NOOP("words", "check the two lengths")},
      {"table.slip-not-carried",
       QT_TRANSLATE_NOOP("words",
                         "%1; it counts for this bone and the facets that meet it, and is not carried along the "
                         "column")},
      {"table.times-too-large", QT_TRANSLATE_NOOP("words", "%1 times too large? Check the decimal point and the unit")},
      {"table.times-too-small", QT_TRANSLATE_NOOP("words", "%1 times too small? Check the decimal point and the unit")},
      {"table.digits-swapped", QT_TRANSLATE_NOOP("words", "digits swapped? %1 would fit")},
      {"table.zero-means-none",
       QT_TRANSLATE_NOOP("words", "0 says that the bone has no facet; leave the cell blank where that is not meant")},
      {"table.clear-it-first", QT_TRANSLATE_NOOP("words", "clear its row first")},
      {"table.remove-scan-first", QT_TRANSLATE_NOOP("words", "remove the scan first")},
      {"table.check-cell", QT_TRANSLATE_NOOP("words", "check it; it is used as it stands")},

      // Tables of landmarks.
      {"landmark.no-header", QT_TRANSLATE_NOOP("words", "there is no header")},
      {"landmark.unknown-bone", QT_TRANSLATE_NOOP("words", "there is no bone '%1'")},
      {"landmark.unnamed", QT_TRANSLATE_NOOP("words", "the landmark has no name")},
      {"landmark.too-far", QT_TRANSLATE_NOOP("words", "'%1' is more than a kilometre away")},
      {"landmark.twice", QT_TRANSLATE_NOOP("words", "%1 has '%2' twice")},
      {"landmark.write-header",
       QT_TRANSLATE_NOOP("words", "write bone,landmark,x (mm),y (mm),z (mm) in the first line")},
      {"landmark.write-bone-id", QT_TRANSLATE_NOOP("words", "write an id such as C5 or femur.L")},
      {"landmark.write-name", QT_TRANSLATE_NOOP("words", "write one, such as cranialRim")},
      {"landmark.write-coordinate", QT_TRANSLATE_NOOP("words", "write a coordinate")},
      {"landmark.check-unit", QT_TRANSLATE_NOOP("words", "check the unit")},
      {"landmark.leave-one-out", QT_TRANSLATE_NOOP("words", "leave one of them out")},

      // Tables of facets.
      {"facet-table.unknown-facet", QT_TRANSLATE_NOOP("words", "'%1' is no facet")},
      {"facet-table.no-direction", QT_TRANSLATE_NOOP("words", "the three numbers under '%1' give no direction")},
      {"facet-table.slide-along-normal",
       QT_TRANSLATE_NOOP("words", "the direction of sliding stands on the facet instead of lying in it")},
      {"facet-table.not-a-share", QT_TRANSLATE_NOOP("words", "'%1' is not between 0 and 1")},
      {"facet-table.bad-corner", QT_TRANSLATE_NOOP("words", "'%1' is no corner of an outline")},
      {"facet-table.not-convex", QT_TRANSLATE_NOOP("words", "the outline is not convex, or encloses nothing")},
      {"facet-table.twice", QT_TRANSLATE_NOOP("words", "%1 has '%2' twice")},
      {"facet-table.write-header",
       QT_TRANSLATE_NOOP("words",
                         "write bone, facet, centre x (mm), centre y (mm), centre z (mm), normal x, normal y, normal "
                         "z, length (mm), width (mm) in the first line")},
      {"facet-table.write-facet", QT_TRANSLATE_NOOP("words", "write prezyg.L, prezyg.R, postzyg.L or postzyg.R")},
      {"facet-table.write-direction",
       QT_TRANSLATE_NOOP("words", "write three numbers that are not all 0, such as 0, 0, 1")},
      {"facet-table.write-slide",
       QT_TRANSLATE_NOOP("words", "write a direction across the normal, or leave the three cells blank")},
      {"facet-table.write-share", QT_TRANSLATE_NOOP("words", "write a number from 0 to 1, or leave the cell blank")},
      {"facet-table.write-outline",
       QT_TRANSLATE_NOOP("words",
                         "write corners in order with / between them, such as '-8 -5 / 8 -5 / 8 5 / -8 5', or leave "
                         "the cell blank for an ellipse")},

      // Tables of footprints.
      {"track.no-print", QT_TRANSLATE_NOOP("words", "no footprint stands below the header")},
      {"track.no-distances", QT_TRANSLATE_NOOP("words", "there is no column of distances")},
      {"track.column-not-used", QT_TRANSLATE_NOOP("words", "the column '%1' is not used")},
      {"track.says-nothing", QT_TRANSLATE_NOOP("words", "the row says nothing of a print and is left out")},
      {"track.no-foot", QT_TRANSLATE_NOOP("words", "a print without a foot")},
      {"track.unclear-side", QT_TRANSLATE_NOOP("words", "'%1' does not tell left from right")},
      {"track.no-distance", QT_TRANSLATE_NOOP("words", "%1 %2 is no distance")},
      {"track.no-triangle", QT_TRANSLATE_NOOP("words", "no three prints can lie %1, %2 and %3 apart")},
      {"track.same-side", QT_TRANSLATE_NOOP("words", "%1 and %2 follow each other on the same side")},
      {"track.paces-differ", QT_TRANSLATE_NOOP("words", "the pace %1 differs from the next pace of %2, %3")},
      {"track.write-print", QT_TRANSLATE_NOOP("words", "write one row a print")},
      {"track.write-header",
       QT_TRANSLATE_NOOP("words",
                         "write a header line 'foot,pace_cm,next_pace_cm,stride_cm,length_cm' and one row a print")},
      {"track.write-unit", QT_TRANSLATE_NOOP("words", "write '%1', '%2' or '%3'")},
      {"track.nothing", QT_TRANSLATE_NOOP("words", "nothing need be done")},
      {"track.write-foot",
       QT_TRANSLATE_NOOP("words", "write a name such as LP1 or 'right fore' if the prints are to lie on the ground")},
      {"track.check-triangle",
       QT_TRANSLATE_NOOP("words",
                         "check the paces and the stride; the longest must be less than the other two together")},
      {"track.print-missing",
       QT_TRANSLATE_NOOP("words", "check whether a print between them is missing; the distances of %1 reach over it")},
      {"track.check-both", QT_TRANSLATE_NOOP("words", "check both; each row is calculated with its own")},
  };
  return kWordings;
}

QString cellName(const anatomy::BoneName& bone, anatomy::Measure measure) {
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1, %2")),
                {QString::fromStdString(toId(bone)), measureName(measure)});
}

QString cellOf(const anatomy::TableMessage& message) {
  if (!message.bone) return {};
  return message.measure ? cellName(*message.bone, *message.measure) : QString::fromStdString(toId(*message.bone));
}

QString say(const anatomy::TableMessage& message) {
  const QString cell = cellOf(message);
  const QStringList parts{QString::fromStdString(message.file),
                          QString::number(message.line),
                          QString::number(message.column),
                          say(message.cause),
                          say(message.mend),
                          cell};
  if (message.line == 0) return filled(translated(QT_TRANSLATE_NOOP("words", "%4; %5")), parts);
  if (message.column == 0) return filled(translated(QT_TRANSLATE_NOOP("words", "%1:%2: %4; %5")), parts);
  if (cell.isEmpty()) return filled(translated(QT_TRANSLATE_NOOP("words", "%1:%2, column %3: %4; %5")), parts);
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1:%2, column %3 (%6): %4; %5")), parts);
}

std::string blankTableText(anatomy::BodyPlan plan, const anatomy::RegionCounts& counts) {
  std::vector<std::string> remarks;
  const char* lines[] = {
      QT_TRANSLATE_NOOP("words",
                        "A measurement table to be filled in. Lengths in mm, angles in degrees; other units "
                        "may be written in the titles."),
      QT_TRANSLATE_NOOP("words",
                        "What is not known stays blank, and rows and columns that are not needed may be taken "
                        "out; the program infers the rest and says by which rule."),
      QT_TRANSLATE_NOOP("words",
                        "The length of a vertebra is its functional length, without the condyle; that with it "
                        "has a column of its own."),
      QT_TRANSLATE_NOOP("words",
                        "Under evidence stands found, 'found, deformed', mirrored, 'scaled from another' or "
                        "inferred; under source where the value is written."),
      QT_TRANSLATE_NOOP("words",
                        "A measured total of a region may be added as a row neck, trunk, sacrum or tail with a "
                        "length.")};
  for (const char* line : lines) remarks.push_back(translated(line).toStdString());
  return anatomy::blankMeasurementTable(plan, counts, remarks);
}

QString say(const std::vector<anatomy::TableMessage>& messages) {
  QStringList lines;
  for (const anatomy::TableMessage& message : messages) lines << say(message);
  return lines.join('\n');
}

}  // namespace zyga::ui
