#include "app/verbs/text_table.h"

#include <algorithm>

namespace zyga::app {
namespace {

/// Characters of UTF-8: every byte that does not continue one.
std::size_t width(const std::string& text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xc0) != 0x80; }));
}

}  // namespace

std::string textTable(const std::vector<TextRow>& rows, const std::vector<bool>& words) {
  std::vector<std::size_t> widths(words.size());
  for (const auto& row : rows) {
    for (std::size_t i = 0; i + 1 < row.size(); ++i) widths[i] = std::max(widths[i], width(row[i]));
  }
  std::string out;
  for (const auto& row : rows) {
    out += " ";
    for (std::size_t i = 0; i < row.size(); ++i) {
      const bool last = i + 1 == row.size();
      const std::string blank(last ? 0 : widths[i] - width(row[i]), ' ');
      out += " " + (words[i] ? row[i] + blank : blank + row[i]) + (last ? "" : " ");
    }
    out += "\n";
  }
  return out;
}

}  // namespace zyga::app
