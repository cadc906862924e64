#include "core/files/scan/scan_precheck.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstring>
#include <fstream>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

#include "core/files/json/json.h"
#include "core/files/scan/scan_faults.h"

namespace zyga::files {
namespace {

constexpr std::size_t kHeadSize = 64 * 1024;

struct Head {
  std::string bytes;
  std::uint64_t fileSize = 0;

  bool startsWith(std::string_view text) const { return std::string_view(bytes).starts_with(text); }
  std::uint32_t word(std::size_t at) const {
    std::uint32_t value = 0;
    if (at + sizeof(value) <= bytes.size()) std::memcpy(&value, bytes.data() + at, sizeof(value));
    return value;
  }
};

Head headOf(const std::filesystem::path& path) {
  Head head;
  head.fileSize = std::filesystem::file_size(path);
  std::ifstream file(path, std::ios::binary);
  head.bytes.resize(static_cast<std::size_t>(std::min<std::uint64_t>(head.fileSize, kHeadSize)));
  file.read(head.bytes.data(), static_cast<std::streamsize>(head.bytes.size()));
  if (!file) throw FileError(fault::kUnreadable);
  return head;
}

std::string endingOf(const std::filesystem::path& path) {
  std::string ending = path.extension().string();
  std::transform(ending.begin(), ending.end(), ending.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? c + 32 : c; });
  return ending;
}

constexpr std::size_t kShown = 40;  ///< bytes of a file's text that a fault shows

std::uint64_t countFrom(const std::string& text, reason::Value what) {
  std::uint64_t count = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), count);
  if (error != std::errc() || end != text.data() + text.size())
    throw FileError({fault::kBadCount, {shown(text.substr(0, kShown)), std::move(what)}});
  return count;
}

reason::Value counted(std::uint64_t count) { return reason::Count{static_cast<long long>(count)}; }

/// `count` things of at least `bytes` each must fit into what is left of the file.
void checkRoom(std::uint64_t count, std::uint64_t bytes, std::uint64_t& left, reason::Value what) {
  if (bytes > 0 && count > left / bytes) {
    throw FileError({fault::kDeclaresTooMany, {counted(count), std::move(what), counted(bytes), counted(left)}});
  }
  left -= count * bytes;
}

std::uint64_t sizeOfPlyType(const std::string& type) {
  constexpr std::array<std::pair<std::string_view, std::uint64_t>, 16> kTypes{{{"char", 1},
                                                                               {"uchar", 1},
                                                                               {"int8", 1},
                                                                               {"uint8", 1},
                                                                               {"short", 2},
                                                                               {"ushort", 2},
                                                                               {"int16", 2},
                                                                               {"uint16", 2},
                                                                               {"int", 4},
                                                                               {"uint", 4},
                                                                               {"int32", 4},
                                                                               {"uint32", 4},
                                                                               {"float", 4},
                                                                               {"float32", 4},
                                                                               {"double", 8},
                                                                               {"float64", 8}}};
  for (const auto& [name, size] : kTypes)
    if (name == type) return size;
  throw FileError({fault::kNoPlyType, {shown(type.substr(0, kShown))}});
}

struct PlyElement {
  std::string name;
  std::uint64_t count = 0;
  std::uint64_t bytes = 0;  ///< least size of one
  bool colours = false;
};

reason::Value elementsCalled(const std::string& name) {
  if (name == "vertex") return kVertices;
  if (name == "face") return kFaces;
  return reason::inner({fault::kElements, {shown(name.substr(0, kShown))}});
}

/// Property lines of a PLY header: "property float x", "property list uchar int vertex_indices".
void addProperty(PlyElement& element, std::istringstream& words, bool ascii) {
  std::string type, counted, name;
  words >> type;
  if (type == "list") words >> type >> counted;
  const std::uint64_t size = sizeOfPlyType(type);
  element.bytes += ascii ? 2 : size;  // in text at least a digit and a blank
  words >> name;
  element.colours |= name == "red" || name == "diffuse_red";
}

ScanHead checkPly(const Head& head) {
  std::istringstream lines(head.bytes);
  std::vector<PlyElement> elements;
  std::string line, word, name, count;
  bool ascii = true, ended = false;
  while (!ended && std::getline(lines, line)) {
    std::istringstream words(line);
    words >> word;
    if (word == "format" && words >> word) ascii = word == "ascii";
    if (word == "element" && words >> name >> count) elements.push_back({name, countFrom(count, elementsCalled(name))});
    if (word == "property" && !elements.empty()) addProperty(elements.back(), words, ascii);
    ended = word == "end_header";
  }
  if (!ended) throw FileError(fault::kPlyHeadOpen);
  std::uint64_t left = head.fileSize - static_cast<std::uint64_t>(std::max<std::streamoff>(0, lines.tellg()));
  if (ascii) ++left;  // the last blank may be missing
  ScanHead out;
  for (const PlyElement& element : elements) {
    checkRoom(element.count, element.bytes, left, elementsCalled(element.name));
    if (element.name == "face") {
      out.facesDeclared = out.triangles = element.count;
      out.faceColours = element.colours;
    } else if (element.name == "vertex") {
      out.vertices = element.count;
      out.vertexColours = element.colours;
    }
  }
  out.declares = true;
  return out;
}

bool isOff(const Head& head) {
  std::istringstream words(head.bytes.substr(0, 64));
  std::string word;
  words >> word;
  return word.size() <= 8 && word.ends_with("OFF");
}

/// Counts of an OFF file: the first numbers after the keyword, comments left out.
ScanHead checkOff(const Head& head) {
  std::istringstream lines(head.bytes);
  std::string line, text, keyword, vertices, faces;
  while (std::getline(lines, line) && text.size() < 256) text += line.substr(0, line.find('#')) + ' ';
  std::istringstream words(text);
  words >> keyword;
  if (keyword == "OFF" || keyword.ends_with("OFF")) words >> vertices >> faces;
  if (vertices == "BINARY") return {};
  std::uint64_t left = head.fileSize + 1;
  ScanHead out;
  out.declares = true;
  out.facesDeclared = out.triangles = countFrom(faces, kFaces);
  out.vertices = countFrom(vertices, kVertices);
  out.vertexColours = keyword.find('C') != std::string::npos;
  checkRoom(out.vertices, 6, left, kVertices);
  checkRoom(out.facesDeclared, 2, left, kFaces);
  return out;
}

/// Assimp takes the last vertex for one that is not there, and says nothing: a face that names one is told before.
/// Whatever else is wrong with the text is left to the reader.
void checkOffFaces(const std::filesystem::path& path) {
  std::ifstream file(path);
  std::string line;
  const auto nextLine = [&] {
    while (std::getline(file, line)) {
      line.resize(std::min(line.size(), line.find('#')));
      if (line.find_first_not_of(" \t\r") != std::string::npos) return true;
    }
    return false;
  };
  if (!nextLine()) return;
  std::istringstream first(line);
  std::string keyword;
  // COFF, NOFF, STOFF and 4OFF carry more numbers a vertex, but a line each as well; nOFF has its dimension first.
  if (!(first >> keyword) || !keyword.ends_with("OFF") || keyword.find('n') != std::string::npos) return;
  std::uint64_t vertices = 0, faces = 0;
  if (!(first >> vertices >> faces)) {
    if (!nextLine()) return;
    std::istringstream counts(line);
    if (!(counts >> vertices >> faces)) return;
  }
  for (std::uint64_t v = 0; v < vertices; ++v)
    if (!nextLine()) return;
  for (std::uint64_t f = 0; f < faces && nextLine(); ++f) {
    std::istringstream numbers(line);
    std::uint64_t corners = 0, vertex = 0;
    numbers >> corners;
    for (std::uint64_t i = 0; i < corners && numbers >> vertex; ++i)
      if (vertex >= vertices)
        throw FileError({fault::kFaceNamesNoVertex, {counted(f + 1), counted(vertex), counted(vertices)}});
  }
}

ScanHead checkStl(const Head& head) {
  constexpr std::uint64_t kHeader = 84, kTriangle = 50;
  const std::uint64_t declared = head.word(80);
  const bool exact = head.fileSize == kHeader + kTriangle * declared;
  if (head.startsWith("solid") && !exact) return {};  // the text form
  if (head.fileSize < kHeader) throw FileError(fault::kTooShortForStl);
  std::uint64_t left = head.fileSize - kHeader;
  checkRoom(declared, kTriangle, left, kTriangles);
  ScanHead out;
  out.stl = out.declares = true;
  out.facesDeclared = out.triangles = declared;
  out.vertices = 3 * declared;
  return out;
}

/// What the document asks its reader to know.
std::vector<std::string> requiredExtensions(const JsonDocument& document) {
  std::vector<std::string> names;
  if (const auto required = JsonPlace(document).find("extensionsRequired"))
    for (const auto& extension : required->items()) names.push_back(extension.string());
  return names;
}

/// The primitives of all meshes, as their accessors have it.
void countPrimitives(const JsonDocument& document, ScanHead& head) {
  const JsonPlace root(document);
  const auto meshes = root.find("meshes"), accessors = root.find("accessors");
  if (!meshes || !accessors) return;
  const std::vector<JsonPlace> known = accessors->items();
  const auto countOf = [&](const JsonPlace& accessor) {
    const int i = accessor.integer();
    if (i < 0 || static_cast<std::size_t>(i) >= known.size()) return std::uint64_t{0};
    return static_cast<std::uint64_t>(std::max(0, known[static_cast<std::size_t>(i)]["count"].integer()));
  };
  for (const JsonPlace& mesh : meshes->items())
    for (const JsonPlace& primitive : mesh["primitives"].items()) {
      const std::uint64_t vertices = countOf(primitive["attributes"]["POSITION"]);
      const auto indices = primitive.find("indices");
      head.vertices += vertices;
      head.triangles += (indices ? countOf(*indices) : vertices) / 3;
    }
}

/// The faults of the JSON come out with their place in it, without a name; whatever else is wrong with the document is
/// left to the reader.
ScanHead checkDocument(std::string_view json) {
  ScanHead out;
  out.gltf = true;
  std::vector<std::string> required;
  std::optional<JsonDocument> document;
  try {
    document = parseJson(json, "");
    required = requiredExtensions(*document);
  } catch (const FileError& error) {
    const auto& values = error.reason().values;  // name, line, column, perhaps the way, cause
    throw FileError({fault::kGltfJson, {values[1], values[2], values.back()}});
  }
  for (const std::string& name : required)
    if (name == "KHR_draco_mesh_compression" || name == "EXT_meshopt_compression")
      throw FileError({fault::kCompressed, {reason::text(name)}});
  try {
    countPrimitives(*document, out);
    out.declares = out.triangles > 0;
  } catch (const FileError&) {
    out.vertices = out.triangles = 0;
  }
  return out;
}

std::string wholeText(const std::filesystem::path& path, std::uint64_t offset, std::uint64_t size) {
  std::ifstream file(path, std::ios::binary);
  file.seekg(static_cast<std::streamoff>(offset));
  std::string text(static_cast<std::size_t>(size), '\0');
  file.read(text.data(), static_cast<std::streamsize>(size));
  if (!file) throw FileError(fault::kUnreadable);
  return text;
}

ScanHead checkGlb(const Head& head, const std::filesystem::path& path) {
  if (head.bytes.size() < 20) throw FileError(fault::kTooShortForGlb);
  if (head.word(4) == 2) {
    if (head.word(8) > head.fileSize)
      throw FileError({fault::kGlbCutShort, {counted(head.word(8)), counted(head.fileSize)}});
    if (head.word(12) > head.fileSize - 20) throw FileError(fault::kGltfJsonCutShort);
    return checkDocument(wholeText(path, 20, head.word(12)));
  }
  ScanHead old;
  old.gltf = true;
  return old;
}

ScanHead checkGltf(const Head& head, const std::filesystem::path& path) {
  return checkDocument(wholeText(path, 0, head.fileSize));
}

ScanHead checkedHead(const Head& head, const std::filesystem::path& path) {
  const std::string ending = endingOf(path);
  if (head.startsWith("ply\n") || head.startsWith("ply\r")) return checkPly(head);
  if (head.startsWith("glTF")) return checkGlb(head, path);
  if (ending == ".gltf") return checkGltf(head, path);
  if (ending == ".off" && isOff(head)) {
    const ScanHead off = checkOff(head);
    checkOffFaces(path);
    return off;
  }
  if (ending == ".stl") return checkStl(head);
  return {};
}

}  // namespace

ScanHead checkScanHead(const std::filesystem::path& path) {
  // In text half a vertex of three numbers and a line of three indices.
  constexpr std::uint64_t kTextTriangle = 30;
  const Head head = headOf(path);
  if (head.bytes.empty()) throw FileError(fault::kEmptyFile);
  ScanHead out = checkedHead(head, path);
  if (!out.declares) out.triangles = head.fileSize / kTextTriangle;
  return out;
}

}  // namespace zyga::files
