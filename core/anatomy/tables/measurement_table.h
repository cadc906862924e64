#pragma once

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/anatomy/measure.h"
#include "core/anatomy/specimen.h"

namespace zyga::anatomy {

/// Something the reader of a table has to say about one cell: what is wrong, and what to do about it.
struct TableMessage {
  enum class Severity { Warning, Error };
  Severity severity = Severity::Error;
  std::string file;
  int line = 0;    ///< 1 for the first line of the file
  int column = 0;  ///< 1 for the first column; 0 when the whole line is meant
  reason::Reason cause, mend;
  /// Whose cell it is, where that is known.
  std::optional<BoneName> bone = {};
  std::optional<Measure> measure = {};
};

/// For logs and failing tests, not for people: "neck.csv:4, column 3: table.not-a-number(abc); table.write-number(mm)".
std::string debugText(const TableMessage& message);
/// No message is an error.
bool noErrorAmong(const std::vector<TableMessage>& messages);

struct TableRow {
  BoneName name;
  Measures measures;
  Evidence evidence = Evidence::Inferred;
  std::string source;
  bool operator==(const TableRow&) const = default;
};

/// A measurement table: as read, only measured cells are known; once filled, every cell its bone needs is.
struct MeasurementTable {
  std::string name;
  BodyPlan plan = BodyPlan::HighBrowser;
  RegionCounts counts;
  std::vector<TableRow> rows;
  /// Measured totals along the column, m: "neck", "trunk" (with the loins), "sacrum", "tail".
  std::map<std::string, double> regionTotals;
  bool operator==(const MeasurementTable&) const = default;

  const TableRow* find(const BoneName& name) const;
  TableRow* find(const BoneName& name);
};

struct TableReading {
  MeasurementTable table;
  std::vector<TableMessage> messages;
  /// True when no message is an error; otherwise the table must not be used.
  bool usable() const;
};

/// Reads a table: UTF-8 text, comma or semicolon separated, one row a bone, a header row with the unit of each column
/// in brackets. Lines that start with # before the header set `specimen`, `plan`, and the region counts
/// ("# cervicals: 15"). Reports everything that is wrong, not only the first fault; never throws on bad text.
TableReading readMeasurementTable(std::string_view text, std::string_view fileName);

/// Writes the measured cells in mm and degrees, in the form readMeasurementTable takes.
std::string writeMeasurementTable(const MeasurementTable& table);

/// Fills every blank: mirrored from the other side, between neighbours along the column, or by the proportions of the
/// body plan; each filled cell says by which rule. Rows for all bones of the animal are present afterwards, in
/// skeleton order.
MeasurementTable fillBlanks(const MeasurementTable& measured);

/// The same for a filled table whose measured cells have changed: what was filled in before is forgotten first.
MeasurementTable fillAnew(MeasurementTable filled);

/// Warnings about proportions outside what has been published (humerus to femur, tibia to femur), each naming the left
/// bone that is compared with the femur. Part of what readMeasurementTable says.
std::vector<TableMessage> proportionWarnings(const MeasurementTable& filled);

}  // namespace zyga::anatomy
