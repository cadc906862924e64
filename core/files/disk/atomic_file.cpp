#include "core/files/disk/atomic_file.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <cctype>
#include <system_error>

#include "core/files/project/project.h"

namespace zyga::files {
namespace {

QString toQt(const std::filesystem::path& path) { return QFile::decodeName(path.c_str()); }

std::filesystem::path folderOf(const std::filesystem::path& path) {
  const auto folder = path.parent_path();
  return folder.empty() ? std::filesystem::path(".") : folder;
}

/// The system's own words, to go on a sentence with.
std::string causeOf(const QFileDevice& file) {
  auto text = file.errorString().toStdString();
  if (!text.empty()) text[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(text[0])));
  return text;
}

[[noreturn]] void failToSave(const std::filesystem::path& path, const std::string& cause, const std::string& mend) {
  throw FileError("cannot save " + path.string() + ": " + cause + "; " + mend);
}

}  // namespace

void checkPlace(const std::filesystem::path& path) {
  std::error_code ignored;
  const auto folder = folderOf(path);
  if (path.filename().empty()) failToSave(path, "the name of the file is missing", "add a name after the folder");
  if (!std::filesystem::exists(folder, ignored)) {
    failToSave(path, "there is no folder " + folder.string(), "make the folder first or choose another one");
  }
  if (!std::filesystem::is_directory(folder, ignored)) {
    failToSave(path, folder.string() + " is a file, not a folder", "choose a folder");
  }
  if (std::filesystem::is_directory(path, ignored)) {
    failToSave(path, "this is the name of a folder", "choose another name");
  }
  const QFileInfo file(toQt(path)), place(toQt(folder));
  if (file.exists() && !file.isWritable()) failToSave(path, "you may not write this file", "choose another name");
  if (!place.isWritable()) failToSave(path, "you may not write in the folder", "choose another folder");
}

void writeWhole(const std::filesystem::path& path, std::string_view bytes) {
  checkPlace(path);
  QSaveFile file(toQt(path));
  const auto fail = [&] {
    failToSave(path, causeOf(file), "make room or choose another folder; the old file, if any, is untouched");
  };
  if (!file.open(QIODevice::WriteOnly)) fail();
  const auto size = static_cast<qint64>(bytes.size());
  if (file.write(bytes.data(), size) != size || !file.commit()) fail();
}

std::string readWhole(const std::filesystem::path& path) {
  std::error_code ignored;
  if (!std::filesystem::exists(path, ignored))
    throw FileError("cannot open " + path.string() + ": there is no such file");
  if (std::filesystem::is_directory(path, ignored)) {
    throw FileError("cannot open " + path.string() + ": this is a folder, not a file");
  }
  QFile file(toQt(path));
  if (!file.open(QIODevice::ReadOnly)) {
    throw FileError("cannot open " + path.string() + ": " + causeOf(file));
  }
  const QByteArray bytes = file.readAll();
  if (file.error() != QFileDevice::NoError) {
    throw FileError("cannot read " + path.string() + ": " + causeOf(file));
  }
  return bytes.toStdString();
}

}  // namespace zyga::files
