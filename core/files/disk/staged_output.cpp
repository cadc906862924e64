#include "core/files/disk/staged_output.h"

#include "core/files/disk/file_error.h"

namespace zyga::files {

StagedOutput::StagedOutput(std::filesystem::path wanted)
    : wanted_(std::move(wanted)),
      folder_(QString::fromStdString((wanted_.parent_path() / ".zygapose-XXXXXX").string())) {
  if (!folder_.isValid()) throw FileError({fault::kFolderNotWritable, {pathText(wanted_.parent_path())}});
}

std::filesystem::path StagedOutput::path() const {
  return std::filesystem::path(folder_.path().toStdString()) / wanted_.filename();
}

void StagedOutput::moveIntoPlace() const {
  for (const auto& entry : std::filesystem::directory_iterator(folder_.path().toStdString()))
    std::filesystem::rename(entry.path(), wanted_.parent_path() / entry.path().filename());
}

}  // namespace zyga::files
