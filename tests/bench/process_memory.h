#pragma once

#include <fstream>
#include <string>

namespace zyga::bench {

/// The most memory this process has held so far, megabytes (VmHWM of proc(5)).
inline double mostMegabytes() {
  const std::string key = "VmHWM:";
  std::ifstream status("/proc/self/status");
  for (std::string line; std::getline(status, line);)
    if (line.starts_with(key)) return std::stod(line.substr(key.size())) / 1024;
  return 0;
}

}  // namespace zyga::bench
