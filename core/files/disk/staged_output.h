#pragma once

#include <QTemporaryDir>
#include <filesystem>

namespace zyga::files {

/// A place beside the wanted file to write it first, so that stopped or failed work leaves no half of a file and what
/// was there stays whole. Companions (materials, buffers, further pictures) travel along.
class StagedOutput {
 public:
  /// Throws FileError when the folder cannot be written.
  explicit StagedOutput(std::filesystem::path wanted);

  /// Where to write: the wanted name in the staging folder.
  std::filesystem::path path() const;
  /// Throws std::filesystem::filesystem_error.
  void moveIntoPlace() const;

 private:
  std::filesystem::path wanted_;
  QTemporaryDir folder_;
};

}  // namespace zyga::files
