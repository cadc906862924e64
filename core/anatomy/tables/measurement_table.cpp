#include "core/anatomy/tables/measurement_table.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <numbers>
#include <set>
#include <utility>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/region_ranges.h"
#include "core/anatomy/tables/csv.h"

namespace zyga::anatomy {
namespace {

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

/// What stands over one column of the table.
struct Column {
  enum class What { Bone, Measure, Evidence, Source, Ignored } what = What::Ignored;
  Measure measure = Measure::Length;
  double toSi = 1;
  std::string unit;
};

/// Reads one table; every member function reports into `reading`.
class Reader {
 public:
  Reader(std::string_view text, std::string_view file) : file_(file), lines_(splitCsv(text)) {}

  TableReading read() {
    readDirectives();
    if (readHeader()) readRows();
    settleCounts();
    return std::move(reading_);
  }

 private:
  void say(Severity severity, int line, int column, std::string cause, std::string mend) {
    reading_.messages.push_back({severity, file_, line, column, std::move(cause), std::move(mend)});
  }
  void fault(int line, int column, std::string cause, std::string mend) {
    say(Severity::Error, line, column, std::move(cause), std::move(mend));
  }
  void warn(int line, int column, std::string cause, std::string mend) {
    say(Severity::Warning, line, column, std::move(cause), std::move(mend));
  }

  void readDirectives() {
    for (const CsvLine& line : lines_) {
      if (!line.comment) continue;
      const std::string text = trimmed(std::string_view(line.fields[0]).substr(1));
      const auto colon = text.find(':');
      if (colon == std::string::npos) continue;  // a plain remark
      readDirective(line.number, lower(trimmed(text.substr(0, colon))), trimmed(text.substr(colon + 1)));
    }
  }

  void readDirective(int line, const std::string& key, const std::string& value) {
    if (key == "specimen") reading_.table.name = value;
    if (key == "plan") {
      const auto plan = bodyPlanFromText(lower(value));
      if (!plan) return fault(line, 0, "'" + value + "' is no body plan", "write 'high browser' or 'low browser'");
      reading_.table.plan = *plan;
    }
    for (const CountRange& range : kCounts) {
      if (key == range.word) readCount(line, range, value);
    }
  }

  void readCount(int line, const CountRange& range, const std::string& value) {
    double number = 0;
    if (!parseNumber(value, number) || number != std::floor(number) || number < range.least || number > range.most) {
      return fault(line, 0, "'" + value + "' " + std::string(range.word) + " cannot be",
                   "write a whole number from " + std::to_string(range.least) + " to " + std::to_string(range.most));
    }
    reading_.table.counts.*range.count = static_cast<int>(number);
    stated_.insert(range.kind);
  }

  bool readHeader() {
    const auto header = std::find_if(lines_.begin(), lines_.end(), [](const CsvLine& l) { return !l.comment; });
    if (header == lines_.end()) {
      fault(1, 0, "the table is empty", "write a header line such as 'bone,length (mm)' and one row a bone");
      return false;
    }
    header_ = static_cast<std::size_t>(header - lines_.begin());
    for (std::size_t i = 0; i < header->fields.size(); ++i) {
      columns_.push_back(readTitle(header->number, static_cast<int>(i) + 1, header->fields[i]));
    }
    const bool hasBones =
        std::any_of(columns_.begin(), columns_.end(), [](const Column& c) { return c.what == Column::What::Bone; });
    if (!hasBones) {
      fault(header->number, 0, "there is no column 'bone'", "name the column that holds C1, D1, femur.L ... 'bone'");
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
      fault(line, number, "a second column '" + name + "'", "keep one of the two");
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
      warn(line, number, "'" + field + "' does not say whether the condyle is counted",
           "it is taken as without; write 'length' (without) or 'length with condyle'");
      name = "length";
    }
    if (name == "length without condyle" || name == "functional length") name = "length";
    const auto measure = measureFromTitle(name);
    if (!measure) {
      return fault(line, number, "'" + field + "' is no measure this program knows",
                   "use a title of the list in the README, or name the column 'remark'");
    }
    const auto unit = std::find_if(kUnits.begin(), kUnits.end(), [&](const Unit& u) { return u.word == column.unit; });
    const std::string wanted = isAngle(*measure) ? "(deg)" : "(mm), (cm) or (m)";
    if (unit == kUnits.end() || unit->angle != isAngle(*measure)) {
      return fault(line, number,
                   column.unit.empty() ? "'" + field + "' has no unit"
                                       : "'" + column.unit + "' is no unit for " + std::string(title(*measure)),
                   "write '" + std::string(title(*measure)) + " " + wanted + "'");
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
                   std::to_string(line.fields.size()) + " cells under " + std::to_string(columns_.size()) + " titles",
                   "remove the surplus cells, or write numbers with a decimal point");
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
      fault(line.number, number, id.empty() ? "a row without a bone" : "'" + id + "' is no bone",
            "write an id such as C7, D3, Ca12, rib.D4.L, humerus.R or metacarpal3.L");
      return false;
    }
    if (const auto other = lineOf_.find(*name); other != lineOf_.end()) {
      fault(line.number, number, id + " stands in line " + std::to_string(other->second) + " already",
            "keep one of the two rows");
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
    fault(line, column, "'" + field + "' is no kind of evidence",
          "write found, 'found, deformed', mirrored, 'scaled from another' or inferred");
    return false;
  }

  void readCell(int line, int column, const std::string& field, const Column& title, TableRow& row) {
    double number = 0;
    if (!parseNumber(field, number)) {
      return fault(line, column, "'" + field + "' is not a number",
                   "write a number in " + title.unit + ", or leave the cell blank when it is not known");
    }
    const double value = number * title.toSi;
    const bool mayBeZero = isAngle(title.measure) || title.measure == Measure::SpineFork ||
                           title.measure == Measure::FacetLength || title.measure == Measure::FacetWidth ||
                           title.measure == Measure::FacetHeight || title.measure == Measure::FacetSpread;
    if (!isAngle(title.measure) && (value < 0 || (value == 0 && !mayBeZero))) {
      return fault(line, column, field + " " + title.unit + " is not a length",
                   "write a length above zero, or leave the cell blank when it is not known");
    }
    if (!isAngle(title.measure) && value > 20) {
      return fault(line, column, field + " " + title.unit + " is more than 20 m", "check the unit in the header");
    }
    if (isAngle(title.measure) && std::abs(value) > std::numbers::pi / 2) {
      return fault(line, column, field + " degrees is beyond a right angle", "check the angle");
    }
    row.measures[title.measure] = {value, CellOrigin::Measured, {}};
  }

  /// Ratios that no bone has: nearly always a slip of the decimal point or a wrong unit.
  void checkRatios(int line, const TableRow& row) {
    const auto& m = row.measures;
    const auto both = [&m](Measure a, Measure b) { return m[a].measured() && m[b].measured(); };
    if (both(Measure::Length, Measure::LengthWithCondyle) &&
        m[Measure::LengthWithCondyle].value < m[Measure::Length].value) {
      fault(line, 0, toId(row.name) + " is shorter with its condyle than without",
            "swap the two lengths, or check their columns");
    }
    if (isVertebra(row.name.kind) && both(Measure::Length, Measure::CotyleHeight)) {
      const double ratio = m[Measure::Length].value / m[Measure::CotyleHeight].value;
      const double least = row.name.number <= 1 ? 0.02 : 0.1;
      if (ratio < least || ratio > 15) {
        char text[64];
        std::snprintf(text, sizeof text, "%.3g times as long as high", ratio);
        fault(line, 0, toId(row.name) + " would be " + text,
              "check length and cotyle height for a slip of the decimal point");
      }
    }
    for (int i = 0; i < kMeasureCount; ++i) {
      const auto measure = static_cast<Measure>(i);
      const auto& used = measuresOf(row.name.kind);
      const bool optional = measure == Measure::PostzygLength || measure == Measure::Circumference;
      if (!m[measure].measured() || optional || std::find(used.begin(), used.end(), measure) != used.end()) continue;
      warn(line, 0, "'" + std::string(title(measure)) + "' is not used for " + toId(row.name), "it is kept in no file");
    }
  }

  void keepTotal(const CsvLine& line, const std::string& total, const TableRow& row) {
    if (!row.measures[Measure::Length].measured()) {
      return fault(line.number, 0, "the row '" + total + "' has no length", "write the region's total length");
    }
    if (!reading_.table.regionTotals.emplace(total, row.measures[Measure::Length].value).second) {
      fault(line.number, 0, "a second row '" + total + "'", "keep one of the two");
    }
  }

  /// Counts grow to the last vertebra a row names; more than were stated or can be is a fault.
  void settleCounts() {
    for (const CountRange& range : kCounts) {
      int& count = reading_.table.counts.*range.count;
      if (!stated_.contains(range.kind)) count = defaultCount(range);
      for (const TableRow& row : reading_.table.rows) {
        if (row.name.kind != range.kind || row.name.number <= count) continue;
        const bool tooMany = stated_.contains(range.kind) || row.name.number > range.most;
        if (tooMany) {
          const int most = stated_.contains(range.kind) ? count : range.most;
          fault(lineOf_[row.name], 0,
                toId(row.name) + " is beyond the " + std::to_string(most) + " " + std::string(range.word),
                "correct the number of the bone or the line '# " + std::string(range.word) + ": N'");
        } else {
          count = row.name.number;
        }
      }
    }
    dropStrays();
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
      fault(lineOf_[row.name], 0, "an animal with these counts has no " + toId(row.name),
            "correct the id, or the counts in the lines that start with #");
    }
  }

  std::string file_;
  std::vector<CsvLine> lines_;
  std::size_t header_ = 0;
  std::vector<Column> columns_;
  std::set<std::string> titles_;
  std::set<BoneKind> stated_;
  std::map<BoneName, int> lineOf_;
  TableReading reading_;
};

}  // namespace

std::string_view toText(BodyPlan plan) { return plan == BodyPlan::HighBrowser ? "high browser" : "low browser"; }

std::optional<BodyPlan> bodyPlanFromText(std::string_view text) {
  if (text == "high browser") return BodyPlan::HighBrowser;
  if (text == "low browser") return BodyPlan::LowBrowser;
  return std::nullopt;
}

std::string TableMessage::text() const {
  std::string where = file + ":" + std::to_string(line);
  if (column > 0) where += ", column " + std::to_string(column);
  return where + ": " + cause + "; " + mend;
}

const TableRow* MeasurementTable::find(const BoneName& bone) const {
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const TableRow& row) { return row.name == bone; });
  return found == rows.end() ? nullptr : &*found;
}

TableRow* MeasurementTable::find(const BoneName& bone) {
  return const_cast<TableRow*>(std::as_const(*this).find(bone));
}

bool TableReading::usable() const {
  return std::none_of(messages.begin(), messages.end(),
                      [](const TableMessage& m) { return m.severity == Severity::Error; });
}

TableReading readMeasurementTable(std::string_view text, std::string_view fileName) {
  return Reader(text, fileName).read();
}

}  // namespace zyga::anatomy
