#include "core/anatomy/tables/csv.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace zyga::anatomy {
namespace {

char separatorOf(std::string_view text) {
  while (!text.empty()) {
    const auto end = std::min(text.find('\n'), text.size());
    const std::string_view line = text.substr(0, end);
    if (!trimmed(line).empty() && line.front() != '#') {
      const auto semicolons = std::count(line.begin(), line.end(), ';');
      return semicolons > std::count(line.begin(), line.end(), ',') ? ';' : ',';
    }
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return ',';
}

/// Reads one field off the front; returns false at the end of the line.
bool takeField(std::string_view& text, char separator, int& line, std::string& field) {
  field.clear();
  bool quoted = false;
  std::size_t i = 0;
  for (; i < text.size(); ++i) {
    const char c = text[i];
    if (quoted) {
      if (c == '\n') ++line;
      if (c == '"' && i + 1 < text.size() && text[i + 1] == '"') {
        field += text[++i];
      } else if (c == '"') {
        quoted = false;
      } else {
        field += c;
      }
    } else if (c == '"' && trimmed(field).empty()) {
      quoted = true;
      field.clear();
    } else if (c == separator || c == '\n') {
      break;
    } else {
      field += c;
    }
  }
  field = trimmed(field);
  const bool more = i < text.size() && text[i] == separator;
  text.remove_prefix(std::min(i + 1, text.size()));
  return more;
}

}  // namespace

std::string trimmed(std::string_view text) {
  constexpr std::string_view blank = " \t\r\n";
  const auto first = text.find_first_not_of(blank);
  if (first == std::string_view::npos) return {};
  return std::string(text.substr(first, text.find_last_not_of(blank) - first + 1));
}

std::vector<CsvLine> splitCsv(std::string_view text) {
  if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
  const char separator = separatorOf(text);
  std::vector<CsvLine> lines;
  int number = 1;
  while (!text.empty()) {
    CsvLine line;
    line.number = number;
    if (text.front() == '#') {
      const auto end = std::min(text.find('\n'), text.size());
      line.comment = true;
      line.fields.push_back(trimmed(text.substr(0, end)));
      text.remove_prefix(std::min(end + 1, text.size()));
    } else {
      std::string field;
      bool more = true;
      while (more) {
        more = takeField(text, separator, number, field);
        line.fields.push_back(field);
      }
    }
    ++number;
    const bool blank = std::all_of(line.fields.begin(), line.fields.end(), [](const auto& f) { return f.empty(); });
    if (!blank) lines.push_back(std::move(line));
  }
  return lines;
}

bool parseNumber(std::string_view text, double& value) {
  std::string plain(text);
  if (plain.find('.') == std::string::npos && std::count(plain.begin(), plain.end(), ',') == 1) {
    std::replace(plain.begin(), plain.end(), ',', '.');
  }
  const char* first = plain.data() + (plain.starts_with('+') ? 1 : 0);
  const char* last = plain.data() + plain.size();
  const auto [end, error] = std::from_chars(first, last, value);
  return error == std::errc{} && end == last && first != last && std::isfinite(value);
}

std::string quotedCsv(const std::string& field) {
  if (field.find_first_of(",;\"\n#") == std::string::npos) return field;
  std::string quoted = "\"";
  for (const char c : field) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + '"';
}

}  // namespace zyga::anatomy
