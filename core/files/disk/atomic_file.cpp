#include "core/files/disk/atomic_file.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <cctype>
#include <cerrno>
#include <system_error>

#include "core/files/disk/file_error.h"
#include "core/files/disk/plain_file.h"

namespace zyga::files {
namespace {

QString toQt(const std::filesystem::path& path) { return QFile::decodeName(path.c_str()); }

std::filesystem::path folderOf(const std::filesystem::path& path) {
  const auto folder = path.parent_path();
  return folder.empty() ? std::filesystem::path(".") : folder;
}

/// What the system said last, else the file's own words, to go on a sentence with. errno was cleared before the work.
reason::Reason causeOf(const QFileDevice& file, int error) {
  if (error != 0) return systemCause(error);
  auto text = file.errorString().toStdString();
  if (!text.empty()) text[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(text[0])));
  return {fault::kInItsWords, {reason::text(text)}};
}

[[noreturn]] void failToSave(const std::filesystem::path& path, reason::Reason cause, reason::Reason mend) {
  throw FileError(
      {fault::kCannotSave, {pathText(path), reason::inner(std::move(cause)), reason::inner(std::move(mend))}});
}

[[noreturn]] void failToOpen(const std::filesystem::path& path, reason::Reason cause) {
  throw FileError({fault::kCannotOpen, {pathText(path), reason::inner(std::move(cause))}});
}

}  // namespace

void checkPlace(const std::filesystem::path& path) {
  std::error_code ignored;
  const auto folder = folderOf(path);
  if (path.filename().empty()) failToSave(path, fault::kNameMissing, fault::kAddName);
  if (!std::filesystem::exists(folder, ignored)) {
    failToSave(path, {fault::kNoFolder, {pathText(folder)}}, fault::kMakeFolder);
  }
  if (!std::filesystem::is_directory(folder, ignored)) {
    failToSave(path, {fault::kFileNotFolder, {pathText(folder)}}, fault::kChooseFolder);
  }
  if (std::filesystem::is_directory(path, ignored)) {
    failToSave(path, fault::kNameOfFolder, fault::kChooseName);
  }
  const QFileInfo file(toQt(path)), place(toQt(folder));
  if (file.exists() && !file.isWritable()) failToSave(path, fault::kMayNotWriteFile, fault::kChooseName);
  if (!place.isWritable()) failToSave(path, fault::kMayNotWriteFolder, fault::kChooseOtherFolder);
}

void writeWhole(const std::filesystem::path& path, std::string_view bytes) {
  checkPlace(path);
  QSaveFile file(toQt(path));
  errno = 0;
  const auto fail = [&] { failToSave(path, causeOf(file, errno), fault::kMakeRoom); };
  if (!file.open(QIODevice::WriteOnly)) fail();
  const auto size = static_cast<qint64>(bytes.size());
  if (file.write(bytes.data(), size) != size || !file.commit()) fail();
}

std::string readWhole(const std::filesystem::path& path) {
  std::error_code ignored;
  if (!std::filesystem::exists(path, ignored)) failToOpen(path, fault::kNoSuchFile);
  if (std::filesystem::is_directory(path, ignored)) failToOpen(path, fault::kFolderNotFile);
  QFile file(toQt(path));
  errno = 0;
  if (!file.open(QIODevice::ReadOnly))
    failToOpen(path, errno == EACCES ? reason::Reason(fault::kMayNotRead) : causeOf(file, errno));
  const QByteArray bytes = file.readAll();
  if (file.error() != QFileDevice::NoError) {
    throw FileError({fault::kCannotRead, {pathText(path), reason::inner(causeOf(file, errno))}});
  }
  return bytes.toStdString();
}

}  // namespace zyga::files
