#include "core/solid/sculpt/mesh_cache.h"

#include <atomic>
#include <cstring>
#include <fstream>
#include <iterator>
#include <random>
#include <system_error>

namespace zyga::solid {

namespace {

constexpr char kMagic[8] = {'z', 'y', 'b', 'o', 'n', 'e', '0', '1'};
constexpr std::size_t kMostLevels = 16;

std::uint64_t checksum(const char* data, std::size_t size) {
  std::uint64_t sum = 0xcbf29ce484222325;
  for (std::size_t i = 0; i < size; ++i) sum = (sum ^ static_cast<unsigned char>(data[i])) * 0x100000001b3;
  return sum;
}

class Writer {
 public:
  template <class T>
  void value(const T& v) {
    const char* bytes = reinterpret_cast<const char*>(&v);
    out_.insert(out_.end(), bytes, bytes + sizeof(T));
  }
  template <class T>
  void list(const std::vector<T>& items) {
    value(static_cast<std::uint64_t>(items.size()));
    const char* bytes = reinterpret_cast<const char*>(items.data());
    out_.insert(out_.end(), bytes, bytes + items.size() * sizeof(T));
  }
  const std::vector<char>& bytes() const { return out_; }

 private:
  std::vector<char> out_;
};

/// Reads what Writer wrote; every size is checked against what is left before anything is reserved.
class Reader {
 public:
  Reader(const char* data, std::size_t size) : data_(data), left_(size) {}
  template <class T>
  bool value(T& v) {
    if (left_ < sizeof(T)) return false;
    std::memcpy(&v, data_, sizeof(T));
    advance(sizeof(T));
    return true;
  }
  template <class T>
  bool list(std::vector<T>& items) {
    std::uint64_t count = 0;
    if (!value(count) || count > left_ / sizeof(T)) return false;
    items.resize(count);
    if (count > 0) std::memcpy(static_cast<void*>(items.data()), data_, count * sizeof(T));
    advance(count * sizeof(T));
    return true;
  }
  bool done() const { return left_ == 0; }

 private:
  void advance(std::size_t by) { data_ += by, left_ -= by; }
  const char* data_;
  std::size_t left_;
};

bool readLevel(Reader& reader, TriangleMesh& mesh) {
  if (!reader.list(mesh.positions) || !reader.list(mesh.normals) || !reader.list(mesh.occlusion) ||
      !reader.list(mesh.triangles))
    return false;
  const std::size_t n = mesh.positions.size();
  const auto beside = [n](std::size_t size) { return size == 0 || size == n; };
  if (!beside(mesh.normals.size()) || !beside(mesh.occlusion.size())) return false;
  for (const auto& t : mesh.triangles)
    for (const std::uint32_t v : t)
      if (v >= n) return false;
  return true;
}

std::optional<BoneMesh> parse(const std::vector<char>& bytes) {
  std::uint64_t sum = 0;
  const std::size_t head = sizeof(kMagic) + sizeof(sum);
  if (bytes.size() < head || std::memcmp(bytes.data(), kMagic, sizeof(kMagic)) != 0) return std::nullopt;
  std::memcpy(&sum, bytes.data() + sizeof(kMagic), sizeof(sum));
  if (sum != checksum(bytes.data() + head, bytes.size() - head)) return std::nullopt;
  Reader reader(bytes.data() + head, bytes.size() - head);
  std::uint64_t levels = 0;
  if (!reader.value(levels) || levels == 0 || levels > kMostLevels) return std::nullopt;
  BoneMesh mesh;
  mesh.levels.resize(levels);
  for (TriangleMesh& level : mesh.levels)
    if (!readLevel(reader, level)) return std::nullopt;
  return reader.done() ? std::optional(std::move(mesh)) : std::nullopt;
}

std::string uniqueSuffix() {
  static std::atomic<unsigned> counter{0};
  static const unsigned process = std::random_device{}();
  std::string suffix = std::to_string(process);
  suffix += '-';
  suffix += std::to_string(counter++);
  suffix += ".part";
  return suffix;
}

}  // namespace

MeshCache::MeshCache(std::filesystem::path folder) : folder_(std::move(folder)) {
  std::error_code ignored;
  if (!folder_.empty()) std::filesystem::create_directories(folder_, ignored);
}

std::filesystem::path MeshCache::fileOf(const std::string& key) const { return folder_ / (key + ".bone"); }

std::optional<BoneMesh> MeshCache::read(const std::string& key) const {
  if (folder_.empty()) return std::nullopt;
  std::ifstream file(fileOf(key), std::ios::binary);
  if (!file) return std::nullopt;
  const std::vector<char> bytes{std::istreambuf_iterator<char>(file), {}};
  return parse(bytes);
}

void MeshCache::write(const std::string& key, const BoneMesh& mesh) const {
  if (folder_.empty()) return;
  Writer body;
  body.value(static_cast<std::uint64_t>(mesh.levels.size()));
  for (const TriangleMesh& level : mesh.levels) {
    body.list(level.positions);
    body.list(level.normals);
    body.list(level.occlusion);
    body.list(level.triangles);
  }
  const std::filesystem::path part = fileOf(key + "." + uniqueSuffix());
  std::ofstream file(part, std::ios::binary);
  const std::uint64_t sum = checksum(body.bytes().data(), body.bytes().size());
  file.write(kMagic, sizeof(kMagic));
  file.write(reinterpret_cast<const char*>(&sum), sizeof(sum));
  file.write(body.bytes().data(), static_cast<std::streamsize>(body.bytes().size()));
  file.close();
  std::error_code failed;
  if (file) std::filesystem::rename(part, fileOf(key), failed);
  if (!file || failed) std::filesystem::remove(part, failed);
}

}  // namespace zyga::solid
