#include "core/anatomy/tables/table_fields.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "core/anatomy/tables/table_reasons.h"

namespace zyga::anatomy {
namespace {

std::string inLowerCase(std::string text) {
  for (char& c : text)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c + 32);
  return text;
}

/// "x (mm)" -> "x" and "mm", both in lower case and trimmed; the unit is empty where there is none.
std::pair<std::string, std::string> titleAndUnit(const std::string& header) {
  const auto open = header.find('('), close = header.rfind(')');
  if (open == std::string::npos || close == std::string::npos || close < open)
    return {inLowerCase(trimmed(header)), ""};
  return {inLowerCase(trimmed(header.substr(0, open))),
          inLowerCase(trimmed(header.substr(open + 1, close - open - 1)))};
}

/// Metres in a unit of length that tables may use (mm, cm, m); 0 for any other.
double metresIn(std::string_view unit) {
  if (unit == "mm") return 1e-3;
  if (unit == "cm") return 1e-2;
  return unit == "m" ? 1 : 0;
}

/// Without -0.
std::string fewestDigits(double value) {
  std::array<char, 64> digits{};
  return {digits.data(), std::to_chars(digits.data(), digits.data() + digits.size(), value == 0 ? 0.0 : value).ptr};
}

}  // namespace

std::string millimetresText(double length) { return fewestDigits(std::round(length * 1e9) / 1e6); }

std::string shareText(double share) { return fewestDigits(std::round(share * 1e9) / 1e9); }

MarkTableReader::MarkTableReader(std::string_view file, std::span<const MarkColumn> columns,
                                 const reason::Id& writeHeader, SecondColumn second)
    : file_(file),
      columns_(columns),
      writeHeader_(writeHeader),
      second_(second),
      place_(columns.size()),
      unit_(columns.size(), 1),
      unitName_(columns.size()) {}

void MarkTableReader::readLines(std::string_view csv, const std::function<void(const CsvLine&)>& row) {
  bool headed = false;
  for (const CsvLine& line : splitCsv(csv)) {
    if (line.comment) continue;
    if (headed)
      row(line);
    else
      header(line);
    headed = true;
  }
  if (!headed) fault(1, 0, {landmark::kNoHeader}, {writeHeader_});
}

void MarkTableReader::fault(int line, std::size_t place, reason::Reason cause, reason::Reason mend) {
  messages_.push_back({TableMessage::Severity::Error, std::string(file_), line, static_cast<int>(place),
                       std::move(cause), std::move(mend)});
}

void MarkTableReader::header(const CsvLine& line) {
  for (std::size_t i = 0; i < line.fields.size(); ++i) {
    const auto [title, unit] = titleAndUnit(line.fields[i]);
    const auto found = std::find_if(columns_.begin(), columns_.end(),
                                    [&title = title](const MarkColumn& known) { return known.title == title; });
    if (found == columns_.end()) continue;  // further columns are nobody's business
    const auto column = static_cast<std::size_t>(found - columns_.begin());
    if (place_[column] > 0 && second_ == SecondColumn::IsAFault)
      fault(line.number, i + 1, {table::kSecondColumn, {reason::text(title)}}, {table::kKeepOneOfTwo});
    place_[column] = i + 1;
    if (!found->length) continue;
    unit_[column] = metresIn(unit);
    unitName_[column] = unit;
    if (unit_[column] == 0)
      fault(line.number, i + 1, {table::kNoUnit, {reason::text(line.fields[i])}},
            {table::kWriteLengthUnit, {reason::text(title)}});
  }
  for (std::size_t column = 0; column < columns_.size(); ++column)
    if (place_[column] == 0 && columns_[column].needed)
      fault(line.number, 0, {table::kNoColumn, {reason::text(columns_[column].title)}}, {writeHeader_});
}

const std::string& MarkTableReader::field(const CsvLine& line, std::size_t column) const {
  static const std::string kNothing;
  const std::size_t place = place_[column];
  return place == 0 || place > line.fields.size() ? kNothing : line.fields[place - 1];
}

}  // namespace zyga::anatomy
