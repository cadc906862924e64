#include "core/study/ground/trackway_table.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>
#include <cmath>
#include <utility>

#include "core/anatomy/tables/csv.h"
#include "core/anatomy/tables/table_reasons.h"
#include "core/study/ground/trackway_reasons.h"

namespace zyga::study {
namespace {

using anatomy::CsvLine;
using anatomy::TableMessage;
using Severity = TableMessage::Severity;
using reason::Reason;
using reason::text;
namespace table = anatomy::table;
using Distance = std::optional<double> Footprint::*;

constexpr std::array<std::pair<std::string_view, Distance>, 7> kDistances{{{"pace", &Footprint::pace},
                                                                           {"next_pace", &Footprint::nextPace},
                                                                           {"stride", &Footprint::stride},
                                                                           {"length", &Footprint::length},
                                                                           {"width", &Footprint::width},
                                                                           {"gauge", &Footprint::gauge},
                                                                           {"ahead", &Footprint::ahead}}};
constexpr std::array<std::pair<std::string_view, double>, 3> kUnits{{{"mm", 1e-3}, {"cm", 1e-2}, {"m", 1.0}}};
constexpr double kMostDistance = 20;  ///< m; more is a slip of the unit
constexpr double kAgreement = 1e-3;   ///< m, the same pace written in two rows

struct Column {
  bool foot = false;
  Distance distance = nullptr;
  double toSi = 1;
  std::string_view unit;
};

std::string lower(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) { return std::tolower(c); });
  return text;
}

/// To a thousandth of a millimetre: as it is written, so that a table reads the same again.
double asWritten(double metres) { return std::round(metres * 1e6) / 1e6; }

std::string centimetres(double metres) {
  std::array<char, 32> digits{};
  const double rounded = std::round(metres * 1e6) / 1e4;  // what was typed in mm or cm comes back as typed
  const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), rounded).ptr;
  return {digits.data(), end};
}

reason::Quantity length(double metres) { return {metres, reason::Unit::Length}; }

template <class List>
reason::Count countOf(const List& list) {
  return {static_cast<long long>(list.size())};
}

/// Reads one table; every member function reports into `reading`.
class TrackwayReader {
 public:
  TrackwayReader(std::string_view csv, std::string_view file) : file_(file), lines_(anatomy::splitCsv(csv)) {
    std::erase_if(lines_, [](const CsvLine& line) { return line.comment; });
  }

  TrackwayReading read() {
    if (!readHeader()) return std::move(reading_);
    for (std::size_t i = 1; i < lines_.size(); ++i) readRow(lines_[i]);
    if (reading_.trackway.prints.empty() && reading_.usable())
      fault(lines_[0].number, 0, {track::kNoPrint}, {track::kWritePrint});
    compareRows();
    return std::move(reading_);
  }

 private:
  void fault(int line, int column, Reason cause, Reason mend) {
    reading_.messages.push_back({Severity::Error, file_, line, column, std::move(cause), std::move(mend)});
  }
  void warn(int line, int column, Reason cause, Reason mend) {
    reading_.messages.push_back({Severity::Warning, file_, line, column, std::move(cause), std::move(mend)});
  }

  bool readHeader() {
    if (lines_.empty()) {
      fault(1, 0, {table::kEmpty}, {track::kWriteHeader});
      return false;
    }
    for (std::size_t i = 0; i < lines_[0].fields.size(); ++i) readTitle(static_cast<int>(i) + 1, lines_[0].fields[i]);
    const bool any = std::any_of(columns_.begin(), columns_.end(), [](const Column& c) { return c.distance; });
    if (!any) fault(lines_[0].number, 0, {track::kNoDistances}, {track::kWriteHeader});
    return any;
  }

  void readTitle(int number, const std::string& field) {
    const int line = lines_[0].number;
    const std::string name = lower(field);
    Column column;
    column.foot = name == "foot" || name == "print";
    for (const auto& [stem, distance] : kDistances) {
      if (name == stem) {
        fault(line, number, {table::kNoUnit, {text(field)}},
              {track::kWriteUnit, {text(name + "_cm"), text(name + "_mm"), text(name + "_m")}});
        column.distance = distance;
      }
      for (const auto& [unit, toSi] : kUnits) {
        if (name == std::string(stem) + "_" + std::string(unit)) column = {false, distance, toSi, unit};
      }
    }
    const auto same = [&](const Column& c) { return c.foot == column.foot && c.distance == column.distance; };
    if (!column.foot && !column.distance) {
      if (!name.empty()) warn(line, number, {track::kColumnNotUsed, {text(field)}}, {track::kNothing});
    } else if (std::any_of(columns_.begin(), columns_.end(), same)) {
      fault(line, number, {table::kSecondColumn, {text(field)}}, {table::kKeepOneOfTwo});
    }
    columns_.push_back(column);
  }

  void readRow(const CsvLine& line) {
    if (line.fields.size() > columns_.size()) {
      return fault(line.number, static_cast<int>(columns_.size()) + 1,
                   {table::kSurplusCells, {countOf(line.fields), countOf(columns_)}}, {table::kRemoveSurplus});
    }
    Footprint print;
    for (std::size_t i = 0; i < line.fields.size(); ++i) {
      const auto& field = line.fields[i];
      if (columns_[i].foot) print.foot = field;
      if (columns_[i].distance && !field.empty()) readDistance(line.number, i, field, print);
    }
    const bool empty = std::none_of(kDistances.begin(), kDistances.end(),
                                    [&print](const auto& known) { return (print.*known.second).has_value(); });
    if (empty && print.foot.empty()) return warn(line.number, 0, {track::kSaysNothing}, {track::kNothing});
    if (!footFromText(print.foot)) {
      warn(line.number, columnOf(nullptr),
           print.foot.empty() ? Reason(track::kNoFoot) : Reason(track::kUnclearSide, {text(print.foot)}),
           {track::kWriteFoot});
    }
    checkTriangle(line.number, print);
    reading_.trackway.prints.push_back(std::move(print));
    numbers_.push_back(line.number);
  }

  void readDistance(int line, std::size_t column, const std::string& field, Footprint& print) {
    const auto& title = columns_[column];
    const int number = static_cast<int>(column) + 1;
    double value = 0;
    if (!anatomy::parseNumber(field, value)) {
      return fault(line, number, {table::kNotANumber, {text(field)}}, {table::kWriteNumber, {text(title.unit)}});
    }
    value = asWritten(value * title.toSi);
    if (value <= 0 && title.distance != &Footprint::ahead && title.distance != &Footprint::gauge) {
      return fault(line, number, {track::kNoDistance, {text(field), text(title.unit)}}, {table::kWriteLength});
    }
    if (std::abs(value) > kMostDistance) {
      return fault(line, number, {table::kTooLong, {text(field), text(title.unit)}}, {table::kCheckHeaderUnit});
    }
    print.*title.distance = value;
  }

  void checkTriangle(int line, const Footprint& print) {
    if (!print.pace || !print.nextPace || !print.stride) return;
    if (paceAngulation(*print.pace, *print.nextPace, *print.stride)) return;
    fault(line, columnOf(&Footprint::stride),
          {track::kNoTriangle, {length(*print.pace), length(*print.nextPace), length(*print.stride)}},
          {track::kCheckTriangle});
  }

  /// The pace that follows a row's own pace stands in two rows; they should agree.
  void compareRows() {
    const auto& prints = reading_.trackway.prints;
    std::array<std::optional<std::size_t>, 2> last;  // by kind of foot
    for (std::size_t i = 0; i < prints.size(); ++i) {
      const auto foot = footFromText(prints[i].foot);
      if (!foot) continue;
      auto& before = last.at(isFore(*foot) ? 1 : 0);
      if (before) compare(*before, i);
      before = i;
    }
  }

  void compare(std::size_t before, std::size_t after) {
    const auto &a = reading_.trackway.prints[before], &b = reading_.trackway.prints[after];
    if (footFromText(a.foot) == footFromText(b.foot)) {
      warn(numbers_[after], columnOf(nullptr), {track::kSameSide, {text(a.foot), text(b.foot)}},
           {track::kPrintMissing, {text(a.foot)}});
    }
    if (a.nextPace && b.pace && std::abs(*a.nextPace - *b.pace) > kAgreement) {
      warn(numbers_[after], columnOf(&Footprint::pace),
           {track::kPacesDiffer, {length(*b.pace), text(a.foot), length(*a.nextPace)}}, {track::kCheckBoth});
    }
  }

  /// Number of the column of this distance, or of the foot.
  int columnOf(Distance distance) const {
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      if (distance ? columns_[i].distance == distance : columns_[i].foot) return static_cast<int>(i) + 1;
    }
    return 0;
  }

  std::string file_;
  std::vector<CsvLine> lines_;
  std::vector<Column> columns_;
  std::vector<int> numbers_;  ///< line of each print
  TrackwayReading reading_;
};

}  // namespace

bool TrackwayReading::usable() const { return anatomy::noErrorAmong(messages); }

TrackwayReading readTrackwayTable(std::string_view text, std::string_view fileName) {
  return TrackwayReader(text, fileName).read();
}

bool isTrackwayTable(std::string_view text) {
  for (const CsvLine& line : anatomy::splitCsv(text)) {
    if (line.comment) continue;
    return std::any_of(line.fields.begin(), line.fields.end(), [](const std::string& field) {
      const std::string name = lower(field);
      return name.starts_with("pace") || name.starts_with("next_pace") || name.starts_with("stride");
    });
  }
  return false;
}

std::string writeTrackwayTable(const Trackway& trackway) {
  std::vector<std::pair<std::string_view, Distance>> used;
  for (const auto& [stem, distance] : kDistances) {
    const bool any = std::any_of(trackway.prints.begin(), trackway.prints.end(),
                                 [d = distance](const Footprint& print) { return (print.*d).has_value(); });
    if (any || used.size() < 4) used.emplace_back(stem, distance);
  }
  std::string text = "foot";
  for (const auto& [stem, distance] : used) text += "," + std::string(stem) + "_cm";
  text += "\n";
  for (const auto& print : trackway.prints) {
    text += anatomy::quotedCsv(print.foot);
    for (const auto& [stem, distance] : used) text += "," + (print.*distance ? centimetres(*(print.*distance)) : "");
    text += "\n";
  }
  return text;
}

}  // namespace zyga::study
