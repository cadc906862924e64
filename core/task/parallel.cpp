#include "core/task/parallel.h"

#include <oneapi/tbb/info.h>
#include <oneapi/tbb/parallel_for.h>
#include <oneapi/tbb/task_arena.h>

#ifdef __linux__
#include <sys/resource.h>
#endif

#include <algorithm>
#include <atomic>
#include <cassert>
#include <exception>
#include <mutex>

namespace zyga::task {
namespace {

/// How far the calling thread stands back behind others (nice); on Linux a thread's own.
int niceness() {
#ifdef __linux__
  return getpriority(PRIO_PROCESS, 0);
#else
  return 0;
#endif
}

/// Threads of the pool work on for others later and may then not be raised again, so this only ever lowers.
void standBack([[maybe_unused]] int nice) {
#ifdef __linux__
  if (nice > niceness()) setpriority(PRIO_PROCESS, 0, nice);
#endif
}

/// What the threads of one forEach share.
class Calls {
 public:
  Calls(std::size_t count, const Task& task, const std::function<void(std::size_t)>& work)
      : count_(count), task_(task), work_(work) {}

  /// On the thread that asked.
  void takeAll() { take(); }

  /// On any thread of the pool. Work that stands back takes no more from the rest of the machine for being shared out.
  void takePart() {
    { const std::lock_guard seen(mutex_); }  // what the asking thread has written is read after this
    if (nice_ > 0) standBack(nice_);
    take();
  }

  /// To be called once no thread takes part any more.
  bool finish() {
    const std::lock_guard lock(mutex_);
    if (failure_) std::rethrow_exception(failure_);
    assert(done_ <= count_);
    return done_ == count_;
  }

 private:
  /// Calls are handed out in order, one at a time: they may differ much in length.
  void take() {
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

  const std::size_t count_;
  const Task& task_;
  const std::function<void(std::size_t)>& work_;
  const int nice_ = niceness();
  std::atomic<std::size_t> next_ = 0;
  std::atomic<bool> failed_ = false;
  std::mutex mutex_;  ///< of what follows
  std::size_t done_ = 0;
  std::exception_ptr failure_;
};

}  // namespace

unsigned cores() { return static_cast<unsigned>(std::max(1, tbb::info::default_concurrency())); }

bool forEach(std::size_t count, const Task& task, const std::function<void(std::size_t)>& work) {
  assert(work);
  Calls calls(count, task, work);
  const unsigned wanted = task.threads() > 0 ? task.threads() : cores();
  const int takers = static_cast<int>(std::min<std::size_t>(wanted, count));
  if (takers <= 1) {
    calls.takeAll();
  } else {
    // An arena of its own bounds the threads, and keeps a thread that waits in here from taking up other work
    // meanwhile, which might wait for a lock that it holds itself.
    tbb::task_arena arena(takers);
    arena.execute([&] {
      tbb::parallel_for(
          0, takers, [&](int) { calls.takePart(); }, tbb::simple_partitioner());
    });
  }
  return calls.finish();
}

}  // namespace zyga::task
