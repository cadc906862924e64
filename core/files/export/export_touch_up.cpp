#include "core/files/export/export_touch_up.h"

#include <algorithm>

namespace zyga::files {
namespace {

/// Replaces what stands between `before` and `after` on their first occurrence.
void replaceBetween(std::string& text, std::string_view before, std::string_view after, std::string_view with) {
  const auto start = text.find(before);
  if (start == std::string::npos) throw FileError("the mesh library wrote no " + std::string(before) + " header");
  const auto from = start + before.size();
  text.replace(from, text.find(after, from) - from, with);
}

std::string_view unitAttributes(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::Centimetre:
      return R"(name="centimeter" meter="0.01" )";
    case LengthUnit::Millimetre:
      return R"(name="millimeter" meter="0.001" )";
    case LengthUnit::Metre:
      break;
  }
  return R"(name="meter" meter="1" )";
}

}  // namespace

std::string withColladaHeader(std::string_view document, LengthUnit unit, UpAxis up) {
  std::string text(document);
  replaceBetween(text, "<unit ", "/>", unitAttributes(unit));
  replaceBetween(text, "<up_axis>", "</up_axis>", up == UpAxis::Z ? "Z_UP" : "Y_UP");
  replaceBetween(text, "<authoring_tool>", "</authoring_tool>", "Zygapose");
  replaceBetween(text, "<author>", "</author>", "");
  return text;
}

std::string withoutExtensions(std::string_view document) {
  std::string text(document);
  const auto start = text.find("\"extensionsUsed\"");
  if (start == std::string::npos) return text;
  const auto close = text.find(']', start);
  const auto comma = text.find_first_not_of(" \t\r\n", close + 1);
  const auto end = comma != std::string::npos && text[comma] == ',' ? comma : close;
  std::fill(text.begin() + static_cast<std::ptrdiff_t>(start), text.begin() + static_cast<std::ptrdiff_t>(end) + 1,
            ' ');
  return text;
}

}  // namespace zyga::files
