#include "core/solid/cache/bone_cache.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cstring>
#include <fstream>
#include <random>
#include <system_error>

#include "core/solid/cache/bytes.h"

namespace zyga::solid {

namespace {

/// A file: the format's name, the digest of the content, the content.
constexpr std::array<char, 8> kFormat{'z', 'y', 'b', 'o', 'n', 'e', '0', '2'};
constexpr std::size_t kHead = kFormat.size() + sizeof(std::uint64_t);
constexpr std::chrono::hours kOrphaned{1};  ///< age of a part that nobody writes any more
constexpr const char* kPart = ".part";

const char* endingOf(BoneCache::Kind kind) { return kind == BoneCache::Kind::Mesh ? ".bone" : ".levelset"; }

std::uint64_t digestOf(std::span<const char> content) {
  ContentDigest digest;
  digest.add(content);
  return digest.sum();
}

std::string uniqueSuffix() {
  static std::atomic<unsigned> counter{0};
  static const unsigned process = std::random_device{}();
  std::string suffix(1, '.');
  suffix.append(std::to_string(process)).append("-").append(std::to_string(counter++)).append(kPart);
  return suffix;
}

std::optional<std::vector<char>> wholeFile(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary | std::ios::ate);
  if (!file) return std::nullopt;
  const std::streamoff size = file.tellg();
  if (size < 0) return std::nullopt;
  std::vector<char> bytes(static_cast<std::size_t>(size));
  file.seekg(0);
  file.read(bytes.data(), size);
  return file ? std::optional(std::move(bytes)) : std::nullopt;
}

struct Entry {
  std::filesystem::file_time_type used;
  std::uintmax_t size = 0;
  std::filesystem::path path;
};

}  // namespace

BoneCache::BoneCache(std::filesystem::path folder, std::uintmax_t limit) : folder_(std::move(folder)), limit_(limit) {
  std::error_code ignored;
  if (keeps()) std::filesystem::create_directories(folder_, ignored);
}

BoneCache::~BoneCache() {
  if (!written_) return;
  try {
    trim();
  } catch (const std::exception&) {  // no memory for the list: the next one trims
  }
}

std::filesystem::path BoneCache::fileOf(Kind kind, const std::string& key) const {
  return folder_ / (key + endingOf(kind));
}

std::optional<std::vector<char>> BoneCache::read(Kind kind, const std::string& key) const {
  if (!keeps()) return std::nullopt;
  const std::filesystem::path path = fileOf(kind, key);
  auto bytes = wholeFile(path);
  if (!bytes || bytes->size() < kHead || !std::equal(kFormat.begin(), kFormat.end(), bytes->begin()))
    return std::nullopt;
  std::uint64_t digest = 0;
  std::memcpy(&digest, bytes->data() + kFormat.size(), sizeof digest);
  if (digest != digestOf(std::span<const char>(*bytes).subspan(kHead))) return std::nullopt;
  bytes->erase(bytes->begin(), bytes->begin() + kHead);
  std::error_code ignored;
  std::filesystem::last_write_time(path, std::filesystem::file_time_type::clock::now(), ignored);
  return bytes;
}

void BoneCache::write(Kind kind, const std::string& key, const std::vector<char>& bytes) const {
  if (!keeps()) return;
  const std::filesystem::path path = fileOf(kind, key), part = path.string() + uniqueSuffix();
  std::ofstream file(part, std::ios::binary);
  const std::uint64_t digest = digestOf(bytes);
  file.write(kFormat.data(), kFormat.size());
  file.write(reinterpret_cast<const char*>(&digest), sizeof digest);
  file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  file.close();
  std::error_code failed;
  if (file) std::filesystem::rename(part, path, failed);
  if (!file || failed)
    std::filesystem::remove(part, failed);
  else
    written_ = true;
}

void BoneCache::trim() const {
  if (!keeps()) return;
  const auto now = std::filesystem::file_time_type::clock::now();
  std::vector<Entry> entries;
  std::uintmax_t all = 0;
  std::error_code failed;
  for (std::filesystem::directory_iterator at(folder_, failed), end; !failed && at != end; at.increment(failed)) {
    std::error_code gone;  // another process may be faster
    const Entry entry{at->last_write_time(gone), at->file_size(gone), at->path()};
    if (gone || !at->is_regular_file(gone)) continue;
    if (entry.path.extension() == kPart) {
      if (now - entry.used > kOrphaned) std::filesystem::remove(entry.path, gone);
    } else if (entry.path.extension() == endingOf(Kind::Mesh) || entry.path.extension() == endingOf(Kind::LevelSet)) {
      entries.push_back(entry);
      all += entry.size;
    }
  }
  if (all <= limit_) return;
  std::sort(entries.begin(), entries.end(), [](const Entry& a, const Entry& b) { return a.used < b.used; });
  for (const Entry& entry : entries) {
    if (all <= limit_) break;
    std::error_code gone;
    std::filesystem::remove(entry.path, gone);
    all -= entry.size;
  }
}

}  // namespace zyga::solid
