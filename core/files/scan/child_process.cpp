#include "core/files/scan/child_process.h"

#include <sys/prctl.h>
#include <sys/resource.h>

#include <QDeadlineTimer>
#include <QFile>
#include <QProcess>
#include <chrono>
#include <cmath>
#include <csignal>

#include "core/files/scan/sanitizer_shadow.h"
#include "core/files/scan/scan_faults.h"

namespace zyga::files {
namespace {

constexpr std::size_t kLongestLine = 4096;  ///< bytes; what a broken child says beyond that is thrown away
constexpr int kLookEvery = 20;              ///< ms between two looks at clock and task
constexpr rlim_t kOpenFiles = 64;

/// Between fork and exec: nothing but system calls is allowed here. The hard limit lies `grace` above the soft one,
/// whose signal tells what was exceeded.
void limit(__rlimit_resource resource, rlim_t amount, rlim_t grace = 0) {
  rlimit old{};
  getrlimit(resource, &old);
  const rlim_t soft = amount < old.rlim_max ? amount : old.rlim_max;
  const rlim_t hard = amount + grace < old.rlim_max ? amount + grace : old.rlim_max;
  const rlimit set{soft, hard};
  setrlimit(resource, &set);
}

void takeLimits(rlim_t seconds, rlim_t memory) {
  prctl(PR_SET_PDEATHSIG, SIGKILL);
  limit(RLIMIT_CORE, 0);
  limit(RLIMIT_CPU, seconds, 1);
  limit(RLIMIT_FSIZE, memory);
  limit(RLIMIT_NOFILE, kOpenFiles);
  if (!kShadowed) limit(RLIMIT_AS, memory);
}

/// Cuts what comes out of the child into lines.
class Lines {
 public:
  explicit Lines(const std::function<void(std::string_view)>& line) : line_(line) {}

  void take(const QByteArray& bytes) {
    for (const char c : bytes) {
      if (c == '\n') {
        line_(text_);
        text_.clear();
      } else if (text_.size() < kLongestLine) {
        text_ += c;
      }
    }
  }

 private:
  const std::function<void(std::string_view)>& line_;
  std::string text_;
};

void start(QProcess& process, const std::filesystem::path& program, const std::vector<std::string>& arguments,
           const ChildLimits& limits) {
  QStringList words;
  for (const std::string& argument : arguments) words << QFile::decodeName(argument.c_str());
  process.setProgram(QFile::decodeName(program.c_str()));
  process.setArguments(words);
  process.setStandardInputFile(QProcess::nullDevice());
  process.setStandardErrorFile(QProcess::nullDevice());
  process.setChildProcessModifier([seconds = static_cast<rlim_t>(limits.processorSeconds),
                                   memory = static_cast<rlim_t>(limits.memory)] { takeLimits(seconds, memory); });
  process.start(QIODevice::ReadOnly);
  if (!process.waitForStarted())
    throw FileError({fault::kCannotStart, {pathText(program), reason::text(process.errorString().toStdString())}});
}

void killAndWait(QProcess& process) {
  process.kill();
  process.waitForFinished(-1);
}

/// Kills the child if it still runs when the scope is left by an exception of who listens.
struct Guard {
  QProcess& process;
  ~Guard() {
    if (process.state() != QProcess::NotRunning) killAndWait(process);
  }
};

}  // namespace

ChildEnd runChild(const std::filesystem::path& program, const std::vector<std::string>& arguments,
                  const ChildLimits& limits, const task::Task& task,
                  const std::function<void(std::string_view line)>& line) {
  const QDeadlineTimer deadline(std::chrono::milliseconds(std::llround(limits.clockSeconds * 1000)), Qt::PreciseTimer);
  QProcess process;
  const Guard guard{process};
  start(process, program, arguments, limits);
  Lines lines(line);
  while (process.state() != QProcess::NotRunning) {
    if (task.cancelled()) return {ChildEnd::How::Cancelled, 0};
    if (deadline.hasExpired()) return {ChildEnd::How::TookTooLong, 0};
    // A child may have closed its output and run on.
    if (!process.waitForReadyRead(kLookEvery)) process.waitForFinished(1);
    lines.take(process.readAllStandardOutput());
  }
  lines.take(process.readAllStandardOutput());
  const bool signalled = process.exitStatus() == QProcess::CrashExit;
  return {signalled ? ChildEnd::How::Signalled : ChildEnd::How::Exited, process.exitCode()};
}

}  // namespace zyga::files
