#include "ui/document/sculpt_job.h"

#include <QStandardPaths>

#include "core/files/bone_meshes.h"

namespace zyga::ui {

SculptJob::SculptJob(Document& document, std::filesystem::path cacheFolder, QObject* parent)
    : QObject(parent), document_(document), cacheFolder_(std::move(cacheFolder)) {
  connect(&worker_, &Worker::progress, this, &SculptJob::progress);
  connect(&worker_, &Worker::busyChanged, this, &SculptJob::busyChanged);
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what == Changes(Change::Everything)) start();
  });
}

std::filesystem::path SculptJob::standardCacheFolder() {
  const QString folder = QStandardPaths::writableLocation(QStandardPaths::CacheLocation);
  return folder.isEmpty() ? std::filesystem::path() : std::filesystem::path(folder.toStdString()) / "bones";
}

void SculptJob::start() {
  if (!document_.hasProject()) return;
  const auto project = std::make_shared<const files::Project>(document_.project());
  const auto work = [this, project, folder = cacheFolder_](const Worker::Control& control) -> Worker::Delivery {
    solid::SculptOptions options;
    options.cacheFolder = folder;
    options.progress = control.report;
    options.cancel = &control.cancelled;
    auto meshes = std::make_shared<files::BoneMeshes>(files::boneMeshes(*project, options));
    if (meshes->empty()) return {};
    return [this, meshes] { document_.setMeshes(std::move(*meshes)); };
  };
  worker_.start(work, [this](const QString& cause) {
    emit failed(tr("The bones could not be sculpted: %1. Posing and judging go on without them.").arg(cause));
  });
}

}  // namespace zyga::ui
