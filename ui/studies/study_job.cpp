#include "ui/studies/study_job.h"

#include "ui/theme/words.h"

namespace zyga::ui {
namespace {

/// All that a study needs, apart from the document that goes on changing.
struct Snapshot {
  anatomy::Specimen specimen;
  kinematics::Articulation articulation;
  range::Assumptions assumptions;
  kinematics::Pose pose;
  anatomy::MeasurementTable table;
  std::vector<files::ProjectScan> scans;

  study::Subject subject() const { return {specimen, articulation, assumptions, pose}; }
};

template <class Found>
std::optional<StudyResult> whenThere(std::optional<Found> found) {
  if (!found) return std::nullopt;
  return StudyResult(std::move(*found));
}

std::optional<StudyResult> found(StudyKind kind, const Snapshot& animal, const StudySettings& settings,
                                 const study::Watch& watch) {
  switch (kind) {
    case StudyKind::Elevation:
      return StudyResult(study::elevation(animal.subject()));
    case StudyKind::Envelope: {
      study::EnvelopeOptions options;
      options.space = settings.space;
      return whenThere(study::envelope(animal.subject(), options, watch));
    }
    case StudyKind::Range:
      return whenThere(study::rangeChart(animal.subject(), watch));
    case StudyKind::Spread: {
      const auto build = [&](const anatomy::MeasurementTable& table) { return files::specimenOf(table, animal.scans); };
      return whenThere(study::spread(animal.subject(), animal.table, build, settings.spread, watch));
    }
    case StudyKind::Pressure:
      break;
  }
  return StudyResult(study::pressure(animal.subject(), settings.heart));
}

}  // namespace

StudyJob::StudyJob(Document& document, QObject* parent) : QObject(parent), document_(document) {
  connect(&document_, &Document::changed, this, &StudyJob::onDocumentChanged);
}

void StudyJob::run(StudyKind kind, const StudySettings& settings) {
  if (!document_.hasProject()) return;
  const files::Project& project = document_.project();
  const auto animal =
      std::make_shared<const Snapshot>(Snapshot{document_.specimen(), document_.articulation(), document_.assumptions(),
                                                document_.pose(), project.table, project.scans});
  running_ = kind;
  movedMeanwhile_ = false;
  const auto work = [this, kind, animal, settings](const Worker::Control& control) -> Worker::Delivery {
    const study::Watch watch{
        &control.cancelled, [&control](double share) { control.report(static_cast<std::size_t>(1000 * share), 1000); }};
    auto answer = found(kind, *animal, settings, watch);
    if (!answer) return {};
    auto result = std::make_shared<const StudyResult>(std::move(*answer));
    return [this, kind, result] {
      kept(kind) = {result, movedMeanwhile_};
      emit changed(kind);
    };
  };
  worker_.start(work, [this, kind](const QString& cause) {
    emit failed(tr("%1 could not be worked out: %2.").arg(title(kind), faultText(cause)));
  });
}

void StudyJob::onDocumentChanged(Changes what) {
  if (what == Changes(Change::Everything)) {
    worker_.cancel();
    kept_ = {};
    for (const StudyKind kind : kStudyKinds) emit changed(kind);
    return;
  }
  if (!(what & (Changes(Change::Pose) | Change::Assumptions))) return;
  movedMeanwhile_ = true;
  for (const StudyKind kind : kStudyKinds) {
    if (!kept(kind).result || kept(kind).outOfDate) continue;
    kept(kind).outOfDate = true;
    emit changed(kind);
  }
}

}  // namespace zyga::ui
