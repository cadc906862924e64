#include "ui/scans/scan_queue.h"

#include <algorithm>

namespace zyga::ui {

ScanQueue::ScanQueue(QObject* parent) : QObject(parent) {
  connect(&worker_, &Worker::progress, this, [this](int done, int) {
    if (current_) emit progress(*current_, done);
  });
}

void ScanQueue::add(int ticket, const std::filesystem::path& file, double expected) {
  waiting_.push_back({ticket, file, expected});
  if (!busy()) next();
}

void ScanQueue::drop(int ticket) {
  std::erase_if(waiting_, [ticket](const Item& item) { return item.ticket == ticket; });
  if (current_ != ticket) return;
  worker_.cancel();
  next();
}

void ScanQueue::next() {
  current_.reset();
  if (waiting_.empty()) return emit rested();
  const Item item = waiting_.front();
  waiting_.pop_front();
  current_ = item.ticket;
  emit started(item.ticket);
  const auto work = [this, item](const Worker::Control& control) -> Worker::Delivery {
    files::ScanReader reader;
    reader.cancel = &control.cancelled;
    reader.progress = [&control](double share) { control.report(static_cast<std::size_t>(100 * share), 100); };
    auto scan = files::readCleanScan(item.file, reader, item.expected);
    if (!scan) return {};
    auto shared = std::make_shared<const files::CleanScan>(std::move(*scan));
    return [this, ticket = item.ticket, shared] {
      emit read(ticket, shared);
      next();
    };
  };
  worker_.start(work, [this, ticket = item.ticket](const QString& cause) {
    emit failed(ticket, cause);
    next();
  });
}

}  // namespace zyga::ui
