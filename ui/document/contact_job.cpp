#include "ui/document/contact_job.h"

#include "core/solid/mesh/mirrored_half.h"
#include "ui/theme/words.h"

namespace zyga::ui {

ContactJob::ContactJob(Document& document, QObject* parent) : QObject(parent), document_(document) {
  connect(&worker_, &Worker::busyChanged, this, &ContactJob::busyChanged);
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & Change::Scans) return worker_.cancel();  // shapes will follow
    if ((what & Change::Meshes) && !document_.meshes().empty()) start();
  });
}

void ContactJob::start() {
  const auto specimen = std::make_shared<const anatomy::Specimen>(document_.specimen());
  const auto work = [this, specimen, meshes = document_.meshes(),
                     known = fields_](const Worker::Control& control) -> Worker::Delivery {
    solid::LevelSetOptions options;
    options.cancel = &control.cancelled;
    options.mirrorsItself = solid::bonesThatMirrorThemselves(*specimen);
    auto wanted = range::bonesInContactPairs(*specimen);
    for (std::size_t b = 0; b < wanted.size(); ++b) wanted[b] = wanted[b] && !known.contains(meshes[b]);
    auto fields = solid::levelSets(meshes, wanted, options);
    if (fields.empty()) return {};
    FieldsByMesh now;
    for (std::size_t b = 0; b < fields.size(); ++b) {
      if (!fields[b] && known.contains(meshes[b])) fields[b] = known.at(meshes[b]);
      if (fields[b]) now[meshes[b]] = fields[b];
    }
    auto model = std::make_shared<const range::ContactModel>(*specimen, std::move(fields));
    return [this, model, now] {
      fields_ = now;
      document_.setContact(model);
    };
  };
  worker_.start(work, [this](const QString& cause) {
    emit failed(tr("Contact between bones cannot be judged: %1. Facets are judged without it.").arg(faultText(cause)));
  });
}

}  // namespace zyga::ui
