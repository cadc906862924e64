#include "ui/document/contact_job.h"

#include "core/solid/level_set.h"
#include "core/solid/mirrored_half.h"

namespace zyga::ui {

ContactJob::ContactJob(Document& document, QObject* parent) : QObject(parent), document_(document) {
  connect(&worker_, &Worker::busyChanged, this, &ContactJob::busyChanged);
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what == Changes(Change::Everything)) return worker_.cancel();
    if ((what & Change::Meshes) && !document_.meshes().empty()) start();
  });
}

void ContactJob::start() {
  const auto specimen = std::make_shared<const anatomy::Specimen>(document_.specimen());
  const auto work = [this, specimen, meshes = document_.meshes()](const Worker::Control& control) -> Worker::Delivery {
    solid::LevelSetOptions options;
    options.cancel = &control.cancelled;
    options.mirrorsItself = solid::bonesThatMirrorThemselves(*specimen);
    auto fields = solid::levelSets(meshes, range::bonesInContactPairs(*specimen), options);
    if (fields.empty()) return {};
    auto model = std::make_shared<const range::ContactModel>(*specimen, std::move(fields));
    return [this, model] { document_.setContact(model); };
  };
  worker_.start(work, [this](const QString& cause) {
    emit failed(tr("Contact between bones cannot be judged: %1. Facets are judged without it.").arg(cause));
  });
}

}  // namespace zyga::ui
