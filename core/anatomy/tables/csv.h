#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace zyga::anatomy {

/// One line of a CSV text, its fields unquoted and trimmed.
struct CsvLine {
  int number = 0;  ///< 1 for the first line of the text
  std::vector<std::string> fields;
  bool comment = false;  ///< starts with #; fields[0] is the whole line
};

/// Splits comma or semicolon separated text (RFC 4180 quoting; the separator is the one the header line uses more).
/// Blank lines are left out; a byte order mark and CR line ends are taken in stride.
std::vector<CsvLine> splitCsv(std::string_view text);

/// A number with a dot or, in semicolon separated files, a comma as decimal mark. False when it is anything else.
bool parseNumber(std::string_view text, double& value);

std::string trimmed(std::string_view text);
std::string quotedCsv(const std::string& field);

}  // namespace zyga::anatomy
