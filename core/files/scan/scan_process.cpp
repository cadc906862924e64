#include <fcntl.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cmath>
#include <csignal>
#include <cstdlib>
#include <cstring>
#include <new>

#include "core/files/json/utf8.h"
#include "core/files/scan/sanitizer_shadow.h"
#include "core/files/scan/scan_import.h"
#include "core/files/scan/scan_protocol.h"
#include "core/files/scan/scan_wire.h"

/// The body of the reading process.
namespace zyga::files {
namespace {

int told = STDOUT_FILENO;  ///< where to talk to the parent; also used where nothing may be allocated

void say(std::string_view text) {
  while (!text.empty()) {
    const ssize_t written = write(told, text.data(), text.size());
    if (written <= 0) return;
    text.remove_prefix(static_cast<std::size_t>(written));
  }
}

void outOfMemory() { _exit(protocol::kOutOfMemory); }

/// Libraries may print what they like; the parent hears only us.
void keepOutputForOurselves() {
  told = fcntl(STDOUT_FILENO, F_DUPFD_CLOEXEC, 3);
  const int nowhere = open("/dev/null", O_WRONLY | O_CLOEXEC);
  if (nowhere >= 0) dup2(nowhere, STDOUT_FILENO);
}

/// The hard limit lies `grace` above the soft one, whose signal tells what was exceeded.
void limit(__rlimit_resource resource, rlim_t amount, rlim_t grace = 0) {
  rlimit old{};
  getrlimit(resource, &old);
  const rlim_t soft = std::min(amount, old.rlim_max);
  const rlimit set{soft, std::min(amount + grace, old.rlim_max)};
  if (setrlimit(resource, &set) != 0) throw FileError(std::string("no limit can be set: ") + std::strerror(errno));
}

void takeLimits(double seconds, std::uint64_t memory) {
  prctl(PR_SET_PDEATHSIG, SIGKILL);  // not to outlive the program
  limit(RLIMIT_CORE, 0);
  limit(RLIMIT_CPU, static_cast<rlim_t>(std::ceil(seconds)), 1);
  limit(RLIMIT_FSIZE, memory);
  limit(RLIMIT_NOFILE, 64);
  if (!kShadowed) limit(RLIMIT_AS, memory);
  std::set_new_handler(outOfMemory);
}

void run(char** argv) {
  const double seconds = std::strtod(argv[3], nullptr);
  const std::uint64_t memory = std::strtoull(argv[4], nullptr, 10);
  const std::uint64_t largestFile = std::strtoull(argv[5], nullptr, 10);
  takeLimits(seconds, memory);
  int last = -1;
  const auto progress = [&](double share) {
    const int percent = static_cast<int>(100 * share);
    if (percent == last) return;
    last = percent;
    say(std::string(protocol::kProgress) + std::to_string(percent) + "\n");
  };
  writeWire(importScan(argv[1], largestFile, progress), argv[2]);
}

/// One line, whatever the file has put into the message.
std::string onOneLine(std::string text) {
  if (text.size() > protocol::kLongestCause) text.resize(protocol::kLongestCause);
  for (std::size_t i = 0, length = 0; i < text.size(); i += std::max<std::size_t>(1, length)) {
    length = utf8Length(text, i);
    if (length == 0) text[i] = '?';
    if (static_cast<unsigned char>(text[i]) < 0x20 || text[i] == 0x7f) text[i] = ' ';
  }
  return text;
}

}  // namespace

int readScanProcess(int argc, char** argv) {
  keepOutputForOurselves();
  if (argc < 6) return protocol::kMisused;
  try {
    run(argv);
    return protocol::kRead;
  } catch (const std::exception& error) {
    say(std::string(protocol::kCause) + onOneLine(error.what()) + "\n");
  }
  return protocol::kFailed;
}

}  // namespace zyga::files
