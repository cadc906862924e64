#pragma once

#include <QObject>
#include <functional>
#include <memory>
#include <vector>

#include "core/task/task.h"

namespace zyga::ui {

/// Runs one piece of work at a time beside the window. Starting another one, or cancel(), drops what the earlier one
/// would have brought. Lives in the window's thread; the destructor waits for the work to notice its cancellation.
class Worker : public QObject {
  Q_OBJECT
 public:
  /// Called in the window's thread, unless other work was started or the work was cancelled meanwhile.
  using Delivery = std::function<void()>;
  /// What the work may use from its own thread.
  struct Control {
    /// Cancelled with the work; what it tells arrives as progress(), a few times a second.
    task::Task task;
    /// Delivers something to show before the work is done.
    std::function<void(Delivery)> show;
  };
  /// Run on a thread of its own. Returns what to deliver once the work is done; nothing, {}, where it was cancelled.
  using Work = std::function<Delivery(const Control&)>;
  /// Told in the window's thread what an exception that left the work has to say, in the language chosen.
  using Failure = std::function<void(const QString& message)>;

  explicit Worker(QObject* parent = nullptr);
  ~Worker() override;

  void start(Work work, Failure failure = {});
  void cancel();
  /// Cancels and blocks until no work is left; nothing is delivered.
  void wait();
  bool busy() const { return current_ != 0; }

 signals:
  /// Share of the work done, 0 to 1.
  void progress(double share);
  /// busy() has changed.
  void busyChanged(bool busy);

 private:
  struct Run;
  void finish(std::uint64_t id, const Delivery& delivery);

  std::vector<std::unique_ptr<Run>> runs_;
  std::uint64_t current_ = 0;
  std::uint64_t last_ = 0;
};

}  // namespace zyga::ui
