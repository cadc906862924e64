#pragma once

#include <atomic>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace zyga::solid {

/// What takes long to make of bones (meshes, level sets), kept on disk under keys that stand for all it was made of,
/// one file a key. The cache never fails: what cannot be read is not there, what cannot be written is not kept. Threads
/// may share it, and processes the folder.
class BoneCache {
 public:
  /// The folder may hold about this much, bytes: a dozen animals with meshes and level sets.
  static constexpr std::uintmax_t kLimit = std::uintmax_t{1} << 30;

  /// What an entry is of; also the ending of its file.
  enum class Kind { Mesh, LevelSet };

  /// An empty path keeps nothing.
  explicit BoneCache(std::filesystem::path folder, std::uintmax_t limit = kLimit);
  /// Trims the folder where something was written.
  ~BoneCache();
  BoneCache(const BoneCache&) = delete;
  BoneCache& operator=(const BoneCache&) = delete;

  /// Empty when the file is missing, cut short, changed, or of another version. What was read counts as just used.
  std::optional<std::vector<char>> read(Kind kind, const std::string& key) const;
  /// Written beside and then renamed, so that no half-written file is ever found under the key.
  void write(Kind kind, const std::string& key, const std::vector<char>& bytes) const;
  /// Removes the files that were not used for longest until the rest is within the limit, and what writers that died
  /// have left behind.
  void trim() const;

  bool keeps() const { return !folder_.empty(); }
  std::filesystem::path fileOf(Kind kind, const std::string& key) const;

 private:
  std::filesystem::path folder_;
  std::uintmax_t limit_;
  mutable std::atomic<bool> written_ = false;
};

}  // namespace zyga::solid
