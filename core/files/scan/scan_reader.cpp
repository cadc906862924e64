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
#include "core/files/scan/scan_protocol.h"
#include "core/files/scan/scan_wire.h"

namespace zyga::files {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void refuse(const fs::path& path, const std::string& cause) {
  throw FileError("cannot read " + path.string() + ": " + cause);
}

/// "1.5 GB"
std::string sizeInWords(std::uint64_t bytes) {
  constexpr std::uint64_t kMega = 1u << 20;
  const double megabytes = static_cast<double>(bytes) / kMega;
  const bool giga = megabytes >= 1024;
  return toNumeral(std::round((giga ? megabytes / 1024 : megabytes) * 10) / 10) + (giga ? " GB" : " MB");
}

void checkFile(const fs::path& path, std::uint64_t largest) {
  struct stat info {};
  if (stat(path.c_str(), &info) != 0) refuse(path, std::strerror(errno));
  if (S_ISDIR(info.st_mode)) refuse(path, "it is a folder");
  if (!S_ISREG(info.st_mode)) refuse(path, "it is not a plain file");
  if (access(path.c_str(), R_OK) != 0) refuse(path, std::strerror(errno));
  const auto size = static_cast<std::uint64_t>(info.st_size);
  if (size > largest)
    refuse(path, "it is " + sizeInWords(size) + " large, the most that is read is " + sizeInWords(largest));
}

/// A folder only this user may look into, gone with all it holds at the end of the scope.
class PrivateFolder {
 public:
  PrivateFolder() {
    std::string name = (fs::temp_directory_path() / "zygapose-XXXXXX").string();
    if (!mkdtemp(name.data())) throw FileError("no folder for a moment in " + fs::temp_directory_path().string());
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
  const std::function<void(double)>& progress;
  std::string cause;

  void operator()(std::string_view line) {
    if (line.starts_with(protocol::kCause)) cause = line.substr(protocol::kCause.size());
    if (!line.starts_with(protocol::kProgress) || !progress) return;
    line.remove_prefix(protocol::kProgress.size());
    int percent = 0;
    std::from_chars(line.data(), line.data() + line.size(), percent);
    progress(std::min(100, std::max(0, percent)) / 100.0);
  }
};

std::string secondsInWords(const ScanLimits& limits) { return toNumeral(limits.seconds) + " seconds"; }

std::string causeOf(const ChildEnd& end, const std::string& said, const ScanLimits& limits) {
  const std::string tooLong = "reading it takes longer than the " + secondsInWords(limits) + " allowed";
  if (end.how == ChildEnd::How::TookTooLong) return tooLong;
  if (end.how == ChildEnd::How::Signalled) {
    if (end.number == SIGXCPU) return tooLong;
    if (end.number == SIGKILL) return "the system stopped the process that read it, most likely for want of memory";
    if (end.number == SIGXFSZ) return "its mesh is larger than the " + sizeInWords(limits.memory) + " allowed";
    const char* name = sigabbrev_np(end.number);
    return "it is damaged, or of a kind that is not understood: the process that read it broke down (SIG" +
           std::string(name ? name : "?") + "); nothing else is harmed";
  }
  if (end.number == protocol::kOutOfMemory)
    return "reading it needs more memory than the " + sizeInWords(limits.memory) + " allowed";
  if (end.number == protocol::kFailed && !said.empty()) return said;
  return "the process that read it ended with code " + std::to_string(end.number);
}

}  // namespace

std::optional<RawScan> readScan(const fs::path& path, const ScanReader& reader) {
  checkFile(path, reader.limits.fileSize);
  const PrivateFolder folder;
  Heard heard{reader.progress, {}};
  const ChildEnd end = runChild(reader.program,
                                {std::string(protocol::kVerb), fs::absolute(path).string(), folder.file().string(),
                                 std::to_string(reader.limits.seconds), std::to_string(reader.limits.memory),
                                 std::to_string(reader.limits.fileSize)},
                                reader.limits.seconds, reader.cancel, [&](std::string_view line) { heard(line); });
  if (end.how == ChildEnd::How::Cancelled) return std::nullopt;
  if (end.how != ChildEnd::How::Exited || end.number != protocol::kRead)
    refuse(path, causeOf(end, heard.cause, reader.limits));
  try {
    return readWire(folder.file());
  } catch (const FileError& error) {
    refuse(path, error.what());
  }
}

}  // namespace zyga::files
