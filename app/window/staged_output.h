#pragma once

#include <QTemporaryDir>
#include <filesystem>

namespace zyga::ui {

/// A place beside the wanted file to write it first, so that a stopped or failed export leaves no half of a file and
/// what was there stays whole. Companions (materials, buffers) travel along.
class StagedOutput {
 public:
  /// Throws files::FileError when the folder cannot be written.
  explicit StagedOutput(std::filesystem::path wanted);

  /// Where to write: the wanted name in the staging folder.
  std::filesystem::path path() const;
  /// Throws std::filesystem::filesystem_error.
  void moveIntoPlace() const;

 private:
  std::filesystem::path wanted_;
  QTemporaryDir folder_;
};

}  // namespace zyga::ui
