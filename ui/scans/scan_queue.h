#pragma once

#include <deque>

#include "core/files/scan/clean_scan.h"
#include "ui/document/worker.h"

namespace zyga::ui {

/// Reads mesh files one after another beside the window, each in a process of its own that may break down.
class ScanQueue : public QObject {
  Q_OBJECT
 public:
  explicit ScanQueue(QObject* parent = nullptr);

  /// `ticket` is what the signals call the file; `expected` is the extent its bone should have, m.
  void add(int ticket, const std::filesystem::path& file, double expected);
  /// Takes a file out again, even while it is being read.
  void drop(int ticket);
  bool busy() const { return current_.has_value(); }

 signals:
  void started(int ticket);
  void progress(int ticket, int percent);
  void read(int ticket, std::shared_ptr<const zyga::files::CleanScan> scan);
  /// For people: the cause, with the file's name.
  void failed(int ticket, const QString& cause);
  /// Nothing is left to read.
  void rested();

 private:
  struct Item {
    int ticket = 0;
    std::filesystem::path file;
    double expected = 0;
  };
  void next();

  std::deque<Item> waiting_;
  std::optional<int> current_;
  Worker worker_;
};

}  // namespace zyga::ui
