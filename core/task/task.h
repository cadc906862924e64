#pragma once

#include <atomic>
#include <functional>
#include <utility>

namespace zyga::task {

/// How longer work tells how far it has come and is told to stop: the one way in the whole program. A Task is small and
/// copied freely; a default one is watched by nobody and never cancelled. `tell` may be called from any thread that
/// does part of the work.
class Task {
 public:
  using Tell = std::function<void(double share)>;

  Task() = default;
  /// `cancel`, where given, has to outlive the work. `threads` bounds the threads of the work; 0: one a core.
  explicit Task(const std::atomic<bool>* cancel, Tell tell = {}, unsigned threads = 0)
      : cancel_(cancel), tell_(std::move(tell)), threads_(threads) {}

  bool cancelled() const { return cancel_ && cancel_->load(std::memory_order_relaxed); }
  /// `share` of the work done, 0 to 1.
  void tell(double share) const {
    if (tell_) tell_(share);
  }
  bool watched() const { return static_cast<bool>(tell_); }
  unsigned threads() const { return threads_; }
  const std::atomic<bool>* cancelFlag() const { return cancel_; }

  /// The piece of this work that lies between two shares of it; what the piece tells is told on in scale.
  Task part(double from, double to) const {
    if (!tell_) return *this;
    return Task(
        cancel_, [tell = tell_, from, to](double share) { tell(from + (to - from) * share); }, threads_);
  }
  Task withThreads(unsigned threads) const { return Task(cancel_, tell_, threads); }
  /// The same cancel, nobody told.
  Task quiet() const { return Task(cancel_, {}, threads_); }

 private:
  const std::atomic<bool>* cancel_ = nullptr;
  Tell tell_;
  unsigned threads_ = 0;
};

}  // namespace zyga::task
