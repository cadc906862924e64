#include "core/files/scan/scan_reader.h"

#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <charconv>
#include <cmath>
#include <csignal>
#include <cstring>

#include "core/files/json/numeral.h"
#include "core/files/scan/child_process.h"
#include "core/files/scan/scan_faults.h"
#include "core/files/scan/scan_process.h"
#include "core/files/scan/scan_wire.h"

namespace zyga::files {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void refuse(const fs::path& path, reason::Reason cause) {
  throw FileError({fault::kCannotRead, {pathText(path), reason::inner(std::move(cause))}});
}

reason::Reason systemsWords(int error) { return {fault::kInItsWords, {reason::text(std::strerror(error))}}; }

reason::Quantity bytes(std::uint64_t count) { return {static_cast<double>(count), reason::Unit::Bytes}; }

void checkFile(const fs::path& path, std::uint64_t largest) {
  struct stat info {};
  if (stat(path.c_str(), &info) != 0) refuse(path, systemsWords(errno));
  if (S_ISDIR(info.st_mode)) refuse(path, fault::kIsFolder);
  if (!S_ISREG(info.st_mode)) refuse(path, fault::kNotPlainFile);
  if (access(path.c_str(), R_OK) != 0) refuse(path, systemsWords(errno));
  const auto size = static_cast<std::uint64_t>(info.st_size);
  if (size > largest) refuse(path, {fault::kFileTooLarge, {bytes(size), bytes(largest)}});
}

/// A folder only this user may look into, gone with all it holds at the end of the scope.
class PrivateFolder {
 public:
  PrivateFolder() {
    std::string name = (fs::temp_directory_path() / "zygapose-XXXXXX").string();
    if (!mkdtemp(name.data())) throw FileError({fault::kNoTemporaryFolder, {pathText(fs::temp_directory_path())}});
    path_ = name;
  }
  ~PrivateFolder() {
    std::error_code ignored;
    fs::remove_all(path_, ignored);
  }
  PrivateFolder(const PrivateFolder&) = delete;
  PrivateFolder& operator=(const PrivateFolder&) = delete;

  fs::path file() const { return path_ / "mesh"; }

 private:
  fs::path path_;
};

/// What the reading process said.
struct Heard {
  const task::Task& task;
  std::string cause;

  void operator()(std::string_view line) {
    if (line.starts_with(protocol::kCause)) cause = line.substr(protocol::kCause.size());
    if (!line.starts_with(protocol::kProgress)) return;
    line.remove_prefix(protocol::kProgress.size());
    int percent = 0;
    std::from_chars(line.data(), line.data() + line.size(), percent);
    task.tell(std::clamp(percent, 0, 100) / 100.0);
  }
};

reason::Reason causeOf(const ChildEnd& end, const std::string& said, const ScanLimits& limits) {
  const reason::Reason tooLong(fault::kTookTooLong, {reason::text(toNumeral(limits.seconds))});
  if (end.how == ChildEnd::How::TookTooLong) return tooLong;
  if (end.how == ChildEnd::How::Signalled) {
    if (end.number == SIGXCPU) return tooLong;
    if (end.number == SIGKILL) return fault::kStoppedBySystem;
    if (end.number == SIGXFSZ) return {fault::kMeshTooLarge, {bytes(limits.memory)}};
    const char* name = sigabbrev_np(end.number);
    return {fault::kBrokeDown, {reason::text("SIG" + std::string(name ? name : "?"))}};
  }
  if (end.number == protocol::kOutOfMemory) return {fault::kTooMuchMemory, {bytes(limits.memory)}};
  if (end.number == protocol::kFailed && !said.empty()) return readCause(said);
  return {fault::kEndedWithCode, {reason::Count{end.number}}};
}

}  // namespace

std::optional<RawScan> readScan(const fs::path& path, const ScanReader& reader) {
  checkFile(path, reader.limits.fileSize);
  const PrivateFolder folder;
  Heard heard{reader.task, {}};
  const ChildEnd end =
      runChild(reader.program,
               {std::string(protocol::kVerb), fs::absolute(path).string(), folder.file().string(),
                std::to_string(reader.limits.fileSize)},
               {reader.limits.seconds, reader.limits.memory}, reader.task, [&](std::string_view line) { heard(line); });
  if (end.how == ChildEnd::How::Cancelled) return std::nullopt;
  if (end.how != ChildEnd::How::Exited || end.number != protocol::kRead)
    refuse(path, causeOf(end, heard.cause, reader.limits));
  try {
    return readWire(folder.file());
  } catch (const FileError& error) {
    refuse(path, error.reason());
  }
}

}  // namespace zyga::files
