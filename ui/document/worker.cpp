#include "ui/document/worker.h"

#include <sys/resource.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <exception>
#include <thread>

#include "ui/words/say.h"

namespace zyga::ui {
namespace {

/// Progress is told a few times a second: every picture of it takes time from the work itself.
class Pace {
 public:
  bool mayTell() {
    const std::int64_t now = Clock::now().time_since_epoch() / std::chrono::milliseconds(1);
    std::int64_t last = last_;
    return now - last >= kStep && last_.compare_exchange_strong(last, now);
  }

 private:
  using Clock = std::chrono::steady_clock;
  static constexpr std::int64_t kStep = 200;  // ms
  std::atomic<std::int64_t> last_{-kStep};
};

/// What the window draws goes first. On Linux a priority is a thread's own; threads that share in the work take it over
/// (task::forEach).
void yieldToTheWindow() {
#ifdef __linux__
  constexpr int kBehind = 8;
  setpriority(PRIO_PROCESS, 0, kBehind);
#endif
}

}  // namespace

struct Worker::Run {
  std::uint64_t id = 0;
  std::atomic<bool> cancelled = false;
  std::thread thread;
};

Worker::Worker(QObject* parent) : QObject(parent) {}

Worker::~Worker() {
  for (const auto& run : runs_) run->cancelled = true;
  for (const auto& run : runs_) run->thread.join();
}

void Worker::start(Work work, Failure failure) {
  const bool wasBusy = busy();
  for (const auto& run : runs_) run->cancelled = true;
  auto run = std::make_unique<Run>();
  run->id = current_ = ++last_;
  const auto show = [this, id = run->id](std::function<void()> what) {
    QMetaObject::invokeMethod(
        this,
        [this, id, what = std::move(what)] {
          if (id == current_) what();
        },
        Qt::QueuedConnection);
  };
  const auto tell = [this, show, pace = std::make_shared<Pace>()](double share) {
    if (pace->mayTell() || share >= 1) show([this, share] { emit progress(share); });
  };
  const Control control{task::Task(&run->cancelled, tell), show};
  run->thread = std::thread([this, id = run->id, control, work = std::move(work), failure = std::move(failure)] {
    yieldToTheWindow();
    Delivery delivery;
    try {
      delivery = work(control);
    } catch (const std::exception& error) {
      if (failure) delivery = [failure, message = sayFailure(error)] { failure(message); };
    }
    QMetaObject::invokeMethod(
        this, [this, id, delivery] { finish(id, delivery); }, Qt::QueuedConnection);
  });
  runs_.push_back(std::move(run));
  if (!wasBusy) emit busyChanged(true);
}

void Worker::cancel() {
  for (const auto& run : runs_) run->cancelled = true;
  if (!busy()) return;
  current_ = 0;
  emit busyChanged(false);
}

void Worker::wait() {
  for (const auto& run : runs_) run->cancelled = true;
  for (const auto& run : runs_) run->thread.join();
  runs_.clear();
  if (!busy()) return;
  current_ = 0;
  emit busyChanged(false);
}

void Worker::finish(std::uint64_t id, const Delivery& delivery) {
  const auto run = std::find_if(runs_.begin(), runs_.end(), [id](const auto& r) { return r->id == id; });
  if (run == runs_.end()) return;  // wait() was faster
  (*run)->thread.join();
  runs_.erase(run);
  if (id != current_) return;
  current_ = 0;
  if (delivery) delivery();
  if (!busy()) emit busyChanged(false);
}

}  // namespace zyga::ui
