#pragma once

#include <array>
#include <memory>

#include "core/study/run.h"
#include "ui/document/document.h"
#include "ui/document/worker.h"

namespace zyga::ui {

using study::kStudyKinds;
using study::StudyKind;
using study::StudyResult;
using study::StudySettings;

/// Runs studies of the document's animal beside the window and keeps the last answer of each kind. An answer goes out
/// of date when what it rests on changes; another specimen drops all of them.
class StudyJob : public QObject {
  Q_OBJECT
 public:
  explicit StudyJob(Document& document, QObject* parent = nullptr);

  /// The densities are the project's, whatever the settings say.
  void run(StudyKind kind, const StudySettings& settings);
  void cancel() { worker_.cancel(); }
  bool busy() const { return worker_.busy(); }
  /// What is being worked out, while busy.
  StudyKind running() const { return running_; }

  /// Nothing before it has been run, and where the last run failed.
  std::shared_ptr<const StudyResult> result(StudyKind kind) const { return kept(kind).result; }
  bool outOfDate(StudyKind kind) const { return kept(kind).outOfDate; }
  /// Why the last run of this kind gave no result, for people; empty when it gave one.
  QString failure(StudyKind kind) const;

  /// What has been worked out already, for others who ask the same: the report.
  const std::shared_ptr<study::StudyAnswers>& answers() const { return answers_; }
  /// For progress bars.
  Worker& worker() { return worker_; }

 signals:
  /// The answer of this kind is there, has failed, is gone, or has gone out of date.
  void changed(zyga::study::StudyKind kind);
  /// For people: what went wrong.
  void failed(const QString& message);

 private:
  struct Kept {
    std::shared_ptr<const StudyResult> result;
    reason::Reason failure;
    bool outOfDate = false;
  };
  Kept& kept(StudyKind kind) { return kept_[static_cast<std::size_t>(kind)]; }
  const Kept& kept(StudyKind kind) const { return kept_[static_cast<std::size_t>(kind)]; }
  void onDocumentChanged(Changes what);

  Document& document_;
  Worker worker_;
  std::shared_ptr<study::StudyAnswers> answers_ = std::make_shared<study::StudyAnswers>();
  std::array<Kept, kStudyKinds.size()> kept_;
  StudyKind running_ = StudyKind::Elevation;
  bool movedMeanwhile_ = false;  ///< the document has changed since the running study began
};

}  // namespace zyga::ui
