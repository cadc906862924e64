#include "core/files/export/export_touch_up.h"

#include <algorithm>
#include <cstdint>
#include <cstring>

#include "core/files/json/json_write.h"

namespace zyga::files {
namespace {

[[noreturn]] void lacks(std::string_view mark) { throw FileError({fault::kLibraryLeftOut, {reason::text(mark)}}); }

/// Replaces what stands between `before` and `after` on their first occurrence.
void replaceBetween(std::string& text, std::string_view before, std::string_view after, std::string_view with) {
  const auto start = text.find(before);
  if (start == std::string::npos) lacks(before);
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

std::string insertedAfter(std::string text, std::string_view mark, const std::string& what) {
  const auto at = text.find(mark);
  if (at == std::string::npos) lacks(mark);
  return text.insert(at + mark.size(), what);
}

std::string gltfNote(std::string text, const std::string& note) {
  const auto asset = text.find("\"asset\"");
  const auto brace = asset == std::string::npos ? asset : text.find('{', asset);
  if (brace == std::string::npos) lacks("asset");
  return text.insert(brace + 1, "\"extras\": " + json::text(json::object({{"note", note}})) + ",");
}

std::uint32_t numberAt(const std::string& bytes, std::size_t at) {
  std::uint32_t value = 0;
  std::memcpy(&value, bytes.data() + at, sizeof value);
  return value;
}

void setNumber(std::string& bytes, std::size_t at, std::size_t value) {
  const auto number = static_cast<std::uint32_t>(value);
  std::memcpy(bytes.data() + at, &number, sizeof number);
}

/// glTF 2.0, section 4.4: a header of 12 bytes (magic, version, length of the file), then chunks of length, type and
/// content; JSON first, padded with spaces to four bytes.
std::string glbNote(const std::string& bytes, const std::string& note) {
  constexpr std::size_t kContent = 20;
  if (bytes.size() < kContent) lacks("GLB");
  const std::size_t length = numberAt(bytes, 12);
  std::string text = gltfNote(bytes.substr(kContent, length), note);
  text.append((4 - text.size() % 4) % 4, ' ');
  std::string out = bytes.substr(0, kContent) + text + bytes.substr(kContent + length);
  setNumber(out, 8, out.size());
  setNumber(out, 12, text.size());
  return out;
}

std::string stlNote(std::string bytes, const std::string& note) {
  constexpr std::size_t kHeader = 80;
  if (bytes.size() < kHeader) return bytes;
  std::string header = note.substr(0, kHeader);
  header.resize(kHeader, ' ');
  return bytes.replace(0, kHeader, header);
}

std::string xmlEscaped(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '&')
      out += "&amp;";
    else if (c == '<')
      out += "&lt;";
    else
      out += c;
  }
  return out;
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

std::string withNote(std::string bytes, std::string_view ending, const std::string& note) {
  if (note.empty()) return bytes;
  std::string line = note;
  std::replace(line.begin(), line.end(), '\n', ' ');
  if (ending == ".gltf") return gltfNote(std::move(bytes), line);
  if (ending == ".glb") return glbNote(bytes, line);
  if (ending == ".obj") return "# " + line + "\n" + bytes;
  if (ending == ".stl") return stlNote(std::move(bytes), line);
  if (ending == ".dae")
    return insertedAfter(std::move(bytes), "</authoring_tool>", "<comments>" + xmlEscaped(line) + "</comments>");
  // The PLY header's first line is "ply", its second the format.
  const auto second = bytes.find('\n', bytes.find('\n') + 1);
  return second == std::string::npos ? bytes : bytes.insert(second + 1, "comment " + line + "\n");
}

}  // namespace zyga::files
