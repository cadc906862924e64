#include "ui/scans/scan_queue.h"

#include <algorithm>

#include "ui/words/scan_words.h"

namespace zyga::ui {

ScanQueue::ScanQueue(QObject* parent) : QObject(parent) {
  connect(&worker_, &Worker::progress, this, [this](double share) {
    if (current_) emit progress(*current_, static_cast<int>(100 * share));
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
    reader.task = control.task;
    std::optional<files::CleanScan> scan;
    try {
      scan = files::readCleanScan(item.file, reader, item.expected);
    } catch (const files::FileError& error) {
      return [this, ticket = item.ticket, cause = causeAlone(error)] {
        emit failed(ticket, cause);
        next();
      };
    }
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
