#include "ui/document/open_file.h"

#include "core/files/disk/atomic_file.h"
#include "core/files/disk/plain_file.h"

namespace zyga::ui {
namespace {

constexpr reason::Id kTooLargeForTable{"file.too-large-for-table", 1};
/// Bigger than any measurement table: a picture or a scan with the wrong ending is refused before it is read.
constexpr std::uintmax_t kLargestTable = 16u << 20;

std::string readTableText(const std::filesystem::path& file) {
  std::error_code unknown;
  if (std::filesystem::file_size(file, unknown) > kLargestTable && !unknown)
    throw files::FileError({kTooLargeForTable, {reason::text(file.filename().string())}});
  return files::readWhole(file);
}

void openTable(Opened& opened) {
  const auto reading = anatomy::readMeasurementTable(readTableText(opened.file), opened.file.filename().string());
  opened.fromTable = true;
  opened.messages = reading.messages;
  if (reading.usable()) opened.project = files::projectFromTable(reading.table);
}

bool isTable(const std::filesystem::path& file) { return file.extension() == ".csv" || file.extension() == ".CSV"; }

}  // namespace

Opened openFile(const std::filesystem::path& file) {
  Opened opened;
  opened.file = file;
  try {
    // A pipe would keep the window waiting for ever.
    if (const auto kind = files::unplainAt(file))
      throw files::FileError(
          {files::fault::kCannotOpen, {files::pathText(file), reason::inner({files::fault::kNotPlain, {*kind}})}});
    if (isTable(file))
      openTable(opened);
    else
      opened.project = files::readProject(file);
  } catch (const std::exception& error) {
    opened.fault = files::reasonOf(error);
  }
  return opened;
}

}  // namespace zyga::ui
