#include "ui/document/contact_job.h"

#include "ui/words/assumption_words.h"

namespace zyga::ui {

ContactJob::ContactJob(Document& document, std::filesystem::path cacheFolder, QObject* parent)
    : QObject(parent), document_(document), cacheFolder_(std::move(cacheFolder)) {
  document_.expectContact(true);
  connect(&worker_, &Worker::busyChanged, this, &ContactJob::busyChanged);
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & (Changes(Change::Specimen) | Change::Scans)) document_.expectContact(true);
    if (what & Change::Scans) return worker_.cancel();  // shapes will follow
    if ((what & Change::Meshes) && !document_.meshes().empty()) start();
  });
}

void ContactJob::start() {
  document_.expectContact(true);
  const auto specimen = std::make_shared<const anatomy::Specimen>(document_.specimen());
  const auto work = [this, specimen, meshes = document_.meshes(), known = fields_,
                     folder = cacheFolder_](const Worker::Control& control) mutable -> Worker::Delivery {
    const auto model = files::contactModel(*specimen, meshes, folder, control.task, known);
    if (!model) return {};
    return [this, model, known] {
      fields_ = known;
      deliver(model);
    };
  };
  worker_.start(work, [this](const QString& cause) {
    giveUp();
    emit failed(tr("Contact between bones cannot be judged: %1. Facets are judged without it.").arg(cause));
  });
}

void ContactJob::deliver(std::shared_ptr<const range::ContactModel> model) {
  const range::Assessment before = document_.assessment();
  document_.setContact(std::move(model));
  const range::Assessment& after = document_.assessment();
  if (before.contactJudged) return;
  if (const QString words = contactArrivedWords(before, after); !words.isEmpty()) emit judged(words);
}

}  // namespace zyga::ui
