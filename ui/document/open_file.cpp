#include "ui/document/open_file.h"

#include <fstream>
#include <iterator>

namespace zyga::ui {
namespace {

/// Bigger than any measurement table: a picture or a scan with the wrong ending is refused before it is read.
constexpr std::uintmax_t kLargestTable = 16u << 20;

std::string readWhole(const std::filesystem::path& file) {
  std::error_code failure;
  const auto size = std::filesystem::file_size(file, failure);
  if (failure)
    throw files::FileError(file.filename().string() + " cannot be read (" + failure.message() +
                           "); check that it is still there");
  if (size > kLargestTable)
    throw files::FileError(file.filename().string() + " is too large for a measurement table; choose a CSV file");
  std::ifstream stream(file, std::ios::binary);
  if (!stream) throw files::FileError(file.filename().string() + " cannot be opened; check that you may read it");
  return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
}

void openTable(Opened& opened) {
  const auto reading = anatomy::readMeasurementTable(readWhole(opened.file), opened.file.filename().string());
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
    if (isTable(file))
      openTable(opened);
    else
      opened.project = files::readProject(file);
  } catch (const std::exception& error) {
    opened.error = error.what();
  }
  return opened;
}

}  // namespace zyga::ui
