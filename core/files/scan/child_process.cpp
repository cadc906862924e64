#include "core/files/scan/child_process.h"

#include <fcntl.h>
#include <poll.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <cstring>
#include <optional>

#include "core/files/disk/file_error.h"

extern char** environ;

namespace zyga::files {
namespace {

using Clock = std::chrono::steady_clock;

constexpr std::size_t kLongestLine = 4096;  ///< bytes; what a broken child says beyond that is thrown away
constexpr int kLookEvery = 20;              ///< ms between two looks at clock and cancel

[[noreturn]] void fail(const std::string& what, int error) { throw FileError(what + ": " + std::strerror(error)); }

class Pipe {
 public:
  Pipe() {
    if (pipe2(ends_, O_CLOEXEC) != 0) fail("no pipe to another process", errno);
  }
  ~Pipe() {
    closeWriting();
    close(ends_[0]);
  }
  Pipe(const Pipe&) = delete;
  Pipe& operator=(const Pipe&) = delete;

  int reading() const { return ends_[0]; }
  int writing() const { return ends_[1]; }
  void closeWriting() {
    if (ends_[1] >= 0) close(ends_[1]);
    ends_[1] = -1;
  }

 private:
  int ends_[2] = {-1, -1};
};

class SpawnActions {
 public:
  SpawnActions() { posix_spawn_file_actions_init(&actions_); }
  ~SpawnActions() { posix_spawn_file_actions_destroy(&actions_); }
  SpawnActions(const SpawnActions&) = delete;
  SpawnActions& operator=(const SpawnActions&) = delete;

  posix_spawn_file_actions_t* get() { return &actions_; }

 private:
  posix_spawn_file_actions_t actions_;
};

pid_t start(const std::filesystem::path& program, const std::vector<std::string>& arguments, const Pipe& output) {
  std::string name = program.string();
  std::vector<char*> argv{name.data()};
  for (const auto& argument : arguments) argv.push_back(const_cast<char*>(argument.c_str()));
  argv.push_back(nullptr);
  SpawnActions actions;
  posix_spawn_file_actions_addopen(actions.get(), STDIN_FILENO, "/dev/null", O_RDONLY, 0);
  posix_spawn_file_actions_adddup2(actions.get(), output.writing(), STDOUT_FILENO);
  posix_spawn_file_actions_addopen(actions.get(), STDERR_FILENO, "/dev/null", O_WRONLY, 0);
  pid_t pid = -1;
  if (const int error = posix_spawn(&pid, name.c_str(), actions.get(), nullptr, argv.data(), environ))
    fail("cannot start " + name, error);
  return pid;
}

/// Cuts what comes out of the child into lines.
class Lines {
 public:
  explicit Lines(const std::function<void(std::string_view)>& line) : line_(line) {}

  void take(std::string_view bytes) {
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

/// Kills the child if it still runs when the scope is left, so that none outlives an exception.
class Child {
 public:
  explicit Child(pid_t pid) : pid_(pid) {}
  ~Child() {
    if (pid_ > 0) kill(), wait();
  }
  Child(const Child&) = delete;
  Child& operator=(const Child&) = delete;

  void kill() const { ::kill(pid_, SIGKILL); }
  ChildEnd wait() {
    int status = 0;
    while (waitpid(pid_, &status, 0) < 0 && errno == EINTR) {
    }
    return gone(status);
  }
  /// Whether it ended before the deadline: a child may have closed its output and run on.
  std::optional<ChildEnd> waitUntil(Clock::time_point deadline) {
    int status = 0;
    for (int pause = 1; waitpid(pid_, &status, WNOHANG) == 0; pause = std::min(2 * pause, kLookEvery)) {
      if (Clock::now() > deadline) return std::nullopt;
      poll(nullptr, 0, pause);
    }
    return gone(status);
  }

 private:
  ChildEnd gone(int status) {
    pid_ = -1;
    if (WIFSIGNALED(status)) return {ChildEnd::How::Signalled, WTERMSIG(status)};
    return {ChildEnd::How::Exited, WEXITSTATUS(status)};
  }

  pid_t pid_;
};

/// Reads until the child closes its output; returns why it was stopped before, if it was.
std::optional<ChildEnd::How> listen(int from, Clock::time_point deadline, const std::atomic<bool>* cancel,
                                    Lines& lines) {
  char buffer[1024];
  for (;;) {
    if (cancel && cancel->load()) return ChildEnd::How::Cancelled;
    if (Clock::now() > deadline) return ChildEnd::How::TookTooLong;
    pollfd waiting{from, POLLIN, 0};
    if (poll(&waiting, 1, kLookEvery) <= 0) continue;
    const ssize_t count = read(from, buffer, sizeof(buffer));
    if (count == 0) return std::nullopt;
    if (count > 0) lines.take({buffer, static_cast<std::size_t>(count)});
  }
}

}  // namespace

ChildEnd runChild(const std::filesystem::path& program, const std::vector<std::string>& arguments, double seconds,
                  const std::atomic<bool>* cancel, const std::function<void(std::string_view line)>& line) {
  const auto deadline =
      Clock::now() + std::chrono::duration_cast<Clock::duration>(std::chrono::duration<double>(seconds));
  Pipe output;
  Child child(start(program, arguments, output));
  output.closeWriting();
  Lines lines(line);
  auto stopped = listen(output.reading(), deadline, cancel, lines);
  if (!stopped) {
    if (const auto end = child.waitUntil(deadline)) return *end;
    stopped = ChildEnd::How::TookTooLong;
  }
  child.kill();
  child.wait();
  return {*stopped, 0};
}

}  // namespace zyga::files
