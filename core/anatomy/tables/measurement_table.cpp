#include "core/anatomy/tables/measurement_table.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <numbers>
#include <set>
#include <utility>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/odd_facets.h"
#include "core/anatomy/tables/csv.h"
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
  int min, max;
};

constexpr std::array<CountRange, 4> kCountRanges{
    {{"cervicals", "neck", {"vertebrae.cervical"}, BoneKind::Cervical, &RegionCounts::cervical, 2, 19},
     {"dorsals", "trunk", {"vertebrae.dorsal"}, BoneKind::Dorsal, &RegionCounts::dorsal, 9, 14},
     {"sacrals", "sacrum", {"vertebrae.sacral"}, BoneKind::Sacral, &RegionCounts::sacral, 4, 6},
     {"caudals", "tail", {"vertebrae.caudal"}, BoneKind::Caudal, &RegionCounts::caudal, 10, 90}}};

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
    if (reading_.usable()) warnOfOddFacets();
    return std::move(reading_);
  }

 private:
  void say(Severity severity, int line, int column, Reason cause, Reason mend) {
    reading_.messages.push_back({severity, file_, line, column, std::move(cause), std::move(mend)});
  }
  void fault(int line, int column, Reason cause, Reason mend) {
    say(Severity::Error, line, column, std::move(cause), std::move(mend));
  }
  void warn(int line, int column, Reason cause, Reason mend) {
    say(Severity::Warning, line, column, std::move(cause), std::move(mend));
  }

  void readDirectives() {
    for (const CsvLine& line : lines_) {
      if (!line.comment) continue;
      const std::string remark = trimmed(std::string_view(line.fields[0]).substr(1));
      const auto colon = remark.find(':');
      if (colon == std::string::npos) continue;  // a plain remark
      readDirective(line.number, lower(trimmed(remark.substr(0, colon))), trimmed(remark.substr(colon + 1)));
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

  void readCount(int line, const CountRange& range, const std::string& value) {
    double number = 0;
    if (!parseNumber(value, number) || number != std::floor(number) || number < range.min || number > range.max) {
      return fault(line, 0, {table::kImpossibleCount, {text(value), range.term}},
                   {table::kWriteCount, {Count{range.min}, Count{range.max}}});
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

  void readRow(const CsvLine& line) {
    if (line.fields.size() > columns_.size()) {
      return fault(line.number, static_cast<int>(columns_.size()) + 1,
                   {table::kSurplusCells, {countOf(line.fields), countOf(columns_)}}, {table::kRemoveSurplus});
    }
    TableRow row;
    std::string total;
    if (!readName(line, row, total)) return;
    bool evidenceStated = false;
    for (std::size_t i = 0; i < line.fields.size(); ++i) {
      if (line.fields[i].empty()) continue;
      const int number = static_cast<int>(i) + 1;
      if (columns_[i].what == Column::What::Source) row.source = line.fields[i];
      if (columns_[i].what == Column::What::Evidence) {
        evidenceStated = readEvidence(line.number, number, line.fields[i], row);
      }
      if (columns_[i].what == Column::What::Measure) readCell(line.number, number, line.fields[i], columns_[i], row);
    }
    if (!total.empty()) return keepTotal(line, total, row);
    checkRatios(line.number, row);
    checkFacet(line.number, row);
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
    double number = 0;
    if (!parseNumber(field, number)) {
      return fault(line, column, {table::kNotANumber, {text(field)}}, {table::kWriteNumber, {text(title.unit)}});
    }
    const double value = number * title.toSi;
    const bool mayBeZero = title.measure == Measure::SpineFork || title.measure == Measure::FacetLength ||
                           title.measure == Measure::FacetWidth || title.measure == Measure::FacetHeight ||
                           title.measure == Measure::FacetSpread || title.measure == Measure::PostzygSpread;
    if (!isSigned(title.measure) && (value < 0 || (value == 0 && !mayBeZero))) {
      return fault(line, column, {table::kNotALength, {text(field), text(title.unit)}}, {table::kWriteLength});
    }
    if (!isAngle(title.measure) && std::abs(value) > 20) {
      return fault(line, column, {table::kTooLong, {text(field), text(title.unit)}}, {table::kCheckHeaderUnit});
    }
    if (isAngle(title.measure) && std::abs(value) > std::numbers::pi / 2) {
      return fault(line, column, {table::kBeyondRightAngle, {text(field)}}, {table::kCheckAngle});
    }
    row.measures[title.measure] = {value, CellOrigin::Measured, {}};
  }

  /// Ratios that no bone has: nearly always a slip of the decimal point or a wrong unit.
  void checkRatios(int line, const TableRow& row) {
    const auto& m = row.measures;
    const auto both = [&m](Measure a, Measure b) { return m[a].measured() && m[b].measured(); };
    if (both(Measure::Length, Measure::LengthWithCondyle) &&
        m[Measure::LengthWithCondyle].value < m[Measure::Length].value) {
      fault(line, 0, {table::kShorterWithCondyle, {text(toId(row.name))}}, {table::kSwapLengths});
    }
    if (isVertebra(row.name.kind) && both(Measure::Length, Measure::CotyleHeight)) {
      const double ratio = m[Measure::Length].value / m[Measure::CotyleHeight].value;
      const double least = row.name.number <= 1 ? 0.02 : 0.1;
      if (ratio < least || ratio > 15) {
        fault(line, 0, {table::kImpossibleShape, {text(toId(row.name)), Quantity{ratio}}}, {table::kCheckDecimalPoint});
      }
    }
    for (int i = 0; i < kMeasureCount; ++i) {
      const auto measure = static_cast<Measure>(i);
      const auto has = [measure](const std::vector<Measure>& list) {
        return std::find(list.begin(), list.end(), measure) != list.end();
      };
      if (!m[measure].measured() || has(measuresOf(row.name.kind)) || has(furtherMeasuresOf(row.name.kind))) continue;
      warn(line, 0, {table::kMeasureNotUsed, {text(toText(measure)), text(toId(row.name))}}, {table::kIgnored});
    }
  }

  /// A facet of no length is none (a rod of the tail), and may be written so; one of no width or height is a slip.
  void checkFacet(int line, const TableRow& row) {
    const auto zero = [&row](Measure measure) {
      return row.measures[measure].measured() && row.measures[measure].value == 0;
    };
    if (zero(Measure::FacetLength)) return;
    if (zero(Measure::FacetWidth)) {
      fault(line, columnOf(Measure::FacetWidth), {table::kFacetWithoutWidth, {text(toId(row.name))}},
            {table::kWriteFacetWidth});
    }
    if (zero(Measure::FacetHeight) && row.measures[Measure::FacetLength].measured()) {
      fault(line, columnOf(Measure::FacetHeight), {table::kFacetWithoutHeight, {text(toId(row.name))}},
            {table::kWriteFacetHeight});
    }
  }

  void warnOfOddFacets() {
    const bool any = std::any_of(columns_.begin(), columns_.end(), [](const Column& c) {
      return c.what == Column::What::Measure && (mateOf(c.measure) || c.measure == Measure::FacetTurn);
    });
    if (!any) return;
    for (const OddFacet& odd : oddFacets(reading_.table)) {
      const reason::Unit unit = isAngle(odd.measure) ? reason::Unit::Angle : reason::Unit::Length;
      warn(lineOf_[odd.bone], columnOf(odd.measure),
           {table::kOddFacet,
            {text(toId(odd.bone)), termOf(odd.measure), Quantity{odd.value, unit}, Quantity{odd.expected, unit}}},
           {table::kNotCarried});
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
        const bool tooMany = stated_.contains(range.kind) || row.name.number > range.max;
        if (tooMany) {
          const int most = stated_.contains(range.kind) ? count : range.max;
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

  int defaultCount(const CountRange& range) const {
    const RegionCounts counts =
        reading_.table.plan == BodyPlan::HighBrowser ? RegionCounts{13, 11, 5, 52} : RegionCounts{15, 10, 5, 80};
    return counts.*range.count;
  }

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

std::string_view toText(BodyPlan plan) { return plan == BodyPlan::HighBrowser ? "high browser" : "low browser"; }

std::optional<BodyPlan> bodyPlanFromText(std::string_view text) {
  if (text == "high browser") return BodyPlan::HighBrowser;
  if (text == "low browser") return BodyPlan::LowBrowser;
  return std::nullopt;
}

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
