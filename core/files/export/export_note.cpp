#include "core/files/export/export_note.h"

#include <algorithm>
#include <cstdint>
#include <cstring>

#include "core/files/disk/file_error.h"
#include "core/files/json/json.h"
#include "core/files/json/json_layout.h"

namespace zyga::files {
namespace {

std::string insertedAfter(std::string text, std::string_view mark, const std::string& what) {
  const auto at = text.find(mark);
  if (at == std::string::npos) throw FileError("the mesh library wrote no " + std::string(mark));
  return text.insert(at + mark.size(), what);
}

std::string gltfNote(std::string json, const std::string& note) {
  const auto asset = json.find("\"asset\"");
  const auto brace = asset == std::string::npos ? asset : json.find('{', asset);
  if (brace == std::string::npos) throw FileError("the mesh library wrote no asset");
  return json.insert(brace + 1, member("extras", onOneLine({member("note", jsonString(note))})) + ",");
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
  if (bytes.size() < kContent) throw FileError("the mesh library wrote no GLB header");
  const std::size_t length = numberAt(bytes, 12);
  std::string json = gltfNote(bytes.substr(kContent, length), note);
  json.append((4 - json.size() % 4) % 4, ' ');
  std::string out = bytes.substr(0, kContent) + json + bytes.substr(kContent + length);
  setNumber(out, 8, out.size());
  setNumber(out, 12, json.size());
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
