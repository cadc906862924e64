#include "core/crew/crew.h"

#include <algorithm>
#include <exception>
#include <mutex>
#include <thread>
#include <utility>
#include <vector>

namespace zyga::crew {
namespace {

class Crew {
 public:
  Crew(std::size_t count, const Orders& orders, const std::function<void(std::size_t)>& work)
      : count_(count), orders_(orders), work_(work) {}

  bool run() {
    const unsigned wanted = orders_.threads > 0 ? orders_.threads : std::max(1u, std::thread::hardware_concurrency());
    std::vector<std::jthread> others;
    for (std::size_t i = 1; i < std::min<std::size_t>(wanted, count_); ++i) others.emplace_back([this] { takePart(); });
    takePart();
    others.clear();  // waits for them
    if (failure_) std::rethrow_exception(failure_);
    return done_ == count_;
  }

 private:
  bool goesOn() const { return !failed_ && !(orders_.cancel && *orders_.cancel); }

  void takePart() {
    try {
      for (std::size_t i = next_++; i < count_ && goesOn(); i = next_++) {
        work_(i);
        const std::lock_guard lock(mutex_);
        ++done_;
        if (orders_.progress) orders_.progress(done_, count_);
      }
    } catch (...) {
      const std::lock_guard lock(mutex_);
      if (!failure_) failure_ = std::current_exception();
      failed_ = true;
    }
  }

  const std::size_t count_;
  const Orders& orders_;
  const std::function<void(std::size_t)>& work_;
  std::atomic<std::size_t> next_ = 0;
  std::atomic<bool> failed_ = false;
  std::mutex mutex_;  ///< of what follows
  std::size_t done_ = 0;
  std::exception_ptr failure_;
};

}  // namespace

bool forEach(std::size_t count, const Orders& orders, const std::function<void(std::size_t)>& work) {
  return Crew(count, orders, work).run();
}

std::function<void(std::size_t, std::size_t)> inShares(std::function<void(double share)> tell) {
  if (!tell) return {};
  return [tell = std::move(tell)](std::size_t done, std::size_t total) {
    tell(static_cast<double>(done) / static_cast<double>(total));
  };
}

}  // namespace zyga::crew
