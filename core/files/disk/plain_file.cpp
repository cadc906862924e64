#include "core/files/disk/plain_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>

namespace zyga::files {
namespace {

class Descriptor {
 public:
  explicit Descriptor(const std::filesystem::path& path)
      : number_(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY)) {}
  ~Descriptor() {
    if (number_ >= 0) ::close(number_);
  }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  int number() const { return number_; }

 private:
  int number_;
};

reason::Term kindOf(mode_t mode) {
  if (S_ISDIR(mode)) return {"file.folder"};
  if (S_ISFIFO(mode)) return {"file.pipe"};
  if (S_ISSOCK(mode)) return {"file.socket"};
  return {"file.device"};
}

void requirePlain(const struct stat& about) {
  if (!S_ISREG(about.st_mode)) throw FileError({fault::kNotPlain, {kindOf(about.st_mode)}});
}

/// Why a file cannot be reached; `error` is what the system said.
reason::Reason causeOfAbsence(const std::filesystem::path& path, int error) {
  if (error == EACCES || error == EPERM) return fault::kMayNotRead;
  if (error != ENOENT && error != ENOTDIR) return systemCause(error);
  struct stat about {};
  if (::lstat(path.c_str(), &about) == 0 && S_ISLNK(about.st_mode)) return fault::kLinkToNothing;
  const auto folder = path.parent_path();
  if (!folder.empty() && (::stat(folder.c_str(), &about) != 0 || !S_ISDIR(about.st_mode)))
    return {fault::kNoFolder, {pathText(folder)}};
  return fault::kNoSuchFile;
}

}  // namespace

reason::Reason systemCause(int error) {
  switch (error) {
    case EACCES:
    case EPERM:
      return fault::kNotPermitted;
    case ENOENT:
    case ENOTDIR:
      return fault::kNoSuchFile;
    case EISDIR:
      return fault::kFolderNotFile;
    case ELOOP:
      return fault::kLinkLoop;
    case ENOSPC:
      return fault::kDiskFull;
    case EDQUOT:
      return fault::kQuotaUsedUp;
    case EFBIG:
      return fault::kBeyondSizeLimit;
    case EROFS:
      return fault::kReadOnlyDisk;
    case EIO:
      return fault::kDiskFault;
    case ENAMETOOLONG:
      return fault::kNameTooLong;
    case EMFILE:
    case ENFILE:
      return fault::kTooManyOpen;
    case ENOMEM:
      return fault::kNoMemory;
    case ESTALE:
    case ENOTCONN:
    case EHOSTDOWN:
    case ETIMEDOUT:
      return fault::kShareGone;
    case EBUSY:
    case ETXTBSY:
      return fault::kInUse;
    default:
      return {fault::kSystemError, {reason::Count{error}}};
  }
}

std::string readPlain(const std::filesystem::path& path, std::size_t most) {
  struct stat about {};
  if (::stat(path.c_str(), &about) != 0) throw FileError(causeOfAbsence(path, errno));
  requirePlain(about);
  const Descriptor file(path);
  if (file.number() < 0 || ::fstat(file.number(), &about) != 0) throw FileError(causeOfAbsence(path, errno));
  requirePlain(about);  // something else may have taken its place meanwhile
  std::string bytes(std::min(static_cast<std::size_t>(about.st_size), most), '\0');
  std::size_t have = 0;
  while (have < bytes.size()) {
    const ssize_t got = ::read(file.number(), bytes.data() + have, bytes.size() - have);
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) throw FileError(systemCause(errno));
    if (got == 0) break;
    have += static_cast<std::size_t>(got);
  }
  bytes.resize(have);
  return bytes;
}

std::optional<reason::Term> unplainAt(const std::filesystem::path& path) {
  struct stat about {};
  if (::stat(path.c_str(), &about) != 0 || S_ISREG(about.st_mode)) return std::nullopt;
  return kindOf(about.st_mode);
}

}  // namespace zyga::files
