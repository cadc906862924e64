#pragma once

#include <atomic>
#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace zyga::files {

/// How a process ended.
struct ChildEnd {
  enum class How { Exited, Signalled, TookTooLong, Cancelled };
  How how = How::Exited;
  int number = 0;  ///< exit code or signal
};

/// Runs a program to its end: no input, errors thrown away, each line of its standard output handed over as it comes.
/// After `seconds` by the clock, or when `cancel` is set, it is killed. Throws FileError when it cannot be started.
ChildEnd runChild(const std::filesystem::path& program, const std::vector<std::string>& arguments, double seconds,
                  const std::atomic<bool>* cancel, const std::function<void(std::string_view line)>& line);

}  // namespace zyga::files
