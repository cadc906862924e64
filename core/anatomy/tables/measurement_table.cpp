#include "core/anatomy/tables/measurement_table.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <numbers>
#include <set>
#include <utility>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/plan_table.h"
#include "core/anatomy/tables/blank_table.h"
#include "core/anatomy/tables/cell_checks.h"
#include "core/anatomy/tables/csv.h"
#include "core/anatomy/tables/plausibility.h"
#include "core/anatomy/tables/table_reasons.h"

namespace zyga::anatomy {
namespace {

using reason::Count;
using reason::Quantity;
using reason::Reason;
using reason::text;
using Severity = TableMessage::Severity;

constexpr std::array<std::string_view, 4> kTotals{"neck", "trunk", "sacrum", "tail"};

struct Unit {
  std::string_view word;
  double toSi;
  bool angle;
};

constexpr std::array<Unit, 5> kUnits{{{"mm", 1e-3, false},
                                      {"cm", 1e-2, false},
                                      {"m", 1.0, false},
                                      {"deg", std::numbers::pi / 180, true},
                                      {"°", std::numbers::pi / 180, true}}};

std::string lower(std::string text) {
  for (char& c : text) c = (c >= 'A' && c <= 'Z') ? static_cast<char>(c - 'A' + 'a') : c;
  return text;
}

template <class List>
Count countOf(const List& list) {
  return {static_cast<long long>(list.size())};
}

/// How many vertebrae a region may have, and what a table calls them.
struct CountRange {
  std::string_view word;   ///< as in "# cervicals: 13"
  std::string_view total;  ///< the row of the region's total
  reason::Term term;
  BoneKind kind;
  int RegionCounts::*count;
  CountBounds PlanTable::*bounds;
};

constexpr std::array<CountRange, 5> kCountRanges{
    {{"cervicals", "neck", {"vertebrae.cervical"}, BoneKind::Cervical, &RegionCounts::cervical, &PlanTable::cervicals},
     {"dorsals", "trunk", {"vertebrae.dorsal"}, BoneKind::Dorsal, &RegionCounts::dorsal, &PlanTable::dorsals},
     {"lumbars", "trunk", {"vertebrae.lumbar"}, BoneKind::Lumbar, &RegionCounts::lumbar, &PlanTable::lumbars},
     {"sacrals", "sacrum", {"vertebrae.sacral"}, BoneKind::Sacral, &RegionCounts::sacral, &PlanTable::sacrals},
     {"caudals", "tail", {"vertebrae.caudal"}, BoneKind::Caudal, &RegionCounts::caudal, &PlanTable::caudals}}};

/// What stands over one column of the table.
struct Column {
  enum class What { Bone, Measure, Evidence, Source, Ignored } what = What::Ignored;
  Measure measure = Measure::Length;
  double toSi = 1;
  std::string unit;
};

/// Reads one table; every member function reports into `reading`.
class MeasurementReader {
 public:
  MeasurementReader(std::string_view csv, std::string_view file) : file_(file), lines_(splitCsv(csv)) {}

  TableReading read() {
    readDirectives();
    if (readHeader()) readRows();
    settleCounts();
    if (!columns_.empty()) judgeCells();
    const auto place = [](const TableMessage& m) { return std::pair(m.line, m.column); };
    std::stable_sort(reading_.messages.begin(), reading_.messages.end(),
                     [place](const TableMessage& a, const TableMessage& b) { return place(a) < place(b); });
    return std::move(reading_);
  }

 private:
  void say(Severity severity, int line, int column, Reason cause, Reason mend) {
    reading_.messages.push_back({severity, file_, line, column, std::move(cause), std::move(mend), bone_, measure_});
  }
  void fault(int line, int column, Reason cause, Reason mend) {
    say(Severity::Error, line, column, std::move(cause), std::move(mend));
  }
  void warn(int line, int column, Reason cause, Reason mend) {
    say(Severity::Warning, line, column, std::move(cause), std::move(mend));
  }

  void readDirectives() {
    for (const bool plan : {true, false}) {
      for (const CsvLine& line : lines_) {
        if (!line.comment) continue;
        const std::string remark = trimmed(std::string_view(line.fields[0]).substr(1));
        const auto colon = remark.find(':');
        if (colon == std::string::npos) continue;  // a plain remark
        const std::string key = lower(trimmed(remark.substr(0, colon)));
        if ((key == "plan") == plan) readDirective(line.number, key, trimmed(remark.substr(colon + 1)));
      }
    }
  }

  void readDirective(int line, const std::string& key, const std::string& value) {
    if (key == "specimen") reading_.table.name = value;
    if (key == "plan") {
      const auto plan = bodyPlanFromText(lower(value));
      if (!plan) return fault(line, 0, {table::kUnknownPlan, {text(value)}}, {table::kWritePlan});
      reading_.table.plan = *plan;
    }
    for (const CountRange& range : kCountRanges) {
      if (key == range.word) readCount(line, range, value);
    }
  }

  const PlanTable& plan() const { return planTable(reading_.table.plan); }

  void readCount(int line, const CountRange& range, const std::string& value) {
    const CountBounds bounds = plan().*range.bounds;
    double number = 0;
    if (!parseNumber(value, number) || number != std::floor(number) || number < bounds.least || number > bounds.most) {
      return fault(line, 0, {table::kImpossibleCount, {text(value), range.term}},
                   {table::kWriteCount, {Count{bounds.least}, Count{bounds.most}}});
    }
    reading_.table.counts.*range.count = static_cast<int>(number);
    stated_[range.kind] = line;
  }

  bool readHeader() {
    const auto header = std::find_if(lines_.begin(), lines_.end(), [](const CsvLine& l) { return !l.comment; });
    if (header == lines_.end()) {
      fault(1, 0, {table::kEmpty}, {table::kWriteHeader});
      return false;
    }
    header_ = static_cast<std::size_t>(header - lines_.begin());
    for (std::size_t i = 0; i < header->fields.size(); ++i) {
      columns_.push_back(readTitle(header->number, static_cast<int>(i) + 1, header->fields[i]));
    }
    const bool hasBones =
        std::any_of(columns_.begin(), columns_.end(), [](const Column& c) { return c.what == Column::What::Bone; });
    if (!hasBones) {
      fault(header->number, 0, {table::kNoColumn, {text("bone")}}, {table::kNameBoneColumn});
    }
    return hasBones;
  }

  Column readTitle(int line, int number, const std::string& field) {
    Column column;
    std::string name = lower(field);
    const auto open = name.find_first_of("([");
    if (open != std::string::npos) {
      const auto close = name.find_first_of(")]", open);
      column.unit = trimmed(name.substr(open + 1, close == std::string::npos ? close : close - open - 1));
      name = trimmed(name.substr(0, open));
    }
    if (!titles_.insert(name).second && !name.empty()) {
      fault(line, number, {table::kSecondColumn, {text(name)}}, {table::kKeepOneOfTwo});
      return column;
    }
    if (name == "bone") column.what = Column::What::Bone;
    if (name == "evidence") column.what = Column::What::Evidence;
    if (name == "source") column.what = Column::What::Source;
    if (column.what != Column::What::Ignored || name == "remark" || name.empty()) return column;
    readMeasureTitle(line, number, field, name, column);
    return column;
  }

  void readMeasureTitle(int line, int number, const std::string& field, std::string name, Column& column) {
    if (name == "centrum length") {
      warn(line, number, {table::kCondyleUnclear, {text(field)}}, {table::kTakenWithoutCondyle});
      name = "length";
    }
    if (name == "length without condyle" || name == "functional length") name = "length";
    const auto measure = measureFromText(name);
    if (!measure) {
      return fault(line, number, {table::kUnknownMeasure, {text(field)}}, {table::kUseKnownTitle});
    }
    const auto unit = std::find_if(kUnits.begin(), kUnits.end(), [&](const Unit& u) { return u.word == column.unit; });
    if (unit == kUnits.end() || unit->angle != isAngle(*measure)) {
      return fault(line, number,
                   column.unit.empty() ? Reason(table::kNoUnit, {text(field)})
                                       : Reason(table::kWrongUnit, {text(column.unit), termOf(*measure)}),
                   {isAngle(*measure) ? table::kWriteAngleUnit : table::kWriteLengthUnit, {text(toText(*measure))}});
    }
    column.what = Column::What::Measure;
    column.measure = *measure;
    column.toSi = unit->toSi;
  }

  void readRows() {
    for (std::size_t i = header_ + 1; i < lines_.size(); ++i) {
      if (!lines_[i].comment) readRow(lines_[i]);
    }
  }

  /// Every cell is looked at, whatever is wrong with the others: all faults of a row are told at once.
  void readRow(const CsvLine& line) {
    TableRow row;
    std::string total;
    const bool named = readName(line, row, total);
    if (line.fields.size() > columns_.size()) {
      fault(line.number, static_cast<int>(columns_.size()) + 1,
            {table::kSurplusCells, {countOf(line.fields), countOf(columns_)}}, {table::kRemoveSurplus});
    }
    bool evidenceStated = false;
    for (std::size_t i = 0; i < std::min(line.fields.size(), columns_.size()); ++i) {
      if (line.fields[i].empty()) continue;
      const int number = static_cast<int>(i) + 1;
      if (columns_[i].what == Column::What::Source) row.source = line.fields[i];
      if (columns_[i].what == Column::What::Evidence) {
        evidenceStated = readEvidence(line.number, number, line.fields[i], row);
      }
      if (columns_[i].what == Column::What::Measure) readCell(line.number, number, line.fields[i], columns_[i], row);
    }
    if (named && !total.empty())
      keepTotal(line, total, row);
    else if (named)
      keepRow(line, std::move(row), evidenceStated);
    bone_.reset();
  }

  void keepRow(const CsvLine& line, TableRow row, bool evidenceStated) {
    for (const CellFault& wrong : rowFaults(row)) {
      // Which of the two is meant is known once all of the table is (judgeCells).
      if (wrong.cause.id == table::kImpossibleShape)
        impossible_[row.name] = wrong;
      else
        fault(line.number, wrong.measure ? columnOf(*wrong.measure) : 0, wrong.cause, wrong.mend);
    }
    warnOfUnused(line.number, row);
    if (!evidenceStated && row.measures.anyMeasured()) row.evidence = Evidence::Found;
    lineOf_[row.name] = line.number;
    reading_.table.rows.push_back(std::move(row));
  }

  bool readName(const CsvLine& line, TableRow& row, std::string& total) {
    const auto column =
        std::find_if(columns_.begin(), columns_.end(), [](const Column& c) { return c.what == Column::What::Bone; });
    const auto i = static_cast<std::size_t>(column - columns_.begin());
    const int number = static_cast<int>(i) + 1;
    const std::string id = i < line.fields.size() ? line.fields[i] : "";
    if (std::find(kTotals.begin(), kTotals.end(), id) != kTotals.end()) {
      total = id;
      return true;
    }
    const auto name = parseBoneId(id);
    if (!name) {
      fault(line.number, number, id.empty() ? Reason(table::kRowWithoutBone) : Reason(table::kUnknownBone, {text(id)}),
            {table::kWriteBoneId});
      return false;
    }
    bone_ = *name;
    if (const auto other = lineOf_.find(*name); other != lineOf_.end()) {
      fault(line.number, number, {table::kBoneTwice, {text(id), Count{other->second}}}, {table::kKeepOneRow});
      return false;
    }
    row.name = *name;
    return true;
  }

  bool readEvidence(int line, int column, const std::string& field, TableRow& row) {
    const auto evidence = evidenceFromText(lower(field));
    if (evidence) {
      row.evidence = *evidence;
      return true;
    }
    fault(line, column, {table::kUnknownEvidence, {text(field)}}, {table::kWriteEvidence});
    return false;
  }

  void readCell(int line, int column, const std::string& field, const Column& title, TableRow& row) {
    measure_ = title.measure;
    double number = 0;
    if (!parseNumber(field, number)) {
      fault(line, column, {table::kNotANumber, {text(field)}}, {table::kWriteNumber, {text(title.unit)}});
    } else if (const auto wrong = valueFault(title.measure, number * title.toSi, field, title.unit)) {
      fault(line, column, wrong->cause, wrong->mend);
    } else {
      row.measures[title.measure] = {number * title.toSi, CellOrigin::Measured, {}};
    }
    measure_.reset();
  }

  void warnOfUnused(int line, const TableRow& row) {
    for (int i = 0; i < kMeasureCount; ++i) {
      const auto measure = static_cast<Measure>(i);
      if (!row.measures[measure].measured() || takesMeasure(row.name.kind, measure)) continue;
      warn(line, columnOf(measure), {table::kMeasureNotUsed, {text(toText(measure)), text(toId(row.name))}},
           {table::kIgnored});
    }
  }

  /// Once all of the table is known: cells that are hard to believe, and which cell of an impossible shape is meant.
  void judgeCells() {
    std::set<BoneName> doubted;
    for (const ImplausibleCell& cell : implausibleCells(reading_.table)) {
      bone_ = cell.bone;
      measure_ = cell.measure;
      doubted.insert(cell.bone);
      const bool ofShape = cell.measure == Measure::Length || cell.measure == Measure::CotyleHeight;
      const auto shape = impossible_.find(cell.bone);
      if (ofShape && shape != impossible_.end()) {
        fault(lineOf_[cell.bone], columnOf(cell.measure), shape->second.cause, shape->second.mend);
        impossible_.erase(shape);
      } else {
        warn(lineOf_[cell.bone], columnOf(cell.measure), causeOf(cell), mendOf(cell));
      }
    }
    measure_.reset();
    for (const auto& [bone, shape] : impossible_) {
      bone_ = bone;
      fault(lineOf_[bone], 0, shape.cause, shape.mend);
    }
    bone_.reset();
    if (reading_.usable()) judgeProportions(doubted);
  }

  /// Proportions outside the published ones, where they do not come of a cell that has been remarked on.
  void judgeProportions(const std::set<BoneName>& doubted) {
    const auto isDoubted = [&doubted](const BoneName& bone) {
      const bool leg = bone.kind == BoneKind::Femur || bone.kind == BoneKind::Tibia || bone.kind == BoneKind::Humerus;
      return leg && doubted.contains(bone);
    };
    if (std::any_of(doubted.begin(), doubted.end(), isDoubted)) return;
    for (TableMessage message : proportionWarnings(fillBlanks(reading_.table))) {
      message.file = file_;
      // Where none of the two was measured no line of the table is at fault.
      for (const BoneName& bone : {*message.bone, mirrored(*message.bone)}) {
        const auto line = lineOf_.find(bone);
        if (line == lineOf_.end()) continue;
        message.bone = bone;
        message.line = line->second;
        message.column = columnOf(*message.measure);
      }
      reading_.messages.push_back(std::move(message));
    }
  }

  int columnOf(Measure measure) const {
    const auto column = std::find_if(columns_.begin(), columns_.end(), [&](const Column& c) {
      return c.what == Column::What::Measure && c.measure == measure;
    });
    return static_cast<int>(column - columns_.begin()) + 1;
  }

  void keepTotal(const CsvLine& line, const std::string& total, const TableRow& row) {
    if (!row.measures[Measure::Length].measured()) {
      return fault(line.number, 0, {table::kTotalWithoutLength, {text(total)}}, {table::kWriteTotal});
    }
    if (!reading_.table.regionTotals.emplace(total, row.measures[Measure::Length].value).second) {
      fault(line.number, 0, {table::kSecondRow, {text(total)}}, {table::kKeepOneOfTwo});
    }
  }

  /// Counts grow to the last vertebra a row names; more than were stated or can be is a fault.
  void settleCounts() {
    for (const CountRange& range : kCountRanges) {
      int& count = reading_.table.counts.*range.count;
      if (!stated_.contains(range.kind)) count = defaultCount(range);
      for (const TableRow& row : reading_.table.rows) {
        if (row.name.kind != range.kind || row.name.number <= count) continue;
        const int possible = (plan().*range.bounds).most;
        const bool tooMany = stated_.contains(range.kind) || row.name.number > possible;
        if (tooMany) {
          const int most = stated_.contains(range.kind) ? count : possible;
          fault(lineOf_[row.name], 0, {table::kBeyondCount, {text(toId(row.name)), Count{most}, range.term}},
                {table::kCorrectNumberOrCount, {text(range.word)}});
        } else {
          count = row.name.number;
          grownAt_[range.kind] = lineOf_[row.name];
        }
      }
      warnOfStretch(range, count);
    }
    dropStrays();
  }

  /// Each vertebra of a region that is not measured keeps the plan's proportion to the body, whatever their number:
  /// more of them make a longer neck. From a tenth of the plan's length on that is told, where less than half is
  /// measured.
  void warnOfStretch(const CountRange& range, int count) {
    const int planned = defaultCount(range);
    if (planned == 0) return;
    const double stretch = static_cast<double>(count) / planned;
    if (std::abs(stretch - 1) <= 0.1 || reading_.table.regionTotals.contains(std::string(range.total))) return;
    const auto measured =
        std::count_if(reading_.table.rows.begin(), reading_.table.rows.end(), [&](const TableRow& row) {
          return row.name.kind == range.kind &&
                 (row.measures[Measure::Length].measured() || row.measures[Measure::LengthWithCondyle].measured());
        });
    if (2 * measured >= count) return;
    const int line = stated_.contains(range.kind) ? stated_[range.kind] : grownAt_[range.kind];
    warn(line, 0, {table::kCountStretches, {Count{count}, range.term, Count{planned}, Quantity{stretch}}},
         {table::kMeasureRegion});
  }

  int defaultCount(const CountRange& range) const { return plan().counts.*range.count; }

  /// Rows of bones that this animal does not have (a rib of D14 where there are 11 dorsals, an eleventh toe).
  void dropStrays() {
    const std::vector<BoneName> all = allBones(reading_.table.plan, reading_.table.counts);
    const std::set<BoneName> known(all.begin(), all.end());
    for (const TableRow& row : reading_.table.rows) {
      if (known.contains(row.name) || isVertebra(row.name.kind)) continue;
      fault(lineOf_[row.name], 0, {table::kNoSuchBone, {text(toId(row.name))}}, {table::kCorrectIdOrCounts});
    }
  }

  std::string file_;
  std::vector<CsvLine> lines_;
  std::size_t header_ = 0;
  std::vector<Column> columns_;
  std::set<std::string> titles_;
  std::map<BoneKind, int> stated_;   ///< the line that states a count
  std::map<BoneKind, int> grownAt_;  ///< the line of the vertebra that made a count grow last
  std::map<BoneName, int> lineOf_;
  std::map<BoneName, CellFault> impossible_;  ///< centra of a shape that none has
  std::optional<BoneName> bone_;              ///< whose cells are being looked at
  std::optional<Measure> measure_;
  TableReading reading_;
};

std::string sixDigits(double value) {
  char digits[32];
  std::snprintf(digits, sizeof digits, "%.6g", value);
  return digits;
}

std::vector<Measure> usedMeasures(const MeasurementTable& table) {
  std::vector<Measure> used;
  for (int i = 0; i < kMeasureCount; ++i) {
    const auto measure = static_cast<Measure>(i);
    const bool any = std::any_of(table.rows.begin(), table.rows.end(),
                                 [measure](const TableRow& r) { return r.measures[measure].measured(); });
    if (any || measure == Measure::Length) used.push_back(measure);
  }
  return used;
}

}  // namespace

std::string debugText(const TableMessage& message) {
  std::string where = message.file + ":" + std::to_string(message.line);
  if (message.column > 0) where += ", column " + std::to_string(message.column);
  return where + ": " + debugText(message.cause) + "; " + debugText(message.mend);
}

const TableRow* MeasurementTable::find(const BoneName& bone) const {
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const TableRow& row) { return row.name == bone; });
  return found == rows.end() ? nullptr : &*found;
}

TableRow* MeasurementTable::find(const BoneName& bone) {
  return const_cast<TableRow*>(std::as_const(*this).find(bone));
}

bool noErrorAmong(const std::vector<TableMessage>& messages) {
  return std::none_of(messages.begin(), messages.end(),
                      [](const TableMessage& m) { return m.severity == TableMessage::Severity::Error; });
}

bool TableReading::usable() const { return noErrorAmong(messages); }

TableReading readMeasurementTable(std::string_view text, std::string_view fileName) {
  return MeasurementReader(text, fileName).read();
}

std::string writeMeasurementTable(const MeasurementTable& table) {
  const std::vector<Measure> used = usedMeasures(table);
  std::string out = "# specimen: " + table.name + "\n# plan: " + std::string(toText(table.plan)) + "\n";
  for (const CountRange& range : kCountRanges) {
    if ((planTable(table.plan).*range.bounds).most == 0) continue;
    out += "# " + std::string(range.word) + ": " + std::to_string(table.counts.*range.count) + "\n";
  }
  out += "bone";
  for (const Measure m : used) out += "," + std::string(toText(m)) + (isAngle(m) ? " (deg)" : " (mm)");
  out += ",evidence,source\n";
  for (const auto& [region, total] : table.regionTotals) {
    out += region + "," + sixDigits(total * 1e3) + std::string(used.size() + 1, ',') + "\n";
  }
  for (const TableRow& row : table.rows) {
    if (!row.measures.anyMeasured()) continue;
    out += toId(row.name);
    for (const Measure m : used) {
      const Cell& cell = row.measures[m];
      const double scale = isAngle(m) ? 180 / std::numbers::pi : 1e3;
      out += "," + (cell.measured() ? sixDigits(cell.value * scale) : std::string());
    }
    out += "," + quotedCsv(std::string(toText(row.evidence))) + "," + quotedCsv(row.source) + "\n";
  }
  return out;
}

}  // namespace zyga::anatomy
