#pragma once

#include <algorithm>
#include <atomic>
#include <exception>
#include <mutex>
#include <thread>
#include <vector>

#include "core/study/subject.h"

namespace zyga::study {

/// Calls `work(i)` for every i below `count` from so many threads (0: one a core), with progress. What the calls do may
/// not hang on their order. False when cancelled. An exception that leaves a call ends the others and is thrown on.
template <class Work>
bool inParallel(std::size_t count, unsigned threads, const Watch& watch, const Work& work) {
  std::atomic<std::size_t> next = 0, done = 0;
  std::atomic<bool> stopped = false;
  std::exception_ptr failure;
  std::mutex mutex;
  const auto run = [&] {
    for (std::size_t i = next++; i < count && !stopped && !watch.cancelled(); i = next++) {
      try {
        work(i);
      } catch (...) {
        const std::lock_guard lock(mutex);
        failure = std::current_exception();
        stopped = true;
        return;
      }
      const std::size_t sofar = ++done;
      const std::lock_guard lock(mutex);
      watch.tell(static_cast<double>(sofar) / static_cast<double>(count));
    }
  };
  const unsigned wanted = threads > 0 ? threads : std::max(1u, std::thread::hardware_concurrency());
  std::vector<std::thread> helpers;
  for (unsigned t = 1; t < std::min<std::size_t>(wanted, count); ++t) helpers.emplace_back(run);
  run();
  for (std::thread& helper : helpers) helper.join();
  if (failure) std::rethrow_exception(failure);
  return !watch.cancelled();
}

}  // namespace zyga::study
