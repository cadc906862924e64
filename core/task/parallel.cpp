#include "core/task/parallel.h"

#include <oneapi/tbb/parallel_for.h>
#include <oneapi/tbb/task_arena.h>

#include <algorithm>
#include <atomic>
#include <exception>
#include <mutex>
#include <thread>

namespace zyga::task {
namespace {

/// What the threads of one forEach share.
class Calls {
 public:
  Calls(std::size_t count, const Task& task, const std::function<void(std::size_t)>& work)
      : count_(count), task_(task), work_(work) {}

  /// Calls are handed out in order, one at a time: they may differ much in length.
  void takePart() {
    try {
      for (std::size_t i = next_++; i < count_ && !failed_ && !task_.cancelled(); i = next_++) {
        work_(i);
        const std::lock_guard lock(mutex_);
        ++done_;
        task_.tell(static_cast<double>(done_) / static_cast<double>(count_));
      }
    } catch (...) {
      const std::lock_guard lock(mutex_);
      if (!failure_) failure_ = std::current_exception();
      failed_ = true;
    }
  }

  bool finish() const {
    if (failure_) std::rethrow_exception(failure_);
    return done_ == count_;
  }

 private:
  const std::size_t count_;
  const Task& task_;
  const std::function<void(std::size_t)>& work_;
  std::atomic<std::size_t> next_ = 0;
  std::atomic<bool> failed_ = false;
  std::mutex mutex_;  ///< of what follows
  std::size_t done_ = 0;
  std::exception_ptr failure_;
};

unsigned cores() { return std::max(1u, std::thread::hardware_concurrency()); }

}  // namespace

bool forEach(std::size_t count, const Task& task, const std::function<void(std::size_t)>& work) {
  Calls calls(count, task, work);
  const unsigned wanted = task.threads() > 0 ? task.threads() : cores();
  const int takers = static_cast<int>(std::min<std::size_t>(wanted, count));
  if (takers <= 1) {
    calls.takePart();
  } else {
    // Isolated, so that a thread that waits inside a call takes no other piece of work and deadlocks on a lock it
    // holds.
    tbb::task_arena arena(takers);
    arena.execute([&] {
      tbb::parallel_for(
          0, takers, [&](int) { calls.takePart(); }, tbb::simple_partitioner());
    });
  }
  return calls.finish();
}

}  // namespace zyga::task
