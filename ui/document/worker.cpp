#include "ui/document/worker.h"

#include <algorithm>
#include <exception>
#include <thread>

namespace zyga::ui {

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
  const Control control{run->cancelled, [this, id = run->id](std::size_t done, std::size_t total) {
                          QMetaObject::invokeMethod(
                              this,
                              [this, id, done, total] {
                                if (id == current_) emit progress(static_cast<int>(done), static_cast<int>(total));
                              },
                              Qt::QueuedConnection);
                        }};
  run->thread = std::thread([this, id = run->id, control, work = std::move(work), failure = std::move(failure)] {
    Delivery delivery;
    try {
      delivery = work(control);
    } catch (const std::exception& error) {
      if (failure) delivery = [failure, message = QString::fromUtf8(error.what())] { failure(message); };
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
