#include "ui/studies/study_job.h"

#include "core/files/project/project_measures.h"
#include "ui/words/say.h"
#include "ui/words/study_words.h"

namespace zyga::ui {

StudyJob::StudyJob(Document& document, QObject* parent) : QObject(parent), document_(document) {
  connect(&document_, &Document::changed, this, &StudyJob::onDocumentChanged);
}

void StudyJob::run(StudyKind kind, const StudySettings& asked) {
  if (!document_.hasProject()) return;
  StudySettings settings = asked;
  settings.densities = document_.project().densities;
  running_ = kind;
  movedMeanwhile_ = false;
  const auto work = [this, kind, settings, scenario = document_.scenario(), answers = answers_,
                     measures = kind == StudyKind::Spread ? files::measuresOf(document_.project()) : study::Measures()](
                        const Worker::Control& control) -> Worker::Delivery {
    study::StudyOutcome outcome = answers->run(kind, scenario, settings, measures, control.task);
    if (outcome.cancelled()) return {};
    return [this, kind, outcome = std::move(outcome)] {
      kept(kind) = {outcome.result, outcome.failure, movedMeanwhile_};
      emit changed(kind);
    };
  };
  worker_.start(work, [this, kind](const QString& cause) {
    emit failed(filled(translated(QT_TRANSLATE_NOOP("words", "%1 could not be worked out: %2")), {title(kind), cause}));
  });
}

QString StudyJob::failure(StudyKind kind) const {
  const reason::Reason& why = kept(kind).failure;
  if (why.empty()) return {};
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1 could not be worked out: %2")), {title(kind), say(why)});
}

void StudyJob::onDocumentChanged(Changes what) {
  if (what & Change::Specimen) {
    worker_.cancel();
    kept_ = {};
    for (const StudyKind kind : kStudyKinds) emit changed(kind);
    return;
  }
  const bool moved = bool(what & (Changes(Change::Pose) | Change::Assumptions | Change::Contact));
  if (!moved && !(what & Change::Ground)) return;
  movedMeanwhile_ = movedMeanwhile_ || moved || running_ == StudyKind::Stress;
  for (const StudyKind kind : kStudyKinds) {
    // Densities move the stress alone.
    if (!moved && kind != StudyKind::Stress) continue;
    if (!kept(kind).result || kept(kind).outOfDate) continue;
    kept(kind).outOfDate = true;
    emit changed(kind);
  }
}

}  // namespace zyga::ui
