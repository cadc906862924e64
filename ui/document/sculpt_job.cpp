#include "ui/document/sculpt_job.h"

namespace zyga::ui {
namespace {

constexpr int kScansRest = 300;  // ms without a change of scans before their shapes are made anew

/// All bones as the table gives them. Where some have to be made, rough ones are shown first.
files::BoneMeshes sculptedAfterAPreview(const files::Project& project, const solid::SculptOptions& options,
                                        files::ScanLevels& levels, const Worker::Control& control,
                                        const std::function<void(const files::BoneMeshes&)>& show) {
  solid::PreviewMeshes preview = files::previewMeshes(project, options);
  if (!preview.rough) return std::move(preview.meshes);
  files::BoneMeshes seen = files::withScans(std::move(preview.meshes), project, levels, options.task);
  if (!seen.empty()) control.show([show, seen = std::move(seen)] { show(seen); });
  return files::sculptedMeshes(project, options);
}

}  // namespace

SculptJob::SculptJob(Document& document, std::filesystem::path cacheFolder, QObject* parent)
    : QObject(parent), document_(document), cacheFolder_(std::move(cacheFolder)) {
  scansRest_.setSingleShot(true);
  scansRest_.setInterval(kScansRest);
  connect(&scansRest_, &QTimer::timeout, this, &SculptJob::start);
  connect(&worker_, &Worker::progress, this, &SculptJob::progress);
  connect(&worker_, &Worker::busyChanged, this, &SculptJob::busyChanged);
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & Change::Specimen) {
      sculpted_.reset();
      start();
    } else if (what & Change::Scans) {
      scansRest_.start();
    }
  });
}

void SculptJob::cancel() {
  scansRest_.stop();
  worker_.cancel();
}

void SculptJob::start() {
  scansRest_.stop();
  if (!document_.hasProject()) return;
  const auto project = std::make_shared<const files::Project>(document_.project());
  const auto work = [this, project, folder = cacheFolder_, kept = sculpted_,
                     levels = scanLevels_](const Worker::Control& control) mutable -> Worker::Delivery {
    solid::SculptOptions options;
    options.cacheFolder = folder;
    options.task = control.task;
    const auto show = [this](const files::BoneMeshes& rough) { document_.setRoughMeshes(rough); };
    const auto sculpted = kept ? kept
                               : std::make_shared<const files::BoneMeshes>(
                                     sculptedAfterAPreview(*project, options, levels, control, show));
    if (sculpted->empty()) return {};
    auto meshes = std::make_shared<files::BoneMeshes>(files::withScans(*sculpted, *project, levels, options.task));
    if (meshes->empty()) return {};
    return [this, sculpted, meshes, levels = std::move(levels)] {
      sculpted_ = sculpted;
      scanLevels_ = levels;
      document_.setMeshes(std::move(*meshes));
    };
  };
  worker_.start(work, [this](const QString& cause) {
    emit failed(tr("The bones could not be sculpted: %1. Posing and judging go on without them.").arg(cause));
  });
}

}  // namespace zyga::ui
