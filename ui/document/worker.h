#pragma once

#include <QObject>
#include <atomic>
#include <functional>
#include <memory>
#include <vector>

namespace zyga::ui {

/// Runs one piece of work at a time beside the window. Starting another one, or cancel(), drops what the earlier one
/// would have brought. Lives in the window's thread; the destructor waits for the work to notice its cancellation.
class Worker : public QObject {
  Q_OBJECT
 public:
  /// Run in the window's thread, unless the work is stale by then.
  using Delivery = std::function<void()>;
  /// What the work may use from its own thread.
  struct Control {
    const std::atomic<bool>& cancelled;
    std::function<void(std::size_t done, std::size_t total)> report;
    /// Delivers something to show before the work is done.
    std::function<void(Delivery)> show;
  };
  /// What it returns is delivered once it is done.
  using Work = std::function<Delivery(const Control&)>;
  /// Told in the window's thread what an exception said that left the work.
  using Failure = std::function<void(const QString& message)>;

  explicit Worker(QObject* parent = nullptr);
  ~Worker() override;

  void start(Work work, Failure failure = {});
  void cancel();
  /// Cancels and blocks until no work is left; nothing is delivered.
  void wait();
  bool busy() const { return current_ != 0; }

 signals:
  void progress(int done, int total);
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
