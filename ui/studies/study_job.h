#pragma once

#include <array>
#include <memory>
#include <optional>

#include "ui/document/document.h"
#include "ui/document/worker.h"
#include "ui/studies/study_result.h"

namespace zyga::ui {

/// What a person may set about the studies; a habit of theirs, not of the project.
struct StudySettings {
  bool space = false;  ///< envelope: the space sideways and the strip on the ground as well
  study::SpreadOptions spread;
  study::HeartPlace heart;
  bool operator==(const StudySettings&) const = default;
};

/// Runs studies of the document's animal beside the window and keeps the last answer of each kind. An answer goes out
/// of date when what it rests on changes; another specimen drops all of them.
class StudyJob : public QObject {
  Q_OBJECT
 public:
  explicit StudyJob(Document& document, QObject* parent = nullptr);

  void run(StudyKind kind, const StudySettings& settings);
  void cancel() { worker_.cancel(); }
  bool busy() const { return worker_.busy(); }
  /// What is being worked out, while busy.
  StudyKind running() const { return running_; }

  /// Nothing before it has been run.
  std::shared_ptr<const StudyResult> result(StudyKind kind) const { return kept(kind).result; }
  bool outOfDate(StudyKind kind) const { return kept(kind).outOfDate; }

  /// For progress bars.
  Worker& worker() { return worker_; }

 signals:
  /// The answer of this kind is there, is gone, or has gone out of date.
  void changed(zyga::ui::StudyKind kind);
  /// For people: what went wrong.
  void failed(const QString& message);

 private:
  struct Kept {
    std::shared_ptr<const StudyResult> result;
    bool outOfDate = false;
  };
  Kept& kept(StudyKind kind) { return kept_[static_cast<std::size_t>(kind)]; }
  const Kept& kept(StudyKind kind) const { return kept_[static_cast<std::size_t>(kind)]; }
  void onDocumentChanged(Changes what);

  Document& document_;
  Worker worker_;
  std::array<Kept, kStudyKinds.size()> kept_;
  StudyKind running_ = StudyKind::Elevation;
  bool movedMeanwhile_ = false;  ///< the document has changed since the running study began
};

}  // namespace zyga::ui
