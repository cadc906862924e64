#pragma once

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <future>
#include <thread>
#include <vector>

namespace zyga::solid {

/// Calls work(i) for every i below `count`, as many at once as there are cores. What one of them throws is thrown.
template <class Work>
void forEachAtOnce(std::size_t count, const Work& work) {
  std::atomic<std::size_t> next{0};
  const auto some = [&] {
    for (std::size_t i = next++; i < count; i = next++) work(i);
  };
  const std::size_t cores = std::max(1u, std::thread::hardware_concurrency());
  std::vector<std::future<void>> crew;
  for (std::size_t i = 1; i < std::min(cores, count); ++i) crew.push_back(std::async(std::launch::async, some));
  some();
  for (auto& worker : crew) worker.get();
}

}  // namespace zyga::solid
