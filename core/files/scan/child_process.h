#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "core/task/task.h"

namespace zyga::files {

/// How a process ended.
struct ChildEnd {
  enum class How { Exited, Signalled, TookTooLong, Cancelled };
  How how = How::Exited;
  int number = 0;  ///< exit code or signal
};

struct ChildLimits {
  std::uint64_t processorSeconds = 0;  ///< of processor time: SIGXCPU ends it
  double clockSeconds = 0;
  std::uint64_t memory = 0;  ///< bytes that it may map, and that a file it writes may have
};

/// Runs a program to its end under limits that it cannot lift: no input, errors thrown away, no core file, few open
/// files; each line of its standard output is handed over as it comes. A busy machine does not cut its processor time
/// short. When its time by the clock is over or the task is cancelled it is killed; it never outlives the thread that
/// waits for it. Needs no event loop. Throws FileError when it cannot be started.
ChildEnd runChild(const std::filesystem::path& program, const std::vector<std::string>& arguments,
                  const ChildLimits& limits, const task::Task& task,
                  const std::function<void(std::string_view line)>& line);

}  // namespace zyga::files
