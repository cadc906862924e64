#pragma once

#include <atomic>
#include <cstddef>
#include <functional>

namespace zyga::crew {

struct Orders {
  unsigned threads = 0;                       ///< the caller's counts; 0: one a core
  const std::atomic<bool>* cancel = nullptr;  ///< no call is begun any more once it is true
  /// How many calls are done; told from the crew's threads, one at a time, counting up.
  std::function<void(std::size_t done, std::size_t total)> progress;
};

/// Calls `work(i)` for every i below `count`, many at once; what the calls do may not hang on their order. False when
/// cancelled before all were done. An exception that leaves a call keeps others from beginning and is thrown on.
bool forEach(std::size_t count, const Orders& orders, const std::function<void(std::size_t)>& work);

/// Progress told as a share of the work, 0 to 1; none where there is nobody to tell.
std::function<void(std::size_t, std::size_t)> inShares(std::function<void(double share)> tell);

}  // namespace zyga::crew
