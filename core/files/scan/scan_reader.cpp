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
#include "core/files/scan/scan_allowance.h"
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

/// Returns its bytes.
std::uint64_t checkFile(const fs::path& path, std::uint64_t largest) {
  struct stat info {};
  if (stat(path.c_str(), &info) != 0) refuse(path, systemsWords(errno));
  if (S_ISDIR(info.st_mode)) refuse(path, fault::kIsFolder);
  if (!S_ISREG(info.st_mode)) refuse(path, fault::kNotPlainFile);
  if (access(path.c_str(), R_OK) != 0) refuse(path, systemsWords(errno));
  const auto size = static_cast<std::uint64_t>(info.st_size);
  if (size > largest) refuse(path, {fault::kFileTooLarge, {bytes(size), bytes(largest)}});
  return size;
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
  std::uint64_t allowed;  ///< seconds of processor time

  void operator()(std::string_view line) {
    // It can only lower what it was given.
    if (line.starts_with(protocol::kAllowed)) allowed = std::min(allowed, numberAfter(protocol::kAllowed, line));
    if (line.starts_with(protocol::kCause)) cause = line.substr(protocol::kCause.size());
    if (!line.starts_with(protocol::kProgress)) return;
    task.tell(static_cast<double>(std::min<std::uint64_t>(100, numberAfter(protocol::kProgress, line))) / 100);
  }

 private:
  static std::uint64_t numberAfter(std::string_view word, std::string_view line) {
    std::uint64_t number = 0;
    std::from_chars(line.data() + word.size(), line.data() + line.size(), number);
    return number;
  }
};

reason::Reason causeOf(const ChildEnd& end, const Heard& heard, const ChildLimits& limits) {
  if (end.how == ChildEnd::How::TookTooLong)
    return {fault::kTookTooLong, {reason::text(toNumeral(limits.clockSeconds))}};
  if (end.how == ChildEnd::How::Signalled) {
    if (end.number == SIGXCPU)
      return {fault::kTookProcessorTime, {reason::Count{static_cast<long long>(heard.allowed)}}};
    if (end.number == SIGKILL) return fault::kStoppedBySystem;
    if (end.number == SIGXFSZ) return {fault::kMeshTooLarge, {bytes(limits.memory)}};
    const char* name = sigabbrev_np(end.number);
    return {fault::kBrokeDown, {reason::text("SIG" + std::string(name ? name : "?"))}};
  }
  if (end.number == protocol::kOutOfMemory) return {fault::kTooMuchMemory, {bytes(limits.memory)}};
  if (end.number == protocol::kFailed && !heard.cause.empty()) return readCause(heard.cause);
  return {fault::kEndedWithCode, {reason::Count{end.number}}};
}

/// The process lowers its processor time once it has seen what the file declares.
ChildLimits limitsFor(std::uint64_t fileSize, const ScanLimits& limits) {
  const double most = static_cast<double>(mostTrianglesIn(fileSize)) / 1e6;
  return {secondsAllowed(limits.seconds, limits.secondsPerMillion, mostTrianglesIn(fileSize)),
          limits.clockTimes * limits.seconds + std::ceil(limits.clockTimes * limits.secondsPerMillion * most),
          limits.memory};
}

}  // namespace

std::optional<RawScan> readScan(const fs::path& path, const ScanReader& reader) {
  const std::uint64_t size = checkFile(path, reader.limits.fileSize);
  const PrivateFolder folder;
  const ChildLimits limits = limitsFor(size, reader.limits);
  Heard heard{reader.task, {}, limits.processorSeconds};
  const ChildEnd end = runChild(reader.program,
                                {std::string(protocol::kVerb), fs::absolute(path).string(), folder.file().string(),
                                 std::to_string(reader.limits.fileSize), toNumeral(reader.limits.seconds),
                                 toNumeral(reader.limits.secondsPerMillion), std::to_string(reader.limits.memory)},
                                limits, reader.task, [&](std::string_view line) { heard(line); });
  if (end.how == ChildEnd::How::Cancelled) return std::nullopt;
  if (end.how != ChildEnd::How::Exited || end.number != protocol::kRead) refuse(path, causeOf(end, heard, limits));
  try {
    return readWire(folder.file());
  } catch (const FileError& error) {
    refuse(path, error.reason());
  }
}

}  // namespace zyga::files
