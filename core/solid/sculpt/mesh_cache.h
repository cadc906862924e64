#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "core/solid/sculpt/sculpt.h"

namespace zyga::solid {

/// Sculpted meshes on disk, one file a key. The cache never fails: what cannot be read is not there, what cannot be
/// written is not kept.
class MeshCache {
 public:
  /// An empty path keeps nothing.
  explicit MeshCache(std::filesystem::path folder);
  /// Empty when the file is missing, damaged, or of another version.
  std::optional<BoneMesh> read(const std::string& key) const;
  /// Written beside and then renamed, so that no half-written file is ever found under the key.
  void write(const std::string& key, const BoneMesh& mesh) const;
  std::filesystem::path fileOf(const std::string& key) const;

 private:
  std::filesystem::path folder_;
};

}  // namespace zyga::solid
